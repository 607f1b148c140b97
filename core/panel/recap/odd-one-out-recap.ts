import { type DifferenceTestMethod, differenceTest, distinguishers } from '../odd-one-out.ts';
import { limitsOfPanel, type PanelResult, PROPER_PANEL, RECAP_ALPHA } from './panel-result.ts';
import { type PermittedAnswer, usableAnswers } from './permitted-answers.ts';

type OddOneOutTest = Exclude<DifferenceTestMethod, 'paired-two-sided'>;

export interface OddOneOutQuestion {
  readonly test: OddOneOutTest;
  /** Whether the guest picked the right glass; null where none was picked. */
  readonly answers: readonly PermittedAnswer<boolean | null>[];
  readonly guests: number;
}

interface OddOneOutFigures {
  readonly test: OddOneOutTest;
  readonly correct: number;
  readonly expectedByGuessing: number;
  readonly p: number;
  readonly alpha: number;
  /** The fewest right answers that count; null when no number would. */
  readonly critical: number | null;
  /** Share who truly tell them apart, lucky guesses taken off: estimate and exact 95 % limits, 0 to 1. */
  readonly distinguishers: { readonly share: number; readonly lower: number; readonly upper: number };
}

export type OddOneOutResult = PanelResult<
  'odd-one-out',
  OddOneOutFigures,
  'exact-binomial',
  'room-told-them-apart' | 'no-difference-shown',
  'no-answers'
>;

/** Could the room tell the two drinks apart? */
export function oddOneOutRecap({ test, answers, guests }: OddOneOutQuestion): OddOneOutResult {
  const usable = usableAnswers(answers, (answer) => answer);
  const n = usable.answers.length;
  const limits = limitsOfPanel(usable, { guests, proper: PROPER_PANEL.difference });
  const correct = usable.answers.filter(Boolean).length;
  const tested = differenceTest(test, { n, correct, alpha: RECAP_ALPHA });
  const share = distinguishers(test, { n, correct }, { confidence: 0.95, sides: 2 });
  if (tested.status !== 'tested' || share === null) {
    return { subject: 'odd-one-out', outcome: 'none', n, reason: 'no-answers', limits };
  }
  if (!tested.shown) limits.push('not-shown-is-not-same');
  if (tested.critical === null) limits.push('panel-too-small-to-show');
  return {
    subject: 'odd-one-out',
    outcome: 'result',
    n,
    figures: {
      test,
      correct,
      expectedByGuessing: tested.expectedByGuessing,
      p: tested.p,
      alpha: tested.alpha,
      critical: tested.critical,
      distinguishers: {
        share: share.proportionClamped,
        ...share.exact,
      },
    },
    method: 'exact-binomial',
    meaning: tested.shown ? 'room-told-them-apart' : 'no-difference-shown',
    limits,
  };
}
