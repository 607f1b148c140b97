import { expect } from 'vitest';
import type { Plan, PlanInput } from '../../../core/tasting.ts';
import type { Device } from './device.ts';
import { type Guest, type House, houseKey } from './house.ts';
import { aPlan } from './plans.ts';

export const knownPours: NonNullable<PlanInput['pours']> = [
  {
    id: 'one',
    drink: 'spirit',
    name: 'Marshlight one',
    style: 'single malt',
    country: 'Scotland',
    region: 'Islay',
    ageYears: 12,
    abv: 46,
  },
  {
    id: 'two',
    drink: 'spirit',
    name: 'Marshlight two',
    style: 'bourbon',
    country: 'USA',
    region: 'Kentucky',
    ageYears: 8,
    abv: 50,
  },
  {
    id: 'three',
    drink: 'spirit',
    name: 'Marshlight three',
    style: 'rye',
    country: 'Canada',
    ageYears: 10,
    abv: 45,
  },
];
export const blindOfThree = (changes: Partial<PlanInput> = {}): Plan =>
  aPlan({ blind: true, pours: knownPours, ...changes });

export const guess = (guest: Device, value: object, pour = 'one', base = 0) =>
  guest.save({ field: 'guess', pour, value, base });

/** A table at which everybody has had all three glasses. */
export async function tableOf(at: House, names: readonly string[], plan = blindOfThree(), key = houseKey) {
  const made = await at.plan(plan, key);
  const host = await at.host(made);
  await host.host({ type: 'OpenDoors' });
  const guests: Guest[] = [];
  for (const name of names) guests.push(await at.guest(made, name));
  for (const pour of ['one', 'two', 'three']) await host.host({ type: 'JumpTo', cue: `${pour}/first/look` });
  return { made, host, guests };
}

export const five = ['Ada', 'Ben', 'Cleo', 'Dirk', 'Esra'];
/** Ada is right, and may be named; Ben counts; Cleo and Dirk count; Esra keeps hers. */
export async function guessed(host: Device, guests: readonly Guest[]) {
  const ages = [12, 14, 20, 9, 12];
  for (const [at, guest] of guests.entries()) {
    expect(await guess(guest, { style: 'single-malt', age: ages[at] ?? 10 })).toMatchObject({ ok: true });
    if (at < 4) await guest.consent({ guess: 'counts', ...(at === 0 ? { nearest: 'may-be-named' } : {}) });
  }
  await host.level();
}
