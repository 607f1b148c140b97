import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Keepsake } from '../../shared/wire/http.ts';
import { strictSeat, strictStage } from '../support/strict-views.ts';
import { credentials } from './support/device.ts';
import { blindOfThree, five, guess, guessed, tableOf } from './support/guessed.ts';
import { type Guest, House } from './support/house.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

const table = (names: readonly string[], plan = blindOfThree()) => tableOf(house, names, plan);

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
    // Who is here is told when it was gathered, whatever anybody guesses.
    const after = [host, ben, screen].map((each) =>
      each.frames
        .slice(before[[host, ben, screen].indexOf(each)])
        .filter((frame) => !/received|\["presence",/.test(frame)),
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
    // Home goes what was told and of nobody by name: a file keeps what can be taken back here.
    const path = `/api/keepsake/${made.tasting}`;
    const { body: kept } = await house.ask<Keepsake>('GET', path, { key: guests[4]?.key ?? '' });
    expect(kept.room?.guesses).toEqual(
      told.map((each) => ({ ...each, facts: each.facts.map((fact) => ({ ...fact, nearest: [] })) })),
    );
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

  it('are closed by it, and so is letting them count; a name can be taken back, and what was counted stays', async () => {
    const { host, guests, made } = await table(five);
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
    const { pours: unnamed } = await host.until(
      'guesses',
      ({ pours: [one] }) => one?.facts[0]?.nearest.length === 0,
    );
    await host.level();
    // Made anew with one fewer it would show which guess is gone [R1]: the counts stay, and nobody hears of it.
    const heard = host.heard.length;
    for (const guest of guests.slice(0, 3))
      expect(await guest.consent({ guess: 'only-for-me' })).toMatchObject({ ok: true });
    await house.ask('DELETE', `/api/keepsake/${made.tasting}`, { key: guests[3]?.key ?? '' });
    await host.level();
    expect(host.heard.slice(heard).filter(({ event }) => event === 'guesses')).toEqual([]);
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    expect((await screen.until('guesses')).pours).toEqual(unnamed);
    expect(unnamed[0]?.counts).toEqual({ counted: 4, of: 5 });
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
});
