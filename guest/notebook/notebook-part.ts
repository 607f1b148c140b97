import './notebook.css';
import './ranking.css';
import { AllergenLine } from './allergen-line.tsx';
import { ReviewPage } from './closing-pages.tsx';
import { MyNotes } from './my-notes.tsx';
import { OddPick } from './odd-pick.tsx';
import { OnlyWater } from './only-water.tsx';
import { RankingBody } from './ranking-body.tsx';
import { StepMarks, StepReflect } from './step-marks.tsx';

/** What is fetched together after sitting down: everything that is tapped rather than written. */
export const notebookPages = {
  AllergenLine,
  SenseMarks: StepMarks,
  ReviewPage,
  ReflectMarks: StepReflect,
  RankingBody,
  OddPick,
  OnlyWater,
  MyNotes,
};
