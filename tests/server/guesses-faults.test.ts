import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { GuessValue } from '../../core/panel/guess/guess.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { credentials } from './support/device.ts';
import { blindOfThree, five, guess, guessed, knownPours, tableOf } from './support/guessed.ts';
import { type Guest, House } from './support/house.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

describe('[Q12] guesses in an evening that goes wrong', () => {
  it('are not told of a pour that was taken off the table after it was guessed', async () => {
    const { host, guests, made } = await tableOf(house, five);
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

  it('are told the same by a server that is killed after the tap, and again after somebody has taken theirs back', async () => {
    const folder = temporaryFolder();
    const processes = [new ServerProcess(folder.path)];
    const open = async (process: ServerProcess | undefined) => {
      const { url, houseKey: key } = (await process?.started()) ?? { url: '', houseKey: '' };
      return { at: new House({ url, stop: async () => undefined }), key };
    };
    try {
      const before = await open(processes[0]);
      const { host, guests, made } = await tableOf(before.at, five, blindOfThree(), before.key);
      await guessed(host, guests);
      const tap = host.host({ type: 'Reveal', pours: ['one'] });
      expect(await tap).toMatchObject({ ok: true });
      await processes[0]?.signal('SIGKILL');
      const nearest: string[][] = [];
      for (const time of ['first', 'second']) {
        const next = new ServerProcess(folder.path);
        processes.push(next);
        const after = await open(next);
        const enter = (at: number) =>
          after.at.enter(credentials('guest', made.tasting, guests[at]?.key ?? ''));
        const back = await enter(4);
        const { pours: told } = await back.until('guesses');
        expect(told[0]?.counts, time).toEqual({ counted: 4, of: 5 });
        nearest.push([...(told[0]?.facts.find(({ fact }) => fact === 'age')?.nearest ?? [])]);
        const ada = await enter(0);
        expect(await ada.consent({ guess: 'only-for-me' })).toMatchObject({ ok: true });
        for (const device of [back, ada]) device.close();
        await next.signal('SIGKILL');
      }
      expect(nearest).toEqual([['Ada'], []]);
    } finally {
      await Promise.all(processes.map((each) => each.signal('SIGKILL')));
      folder.remove();
    }
  });

  it('hold for forty guests with orders of their own and sixteen pours', async () => {
    const many = Array.from({ length: 16 }, (_, at) => ({
      ...knownPours[at % 3],
      id: `p${at}`,
      drink: 'spirit' as const,
      name: `Cask ${at}`,
    }));
    const rows = [many.map(({ id }) => id), many.map(({ id }) => id).toReversed()];
    const plan = blindOfThree({
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
