import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { GuessValue } from '../../core/panel/guess/guess.ts';
import type { Plan, PlanInput } from '../../core/tasting.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { strictSeat, strictStage } from '../support/strict-views.ts';
import { credentials, type Device } from './support/device.ts';
import { type Guest, House, houseKey } from './support/house.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

const pours: NonNullable<PlanInput['pours']> = [
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
const blind = (changes: Partial<PlanInput> = {}): Plan => aPlan({ blind: true, pours, ...changes });

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

const guess = (guest: Device, value: object, pour = 'one', base = 0) =>
  guest.save({ field: 'guess', pour, value, base });

/** A table at which everybody has had all three glasses. */
async function table(names: readonly string[], plan = blind(), at = house, key = houseKey) {
  const made = await at.plan(plan, key);
  const host = await at.host(made);
  await host.host({ type: 'OpenDoors' });
  const guests: Guest[] = [];
  for (const name of names) guests.push(await at.guest(made, name));
  for (const pour of ['one', 'two', 'three']) await host.host({ type: 'JumpTo', cue: `${pour}/first/look` });
  return { made, host, guests };
}

const five = ['Ada', 'Ben', 'Cleo', 'Dirk', 'Esra'];
/** Ada is right, and may be named; Ben counts; Cleo and Dirk count; Esra keeps hers. */
async function guessed(host: Device, guests: readonly Guest[]) {
  const ages = [12, 14, 20, 9, 12];
  for (const [at, guest] of guests.entries()) {
    expect(await guess(guest, { style: 'single-malt', age: ages[at] ?? 10 })).toMatchObject({ ok: true });
    if (at < 4) await guest.consent({ guess: 'counts', ...(at === 0 ? { nearest: 'may-be-named' } : {}) });
  }
  await host.level();
}

describe('[Q12] guesses before the name', () => {
  it('reach no other device, and nothing but what the evening offers is one', async () => {
    const { host, guests, made } = await table(five.slice(0, 3));
    const [ada, ben] = guests;
    if (!ada || !ben) throw new Error('Nobody sat down.');
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    await Promise.all([host, ben, screen].map((each) => each.level()));
    const before = [host, ben, screen].map((each) => each.frames.length);
    expect(
      await guess(ada, { style: 'single-malt', origin: 'scotland/islay', age: 12, abv: 46, sure: 75 }),
    ).toMatchObject({
      ok: true,
    });
    await ada.consent({ guess: 'counts', nearest: 'may-be-named' });
    for (const value of [
      { vintage: 1700 },
      { abv: 140 },
      { age: -3 },
      { age: 12.5 },
      { style: 'own:rude words' },
      { origin: '' },
      { sure: 60 },
      { colour: 'red' },
      'single-malt',
      null,
    ]) {
      expect(await guess(ada, value as object, 'one', 1), JSON.stringify(value)).toMatchObject({ ok: false });
    }
    await Promise.all([host, ben, screen].map((each) => each.level()));
    const after = [host, ben, screen].map((each) =>
      each.frames.slice(before[[host, ben, screen].indexOf(each)]).filter((frame) => !/received/.test(frame)),
    );
    expect(after).toEqual([[], [], []]);
  });

  it('are among a choice that is the same for all and stands before each in an order of its own', async () => {
    const { guests } = await table(['Ada', 'Ben', 'Cleo', 'Dirk']);
    const sheets = guests.map((guest) => strictSeat.parse(guest.last('seat')).guess?.choices ?? {});
    const styles = sheets.map(({ style = [] }) => style);
    expect(new Set(styles.map((each) => each.join())).size).toBeGreaterThan(1);
    expect(new Set(styles.map((each) => each.toSorted().join())).size).toBe(1);
    expect(styles[0]?.length).toBeGreaterThanOrEqual(8);
  });

  it('are not on a page that its guest puts on the table', async () => {
    const { host, guests } = await table(['Ada', 'Ben']);
    const [ada, ben] = guests;
    await guess(ada as Guest, { style: 'single-malt' });
    await ada?.save({ field: 'nose', value: 'tar' });
    await ada?.consent({ page: { sharing: 'named', parts: ['nose', 'verdict'] }, guess: 'counts' });
    await host.host({ type: 'JumpTo', cue: 'one/water' });
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    const board = await ben?.until('board', ({ pours: open }) => (open[0]?.notes.length ?? 0) > 0);
    expect(board?.pours[0]?.notes[0]?.sealed.map(({ field }) => field)).toEqual(['nose']);
  });
});

describe('[Q12] guesses with the name', () => {
  it('are told without a name but of who agreed, beside the truth, with what chance would do', async () => {
    const { host, guests, made } = await table(five);
    await guessed(host, guests);
    await host.host({ type: 'Reveal', pours: ['one'] });
    const { pours: told } = await host.until('guesses');
    expect(told).toHaveLength(1);
    const [one] = told;
    expect(one?.counts).toEqual({ counted: 4, of: 5 });
    const age = one?.facts.find(({ fact }) => fact === 'age');
    expect(age).toMatchObject({
      truth: 12,
      guests: 4,
      spread: [
        { value: 9, guests: 1 },
        { value: 12, guests: 1 },
        { value: 14, guests: 1 },
        { value: 20, guests: 1 },
      ],
      nearest: ['Ada'],
    });
    expect(age?.chance).toBeGreaterThan(0);
    expect(age?.chance).toBeLessThan(0.2);
    // All are right: naming Ada alone leaves three whose guess is known as well, and the named one agreed.
    expect(one?.facts.find(({ fact }) => fact === 'style')).toMatchObject({ guests: 4, nearest: ['Ada'] });
    for (const name of five.slice(1)) expect(JSON.stringify(told)).not.toContain(name);
    const stage = strictStage.parse(await guests[0]?.until('stage', ({ truths }) => truths.length > 0));
    expect(stage.truths).toEqual([
      { pour: 'one', truth: { style: 'single-malt', origin: 'scotland/islay', age: 12, abv: 46 } },
    ]);
    // A television that joins in the middle is level at once.
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    expect(await screen.until('guesses')).toEqual({ anew: true, pours: told });
  });

  it('of one glass that was named by mistake tell nothing of another', async () => {
    const { host, guests } = await table(five);
    await guessed(host, guests);
    for (const guest of guests) await guess(guest, { age: 8 }, 'two');
    for (const guest of guests) await guest.consent({ guess: 'counts' }, ['two']);
    await host.host({ type: 'Reveal', pours: ['one'] });
    const told = await guests[4]?.until('guesses');
    expect(told?.pours.map(({ pour }) => pour)).toEqual(['one']);
    await guests[4]?.level();
    const heard = guests[4]?.frames.join('\n') ?? '';
    expect(heard).not.toContain('Marshlight two');
    expect(guests[4]?.last('stage')?.truths.map(({ pour }) => pour)).toEqual(['one']);
    // The other one still takes guesses.
    expect(await guess(guests[0] as Guest, { age: 9 }, 'two', 1)).toMatchObject({ ok: true });
  });

  it('are closed by it, and so is letting them count, but not taking that back', async () => {
    const { host, guests } = await table(five);
    await guessed(host, guests);
    await host.host({ type: 'Reveal', pours: ['one'] });
    await host.until('guesses');
    const [ada, , , , esra] = guests;
    expect(await guess(ada as Guest, { age: 11 }, 'one', 1)).toMatchObject({
      ok: false,
      code: 'guess-closed',
    });
    expect(await esra?.consent({ guess: 'counts' })).toMatchObject({ ok: false, code: 'guess-closed' });
    expect(await ada?.consent({ nearest: 'unnamed' })).toMatchObject({ ok: true });
    const unnamed = await host.until('guesses', ({ pours: [one] }) => one?.facts[0]?.nearest.length === 0);
    expect(unnamed.anew).toBe(true);
    await ada?.consent({ guess: 'only-for-me' });
    await guests[1]?.consent({ guess: 'only-for-me' });
    const few = await host.until('guesses', ({ pours: [one] }) => one?.counts === null);
    expect(few.pours).toEqual([{ pour: 'one', counts: null, currency: 'EUR', facts: [] }]);
  });

  it('say nothing of fewer than three, not even how many', async () => {
    const { host, guests } = await table(five);
    for (const guest of guests) await guess(guest, { age: 12 });
    for (const guest of guests.slice(0, 2)) await guest.consent({ guess: 'counts', nearest: 'may-be-named' });
    await host.host({ type: 'Reveal', pours: ['one'] });
    expect((await host.until('guesses')).pours).toEqual([
      { pour: 'one', counts: null, currency: 'EUR', facts: [] },
    ]);
  });

  it('are not told of a pour that was taken off the table after it was guessed', async () => {
    const { host, guests, made } = await table(five);
    await guessed(host, guests);
    await host.host({ type: 'DropPour', pour: 'one' });
    for (const guest of guests.slice(0, 3)) {
      await guess(guest, { age: 8 }, 'two');
      await guest.consent({ guess: 'counts' }, ['two']);
    }
    await host.host({ type: 'Reveal', pours: ['two'] });
    await host.until('guesses', ({ pours: told }) => told.some(({ pour }) => pour === 'two'));
    await host.host({ type: 'Finish' });
    await guests[0]?.until('stage', ({ status }) => status === 'finished');
    await host.level();
    const all = host.heard.filter(({ event }) => event === 'guesses').map(({ view }) => JSON.stringify(view));
    expect(all.join()).not.toContain('"one"');
    // The guest still takes home what they guessed of it.
    const kept = await house.ask<Keepsake>('GET', `/api/keepsake/${made.tasting}`, {
      key: guests[0]?.key ?? '',
    });
    const entries = kept.body.pours.find(({ pour }) => pour === 'one')?.entries ?? [];
    expect(entries.map(({ field }) => field)).toEqual(['guess']);
  });

  it('are told the same by a server that is killed between the tap and the telling', async () => {
    const folder = temporaryFolder();
    const processes = [new ServerProcess(folder.path)];
    const open = async (process: ServerProcess | undefined) => {
      const { url, houseKey: key } = (await process?.started()) ?? { url: '', houseKey: '' };
      return { at: new House({ url, stop: async () => undefined }), key };
    };
    try {
      const before = await open(processes[0]);
      const { host, guests, made } = await table(five, blind(), before.at, before.key);
      await guessed(host, guests);
      const tap = host.host({ type: 'Reveal', pours: ['one'] });
      expect(await tap).toMatchObject({ ok: true });
      await processes[0]?.signal('SIGKILL');
      const next = new ServerProcess(folder.path);
      processes.push(next);
      const after = await open(next);
      const back = await after.at.enter(credentials('guest', made.tasting, guests[4]?.key ?? ''));
      const { pours: told } = await back.until('guesses');
      expect(told[0]?.counts).toEqual({ counted: 4, of: 5 });
      expect(told[0]?.facts.find(({ fact }) => fact === 'age')?.nearest).toEqual(['Ada']);
      back.close();
    } finally {
      await Promise.all(processes.map((each) => each.signal('SIGKILL')));
      folder.remove();
    }
  });

  it('hold for forty guests with orders of their own and sixteen pours', async () => {
    const many = Array.from({ length: 16 }, (_, at) => ({
      ...pours[at % 3],
      id: `p${at}`,
      drink: 'spirit' as const,
      name: `Cask ${at}`,
    }));
    const rows = [many.map(({ id }) => id), many.map(({ id }) => id).toReversed()];
    const plan = blind({
      pours: many,
      flightSizes: [16],
      ownOrders: true,
      servingOrders: [{ rows }],
      level: 'devotees',
    });
    const made = await house.plan(plan);
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    const guests: Guest[] = [];
    for (let at = 0; at < 40; at += 1) guests.push(await house.guest(made, `Guest ${at}`));
    for (const { id } of many) await host.host({ type: 'JumpTo', cue: `${id}/first/look` });
    for (const [at, guest] of guests.entries()) {
      await guess(guest, { age: 5 + (at % 20), style: at % 2 === 0 ? 'single-malt' : 'bourbon' }, 'p0');
      await guest.consent({ guess: 'counts' }, ['p0']);
    }
    expect(await host.host({ type: 'Reveal', pours: many.map(({ id }) => id) })).toMatchObject({ ok: true });
    const { pours: told } = (await guests[39]?.until('guesses', (each) => each.pours.length === 16)) ?? {
      pours: [],
    };
    expect(told.find(({ pour }) => pour === 'p0')?.counts).toEqual({ counted: 40, of: 40 });
    const { facts: [style] = [] } = told.find(({ pour }) => pour === 'p0') ?? {};
    const people = (value: GuessValue) => style?.spread.find((each) => each.value === value)?.guests;
    expect([people('single-malt'), people('bourbon')]).toEqual([20, 20]);
  });
});
