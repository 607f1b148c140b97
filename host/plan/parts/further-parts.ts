import { BeforePart } from './before-part.tsx';
import { CopiesPart } from './copies-part.tsx';
import { CoursePart } from './course-part.tsx';
import { EveningPart } from './evening-part.tsx';
import { GuestsPart } from './guests-part.tsx';
import { ShoppingPart } from './shopping-part.tsx';
import { StrengthPart } from './strength-part.tsx';
import { TablePart } from './table-part.tsx';

/** The parts of the plan that are not open when it comes, fetched together. */
export const further = {
  BeforePart,
  CopiesPart,
  CoursePart,
  EveningPart,
  GuestsPart,
  ShoppingPart,
  StrengthPart,
  TablePart,
};
