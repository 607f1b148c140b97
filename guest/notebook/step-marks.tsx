import { isSettled } from '../../shared/page/lazy-part.ts';
import { GuessPlace } from '../guess/guess-place.tsx';
import { closingText } from '../stage/word-sheets.ts';
import { ReflectMarks } from './closing-pages.tsx';
import { type OfPour, SenseMarks, sheetPartOf } from './sense-marks.tsx';

/** What is tapped while a sense is written down, and the guess below it. */
export function StepMarks(props: Parameters<typeof SenseMarks>[0]) {
  return (
    <>
      <SenseMarks {...props} />
      <GuessBelow {...props} />
    </>
  );
}

/** The closing thoughts of a glass, and the guess below them. */
export function StepReflect(props: Parameters<typeof ReflectMarks>[0]) {
  return (
    <>
      <ReflectMarks {...props} />
      <GuessBelow {...props} />
    </>
  );
}

/** Not before what stands above it. */
function GuessBelow(props: OfPour) {
  return [sheetPartOf(props), closingText].every(isSettled) ? <GuessPlace pour={props.pour} /> : null;
}
