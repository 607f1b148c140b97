import { afterEach, describe, expect, it } from 'vitest';
import type { SeatId } from '../../core/ids.ts';
import { asPlanned } from '../../core/recap/planned-course.ts';
import { epochMs } from '../../core/units.ts';
import { Refused } from '../../server/http/answers.ts';
import { RecapDesk } from '../../server/http/recap/recap-desk.ts';
import { type RecapMaterial, recapText } from '../../server/http/recap/recap-text.ts';
import type { PermittedPage } from '../../server/store/store.ts';
import type { NoteField, NoteValue } from '../../shared/notes/entry.ts';
import { EveningTold } from '../support/evening.ts';
import { givenBefore } from '../support/permitted.ts';
import { planOf, pourNames } from '../support/plans.ts';
import { seededRandom } from '../support/seeded-random.ts';

const words = [
  'apple',
  'pear',
  'smoke',
  'peat',
  'honey',
  'oak',
  'salt',
  'fig',
  'malt',
  'grass',
  'lemon',
  'nut',
];

/** An evening that is over, with a page of every guest for every pour. */
function material(guests: number, form: RecapMaterial['form'] = 'recap'): RecapMaterial {
  const random = seededRandom(7);
  const plan = planOf(9, { liking: true });
  const evening = new EveningTold(plan).sit(
    ...Array.from({ length: guests }, (_, index) => `guest-${index}`),
  );
  for (const pour of pourNames) evening.goTo(`${pour}/water`);
  evening.host({ type: 'OpenDiscussion', pours: plan.pours.map(({ id }) => id) });
  evening.host({ type: 'Finish' });
  const { session } = evening;
  if (session.status !== 'finished') throw new Error('The evening is not over.');
  const page = (seat: SeatId, pour: PermittedPage['pour']): PermittedPage => {
    const entry = (field: NoteField, value: NoteValue) =>
      ({ pour, field, value, revision: 1, savedAt: epochMs(evening.now) }) as const;
    const marked = words.filter(() => random() < 0.3).map((word) => [word, 'clear'] as const);
    return {
      seat,
      pour,
      ...givenBefore('shared'),
      entries: [
        entry('nose-words', Object.fromEntries(marked)),
        entry('liking', 1 + Math.floor(9 * random())),
      ],
    };
  };
  const pages = Object.values(session.seats).flatMap(({ id }) => plan.pours.map((pour) => page(id, pour.id)));
  return { form, session, planned: asPlanned(evening.events), pages };
}

let desk = new RecapDesk();
afterEach(async () => {
  await desk.stop();
  desk = new RecapDesk();
});

/** How often everybody else had a turn until this was done. */
async function turnsDuring(run: () => Promise<unknown>): Promise<number> {
  let turns = 0;
  let done = false;
  const finished = run().then(() => {
    done = true;
  });
  while (!done) {
    await new Promise((resolve) => setImmediate(resolve));
    turns += 1;
  }
  await finished;
  return turns;
}

describe('the recap of two hundred guests and nine pours', () => {
  it('is made while every other evening goes on having its turns', { timeout: 60_000 }, async () => {
    await desk.make(material(2));
    const large = material(200);
    const inTheLoop = await turnsDuring(async () => recapText(large));
    expect(inTheLoop).toBeLessThan(3);
    expect(await turnsDuring(() => desk.make(large))).toBeGreaterThan(100);
  });

  it('says the same from its thread as it would here, in every form', { timeout: 60_000 }, async () => {
    for (const form of ['recap', 'json', 'csv'] as const) {
      const asked = material(12, form);
      expect(await desk.make(asked)).toBe(recapText(asked));
    }
  });
});

describe('the desk that recaps are asked for at', () => {
  it('lets no more than twenty wait, and says so kindly', { timeout: 60_000 }, async () => {
    const small = material(2);
    const asked = Array.from({ length: 25 }, () => desk.make(small));
    const answers = await Promise.allSettled(asked);
    expect(answers.filter(({ status }) => status === 'fulfilled')).toHaveLength(20);
    const refused = answers.find(({ status }) => status === 'rejected');
    expect(refused?.status === 'rejected' && refused.reason).toBeInstanceOf(Refused);
    expect(await desk.make(small)).toBe(recapText(small));
  });

  it('answers with an error what cannot be made, and goes on', { timeout: 60_000 }, async () => {
    const small = material(2);
    const broken = { ...small, session: { ...small.session, seats: null as never } };
    await expect(desk.make(broken)).rejects.toThrow(/could not be made/);
    expect(await desk.make(small)).toBe(recapText(small));
  });

  it('begins another thread when one has ended', { timeout: 60_000 }, async () => {
    const small = material(2);
    const asked = desk.make(small);
    await Promise.all([expect(asked).rejects.toThrow(/ended/), desk.stop()]);
    expect(await desk.make(small)).toBe(recapText(small));
  });
});
