import { truthOf } from '../guess/guess-sheet.ts';
import type { PourId } from '../ids.ts';
import { type GuessFact, type GuessTruth, guessFacts } from '../panel/guess/guess.ts';
import type { ToldGuesses } from '../panel/guess/room.ts';
import { inTellingOrder } from './serving.ts';
import type { Evening } from './state.ts';

/** What the named pours are, only of the facts that are guessed: a price that nobody was asked for is not told [Q4, Q12]. */
export function toldTruths(evening: Evening): { readonly pour: PourId; readonly truth: GuessTruth }[] {
  if (evening.guess === null) return [];
  return inTellingOrder(evening.plan, guessedPours(evening)).flatMap((id) => {
    const truth = truthOfPour(evening, id);
    return truth === undefined ? [] : [{ pour: id, truth }];
  });
}

/** Named pours that have stood in front of the room and were not taken off the table, in order of the plan. */
const guessedPours = ({ plan, revealed, reached, dropped }: Evening): PourId[] =>
  plan.pours
    .map(({ id }) => id)
    .filter((id) => revealed.includes(id) && reached.includes(id) && !dropped.includes(id));

/** What a pour is of the facts that this evening guesses; for those who may know it. */
export function truthOfPour(
  { plan, guess }: Pick<Evening, 'plan' | 'guess'>,
  id: PourId,
): GuessTruth | undefined {
  const pour = plan.pours.find((each) => each.id === id);
  if (pour === undefined || guess === null) return undefined;
  const known = truthOf(pour);
  const asked = guessFacts.flatMap((fact): [GuessFact, string | number][] => {
    const value = guess[fact] === undefined ? undefined : known[fact];
    return value === undefined ? [] : [[fact, value]];
  });
  return Object.fromEntries(asked);
}

/** Pours whose guesses are to be told with what happens now: named, and nothing told of them yet. */
export const guessesToTell = (evening: Evening): PourId[] =>
  evening.guess === null
    ? []
    : guessedPours(evening).filter((pour) => !evening.guessesTold.some((told) => told.pour === pour));

/** What was told, in the order in which pours are spoken of; nothing of a pour that was taken off the table. */
export function guessesTold(evening: Evening): ToldGuesses[] {
  const told = new Map(evening.guessesTold.map((each) => [each.pour, each]));
  return inTellingOrder(evening.plan, guessedPours(evening)).flatMap((pour) => told.get(pour) ?? []);
}
