import type { CueId, PourId } from '../ids.ts';
import type { EpochMs } from '../units.ts';
import { midRanks } from './mid-ranks.ts';
import { likingRecap } from './recap/liking-recap.ts';
import type { OrderMeaning } from './recap/order-comparison.ts';
import { completeRow, LEAST_ANONYMOUS, usableAnswers } from './recap/permitted-answers.ts';
import { rankingRecap } from './recap/ranking-recap.ts';

/** What a room makes of its glasses: the order in which it puts them, and how much it likes each. */
export const told = ['order', 'liking'] as const;
export type Told = (typeof told)[number];

/** What one cue told the room, as it stood then; nothing changes it afterwards [R1]. */
export interface ToldResult {
  readonly cue: CueId;
  readonly at: EpochMs;
  /** One for each ranking, and one for how well the pours were liked. */
  readonly parts: readonly RoundResult[];
}

/** What the room made of some pours: of pours, never of people [R2]. */
export type RoundResult =
  | {
      readonly of: Told;
      readonly outcome: 'told';
      /** The best first; what stands equal in the order in which it was given. */
      readonly pours: readonly PourFigure[];
      /** Guests behind it, and how many gave an answer at all. */
      readonly counted: number;
      readonly given: number;
      readonly meaning: ResultMeaning;
      /** How often luck alone would give so much agreement, 0 to 1; null where pours were not compared. */
      readonly luck: number | null;
      /** Too few for more than a party's result. */
      readonly party: boolean;
      /** So few that not even a room of one mind would have shown anything. */
      readonly tooFewToShow: boolean;
    }
  /** Fewer than three let it count: told without any figure, for one or two could be read off it [R2]. */
  | { readonly of: Told; readonly outcome: 'too-few'; readonly pours: readonly { readonly pour: PourId }[] };

/** `not-compared`: each pour stands by itself, for too few rated them all; `all-tied`: everybody put all of them equal. */
export type ResultMeaning = OrderMeaning | 'all-tied' | 'not-compared';

export interface PourFigure {
  readonly pour: PourId;
  /** From 1, equal ones share the mean of their places; null where pours were not compared. */
  readonly place: number | null;
  /** Of places from 1, the best, or of the nine points of liking, 9 the best; null where fewer than three count. */
  readonly mean: number | null;
  /** How many stand where; places may be halves, for tied pours share the mean of theirs. */
  readonly spread: readonly { readonly at: number; readonly guests: number }[];
}

/** One guest's answers to the pours in their order, null where there is none, and which of them count in the room's result. */
export interface RoundAnswer {
  readonly counts: readonly boolean[];
  readonly values: readonly (number | null)[];
}

export interface Round {
  readonly of: Told;
  readonly pours: readonly PourId[];
  readonly answers: readonly RoundAnswer[];
}

/** Everybody who counts does so without a name, so that three must hide each other whoever else shares a page. */
export function roundResult({ of, pours, answers }: Round): RoundResult {
  const isGiven = ({ values }: Pick<RoundAnswer, 'values'>): boolean =>
    of === 'order' ? completeRow(values, pours.length) !== null : values.some((value) => value !== null);
  const all = answers.filter(isGiven);
  const rows = all
    .map(({ values, counts }) => values.map((value, index) => (counts[index] === true ? value : null)))
    .filter((values) => isGiven({ values }))
    .map((answer) => ({
      consent: 'anonymous' as const,
      byPart: answer.map((value) => (value === null ? null : ('anonymous' as const))),
      answer,
    }));
  const given = all.length;
  const tooFew = { of, outcome: 'too-few', pours: pours.map((pour) => ({ pour })) } as const;
  if (rows.length < LEAST_ANONYMOUS) return tooFew;
  return of === 'order' ? orderOf(pours, rows, given) : likingOf(pours, rows, given, tooFew);
}

type Rows = Parameters<typeof rankingRecap<PourId>>[0]['answers'];

function orderOf(pours: readonly PourId[], rows: Rows, given: number): RoundResult {
  const { answers } = usableAnswers(rows, (row) => completeRow(row, pours.length));
  const ranks = answers.map(midRanks);
  const result = rankingRecap({ pours, answers: rows, guests: given });
  const figures = pours.map((pour, index): PourFigure => {
    const own = ranks.map((row) => row[index] ?? 0);
    const place =
      result.outcome === 'result'
        ? (result.figures.places.find((each) => each.pour === pour)?.place ?? null)
        : (pours.length + 1) / 2;
    return { pour, place, mean: meanOf(own), spread: spreadOf(own) };
  });
  return {
    of: 'order',
    outcome: 'told',
    pours: inOrder(figures),
    counted: answers.length,
    given,
    meaning: result.outcome === 'result' ? result.meaning : 'all-tied',
    luck: result.outcome === 'result' ? result.figures.p : null,
    party: result.limits.includes('small-panel'),
    tooFewToShow: result.limits.includes('panel-too-small-to-show'),
  };
}

function likingOf(
  pours: readonly PourId[],
  rows: Rows,
  given: number,
  tooFew: Extract<RoundResult, { outcome: 'too-few' }>,
): RoundResult {
  const result = likingRecap({ pours, answers: rows, guests: given });
  if (result.outcome === 'none') return tooFew;
  const { order, pours: liked } = result.figures;
  const figures = liked.map(({ pour, liking }): PourFigure => {
    const place = order?.places.find((each) => each.pour === pour)?.place ?? null;
    if (liking.status === 'no-ratings') return { pour, place, mean: null, spread: [] };
    const spread = liking.counts.flatMap((guests, index) =>
      guests === 0 ? [] : [{ at: index + 1, guests }],
    );
    return { pour, place, mean: liking.mean, spread };
  });
  return {
    of: 'liking',
    outcome: 'told',
    pours: order === null ? figures : inOrder(figures),
    counted: result.n,
    given,
    meaning: result.meaning === 'summary-only' ? 'not-compared' : result.meaning,
    luck: order?.p ?? null,
    party: result.limits.includes('small-panel'),
    tooFewToShow: result.limits.includes('panel-too-small-to-show'),
  };
}

const inOrder = (figures: readonly PourFigure[]): PourFigure[] =>
  figures.toSorted((one, other) => (one.place ?? Infinity) - (other.place ?? Infinity));

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function spreadOf(values: readonly number[]): PourFigure['spread'] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].toSorted(([one], [other]) => one - other).map(([at, guests]) => ({ at, guests }));
}
