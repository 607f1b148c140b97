import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import type { Guess } from '../../../core/panel/guess/guess.ts';
import { toldGuesses } from '../../../core/panel/guess/room.ts';
import { guessRecap, type ToldFact } from '../../../core/recap/guess-recap.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const [ash, birch, cedar] = ['ash', 'birch', 'cedar'].map(pourId);
const known = planOf(3, { practice: false, blind: true });
const plan = {
  ...known,
  pours: known.pours.map((pour, at) => ({ ...pour, style: 'rye', ageYears: 8 + at, abv: 46 })),
};

/** What the recap makes of these guesses of each glass, told with its name. */
function recapOf(guesses: readonly (readonly Guess[])[], of = plan): readonly ToldFact[] | null {
  const evening = ['ash', 'birch', 'cedar'].reduce(
    (so, pour) => so.goTo(`${pour}/first/look`),
    new EveningTold(of).sit('ada', 'ben', 'cleo', 'dai'),
  );
  evening.host({ type: 'Reveal', pours: [ash, birch, cedar].flatMap((pour) => pour ?? []) });
  const told = [ash, birch, cedar].flatMap((pour, at) =>
    pour === undefined ? [] : [toldGuesses(pour, guesses[at] ?? [], 9)],
  );
  const session = evolveAll(evening.session, [{ type: 'GuessesTold', told }]);
  if (session.status === 'unopened') throw new Error('The doors are closed.');
  return guessRecap(session);
}

const all = (guess: Guess, guests = 4): Guess[] => Array.from({ length: guests }, () => guess);

describe('[Q12] what the room could tell', () => {
  it('is said of facts in which it was nearer than chance over all glasses, and not of others', () => {
    const facts = recapOf([8, 9, 10].map((age) => all({ age, abv: 60 })));
    expect(facts?.map(({ fact, pours, guesses, meaning }) => ({ fact, pours, guesses, meaning }))).toEqual([
      { fact: 'age', pours: 3, guesses: 12, meaning: 'could-tell' },
      { fact: 'abv', pours: 3, guesses: 12, meaning: 'not-shown' },
    ]);
    expect(facts?.[0]?.mean).toBeLessThan(0.05);
  });

  it('is held to a higher bar the more facts are looked at', () => {
    const alone = recapOf([all({ age: 12 }, 3), all({ age: 12 }, 3)]);
    const besides = recapOf([all({ age: 12, abv: 60 }, 3), all({ age: 12, abv: 60 }, 3)]);
    expect(besides?.[0]?.chance).toBeGreaterThan(alone?.[0]?.chance ?? 1);
  });

  it('is nothing where too few let it count, and no question where nothing was guessed', () => {
    expect(recapOf([all({ age: 8 }, 2)])).toEqual([]);
    expect(recapOf([], { ...plan, guess: { ...plan.guess, on: false } })).toBeNull();
  });
});
