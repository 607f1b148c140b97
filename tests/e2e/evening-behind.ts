import type { Cue } from '../../core/running-order/cue.ts';
import { oddGlassOf } from '../../core/session/serving.ts';
import { planSchema, type Trial, trialSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { type Guest, House } from '../server/support/house.ts';
import { ManualClock } from '../server/support/manual-clock.ts';
import { seededRandom } from '../support/seeded-random.ts';

const names = ['Aino', 'Bram', 'Chiara', 'Dagny', 'Emre', 'Fenna', 'Goran', 'Hale', 'Ingrid-Maximiliane'];
const trial: Trial = trialSchema.parse({
  id: 'lastlamp',
  flight: 0,
  a: 'kV7nQ2xd',
  b: 'b9TzLw4h',
  codes: { a: ['311', '577'], b: ['642', '909'] },
  orders: ['AAB', 'ABA', 'ABB', 'BAA', 'BAB', 'BBA'],
});
const plan = planSchema.parse({
  ...demoEvening,
  title: '=Six lanterns, looked back on',
  ranking: 'at-the-end',
  liking: true,
  trials: [trial],
  extraWords: ['Wet rope'],
});
const swatches = ['ivory', 'hay', 'butter', 'honey', 'amber'];
const usual = ['pear', 'vanilla', 'honey', 'smoke', 'own:wet rope'];
/** What most of the room makes of the six pours, best first; the rest is chance. */
const taste = [2, 1, 4, 3, 6, 5];

export interface EveningBehind {
  readonly house: House;
  readonly made: CreatedTasting;
}

/** A whole evening of nine guests played through the sockets, on a clock of its own, with every field filled. */
export async function playAnEvening(): Promise<EveningBehind> {
  const clock = new ManualClock(Date.UTC(2031, 4, 9, 18, 30));
  const house = await House.open({ clock });
  const made = await house.plan(plan);
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const order = (await host.until('running-order')).cues;
  const guests: Guest[] = [];
  for (const name of names) guests.push(await house.guest(made, name));
  const random = seededRandom(11);
  for (const [index, cue] of order.entries()) {
    await notesDuring(cue, guests, random);
    if (cue.kind === 'discussion') await host.host({ type: 'OpenDiscussion', pours: [...cue.pours] });
    await clock.advance(
      Math.round(cue.ideal * 1000 * (cue.kind === 'discussion' ? 1.9 : 0.8 + random() * 0.5)),
    );
    const next = order[index + 1];
    if (next !== undefined) await host.host({ type: 'Advance', from: cue.id });
  }
  await host.host({ type: 'Finish' });
  await host.until('host', ({ status }) => status === 'finished');
  return { house, made };
}

async function notesDuring(cue: Cue, guests: readonly Guest[], random: () => number): Promise<void> {
  if (cue.kind === 'odd-one-out') {
    for (const [row, guest] of guests.entries()) {
      const odd = oddGlassOf(trial, { row });
      const glass = random() < 0.7 ? odd : (odd % 3) + 1;
      await guest.save({ pour: trial.id, field: 'odd-one-out', value: { glass, guessed: false } });
      await guest.share({ pour: trial.id, sharing: 'counted' });
    }
  }
  if (cue.kind === 'ranking') {
    for (const guest of guests) {
      const scored = taste
        .map((place, index) => ({ index, score: place + random() * 3 }))
        .sort((a, b) => a.score - b.score);
      for (const [place, { index }] of scored.entries()) {
        await guest.save({ pour: plan.pours[index]?.id, field: 'place', value: place + 1 });
      }
    }
  }
  if (cue.kind === 'water') {
    const glass = plan.pours.findIndex(({ id }) => id === cue.after);
    for (const [row, guest] of guests.entries()) await fillPage(guest, row, glass, random);
  }
}

async function fillPage(guest: Guest, row: number, glass: number, random: () => number): Promise<void> {
  const pour = plan.pours[glass]?.id;
  const liking = Math.min(9, Math.max(1, Math.round(9 - (taste[glass] ?? 3) + random() * 3 - 1)));
  const picked = usual.filter((_, index) => random() < (index === glass % usual.length ? 0.9 : 0.25));
  const marks = Object.fromEntries(picked.map((word) => [word, 'clear']));
  await guest.save({ pour, field: 'nose', value: `Noted by hand of glass ${glass + 1}.` });
  await guest.save({ pour, field: 'nose-words', value: marks });
  await guest.save({
    pour,
    field: 'colour',
    value: swatches[Math.min(4, Math.floor(glass / 2 + random() * 3))],
  });
  await guest.save({ pour, field: 'structure', value: { sweet: 1 + Math.floor(random() * 4), body: 3 } });
  await guest.save({ pour, field: 'liking', value: liking });
  await guest.share({ pour, sharing: row < 5 ? 'shared' : 'counted' });
}
