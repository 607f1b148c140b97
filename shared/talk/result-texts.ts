import type { PourId } from '../../core/ids.ts';
import type { PourFigure, RoundResult } from '../../core/panel/round-result.ts';
import { resultWords as words } from '../language/en/result.ts';

export type ToldPart = Extract<RoundResult, { outcome: 'told' }>;

/** What came of it and how sure that is, for every screen and for the host to say. */
export function saidOf(part: RoundResult, nameOf: (pour: PourId) => string): string {
  if (part.outcome === 'too-few') return words.tooFew[part.of];
  const [first] = part.pours;
  const best = part.pours.filter(({ place }) => place !== null && place === first?.place);
  const { counted: people, party, tooFewToShow, luck, meaning } = part;
  const headline = words.headline[part.of][meaning](best.map(({ pour }) => nameOf(pour)));
  return `${headline} ${words.sure({ people, party, tooFewToShow, luck, meaning })}`;
}

/** The scale runs to the last place, or to the best of the nine points of liking. */
export const endOf = ({ of, pours }: ToldPart): number => (of === 'order' ? pours.length : 9);

/** Where one glass came, and from how many. */
export const rowInWords = (
  part: ToldPart,
  { mean, spread }: Pick<PourFigure, 'mean' | 'spread'>,
  name: string,
): string =>
  mean === null
    ? words.rowTooFew(name)
    : words.row[part.of](name, words.mean(mean), endOf(part), spreadInWords(spread));

const spreadInWords = (spread: PourFigure['spread']) =>
  spread.map(({ at, guests }) => ({ at: words.mean(at), guests }));
