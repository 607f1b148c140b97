import type { UsableAnswers } from './permitted-answers.ts';

/** The level at which the recap says that something was shown. */
export const RECAP_ALPHA = 0.05;

/**
 * How many answers make a result more than a party's: difference tests ask for 24 or more assessors, and
 * liking by untrained people for 60 or more (ISO 4120 and ISO 8587, from memory).
 */
export const PROPER_PANEL = { difference: 24, liking: 60 } as const;

/** What a reader must know before believing a result; the figures that the sentences need stand in the result. */
export type LimitCode =
  /** "Nine people: this is a party, not proof." */
  | 'small-panel'
  /** So few answers that even a room of one mind could not have shown anything. */
  | 'panel-too-small-to-show'
  /** Nothing shown does not mean that the pours are the same. */
  | 'not-shown-is-not-same'
  /** The p is from a large-sample curve, because the exact count was too large. */
  | 'approximate-p'
  /** Each pair of pours was judged by itself: among many, some stand apart by chance. */
  | 'pairs-not-corrected'
  /** Some answers had gaps and are not in it. */
  | 'incomplete-left-out'
  /** Fewer than three anonymous answers: they would not have stayed anonymous, and are not in it. */
  | 'anonymous-left-out'
  /** Some guests kept their answers; those who shared may not speak for them. */
  | 'not-everyone-shared'
  /** Several words were tested; the p values are raised for that. */
  | 'many-words-tested';

/** One panel question, answered: figures for a picture, and codes that the screens put into words. */
export type PanelResult<Subject extends string, Figures, Method, Meaning, NoResult> =
  | {
      readonly subject: Subject;
      readonly outcome: 'result';
      /** Guests whose answers are in it. */
      readonly n: number;
      readonly figures: Figures;
      readonly method: Method;
      readonly meaning: Meaning;
      readonly limits: readonly LimitCode[];
    }
  | {
      readonly subject: Subject;
      readonly outcome: 'none';
      readonly n: number;
      readonly reason: NoResult;
      readonly limits: readonly LimitCode[];
    };

/** Limits that come from who answered, whatever the question. `guests`: all who could have answered. */
export function limitsOfPanel(
  { answers, incomplete, unhidden, cut = 0 }: UsableAnswers<unknown>,
  { guests, proper }: { readonly guests: number; readonly proper: number },
): LimitCode[] {
  const limits: LimitCode[] = [];
  if (answers.length < proper) limits.push('small-panel');
  if (incomplete > 0) limits.push('incomplete-left-out');
  if (unhidden + cut > 0) limits.push('anonymous-left-out');
  if (answers.length + incomplete + unhidden < guests) limits.push('not-everyone-shared');
  return limits;
}
