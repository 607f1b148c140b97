import { GuessPlace } from '../guess/guess-place.tsx';
import { ReflectMarks } from './closing-pages.tsx';
import { SenseMarks } from './sense-marks.tsx';

/** What is tapped while a sense is written down, and the guess below it. */
export function StepMarks(props: Parameters<typeof SenseMarks>[0]) {
  return (
    <>
      <SenseMarks {...props} />
      <GuessPlace pour={props.pour} />
    </>
  );
}

/** The closing thoughts of a glass, and the guess below them. */
export function StepReflect(props: Parameters<typeof ReflectMarks>[0]) {
  return (
    <>
      <ReflectMarks {...props} />
      <GuessPlace pour={props.pour} />
    </>
  );
}
