import type { ResultMeaning, Told } from '../../../core/panel/round-result.ts';

const small = 'Nobody One Two Three Four Five Six Seven Eight Nine Ten Eleven Twelve'.split(' ');
const listed = new Intl.ListFormat('en', { type: 'conjunction' });
const oneDecimal = new Intl.NumberFormat('en', { maximumFractionDigits: 1 });
const inRow = (names: readonly string[]): string => listed.format(names);
const people = (count: number): string => (count === 1 ? '1 person' : `${count} people`);

/** A chance as one would say it over a table. */
const byLuck = (luck: number): string => {
  const often = Math.round(luck * 100);
  return often < 1 ? 'in fewer than 1 of 100 evenings' : `in about ${often} of 100 evenings`;
};

/** What is behind a result, as far as its sentence says so. */
export interface Sureness {
  readonly people: number;
  /** Too few for more than a party's result. */
  readonly party: boolean;
  /** Not even full agreement would have shown anything. */
  readonly tooFewToShow: boolean;
  readonly luck: number | null;
  readonly meaning: ResultMeaning;
}

/** What is said of the room's result, on phones, tablet and television. Another language is one more file of this shape. */
export const resultWords = {
  titles: { order: 'The room’s order', liking: 'How well the room liked them' } satisfies Record<
    Told,
    string
  >,
  soon: 'The room’s result comes in a moment.',
  /** What won, and whether it won clearly. */
  headline: {
    order: {
      'clear-favourite': (best: readonly string[]) => `${inRow(best)} came first, clearly.`,
      'favourites-share': (best: readonly string[]) =>
        best.length > 1
          ? `${inRow(best)} share the first place.`
          : `${inRow(best)} came first, but not clearly ahead of all others.`,
      'no-agreement-shown': (best: readonly string[]) =>
        best.length > 1
          ? `No clear winner: ${inRow(best)} lie in front by a little.`
          : `No clear winner: ${inRow(best)} lies in front by a little.`,
      'all-tied': () => 'Everybody put all the glasses level.',
      'not-compared': () => 'Each glass by itself: too few put them all in order.',
    },
    liking: {
      'clear-favourite': (best: readonly string[]) => `${inRow(best)} was liked best, clearly.`,
      'favourites-share': (best: readonly string[]) =>
        best.length > 1
          ? `${inRow(best)} were liked best.`
          : `${inRow(best)} was liked best, but not clearly more than all others.`,
      'no-agreement-shown': () => 'No glass was clearly liked better than the others.',
      'all-tied': () => 'All the glasses were liked alike.',
      'not-compared': () => 'Each glass by itself: too few rated them all to compare them.',
    },
  } satisfies Record<Told, Record<ResultMeaning, (best: readonly string[]) => string>>,
  /** How sure that is for so many. */
  sure: ({ people: count, party, tooFewToShow, luck, meaning }: Sureness): string => {
    const who = small[count] ?? String(count);
    if (tooFewToShow) return `${who} people are too few to prove anything, even when all agree.`;
    const room = party ? `${who} people are a party, not proof` : `${who} people were asked`;
    if (luck === null) return `${room}.`;
    const agreed = `luck alone would bring this much agreement ${byLuck(luck)}`;
    return meaning === 'no-agreement-shown'
      ? `${room}, and tastes went different ways: ${agreed}.`
      : `${room}, yet ${agreed}.`;
  },
  /** Of how many it is made. */
  counted: {
    order: (counted: number, given: number) => `${counted} of ${given} orders count.`,
    liking: (counted: number, given: number) => `The ratings of ${counted} of ${given} guests count.`,
  } satisfies Record<Told, (counted: number, given: number) => string>,
  tooFew: {
    order:
      'Fewer than three let their order count, so it stays with each of you: one or two could be recognised. That is quite all right.',
    liking:
      'Fewer than three let their ratings count, so they stay with each of you: one or two could be recognised. That is quite all right.',
  } satisfies Record<Told, string>,
  tooFewHere: 'fewer than three count',
  mean: (value: number) => oneDecimal.format(value),
  axis: {
    order: (of: number) =>
      `Each dot: who put it there, the more the larger. The line is the mean place, from 1 (best) to ${of}.`,
    liking: () =>
      'Each dot: who rated it so, the more the larger. The line is the mean, from 1 to 9 (like extremely).',
  } satisfies Record<Told, (of: number) => string>,
  /** A row for whoever does not see it. */
  row: {
    order: (name: string, mean: string, of: number, spread: readonly { at: string; guests: number }[]) =>
      `${name}: mean place ${mean} of ${of}. ${inRow(spread.map(({ at, guests }) => `place ${at} from ${people(guests)}`))}.`,
    liking: (name: string, mean: string, of: number, spread: readonly { at: string; guests: number }[]) =>
      `${name}: mean ${mean} of ${of}. ${inRow(spread.map(({ at, guests }) => `${at} from ${people(guests)}`))}.`,
  } satisfies Record<
    Told,
    (name: string, mean: string, of: number, spread: readonly { at: string; guests: number }[]) => string
  >,
  asTold: 'As the room was told it in the evening; nothing that changed since is in it.',
  rowTooFew: (name: string) => `${name}: fewer than three let it count.`,
};

export type ResultWords = typeof resultWords;
