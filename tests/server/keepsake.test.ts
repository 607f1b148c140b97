import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { strictBoard, strictStage } from '../support/strict-views.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let folder: string;
let house: House;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'keepsake-'));
  house = await House.open({
    clock: new ManualClock(),
    store: openSqliteStore(join(folder, 'store.sqlite')),
  });
});
afterEach(async () => {
  await house.close();
  rmSync(folder, { recursive: true });
});

const bytes = () =>
  Buffer.concat(readdirSync(folder).map((name) => readFileSync(join(folder, name)))).toString('latin1');

const trial = {
  id: 'trial-one',
  flight: 0,
  a: 'one',
  b: 'two',
  codes: { a: ['111', '222'], b: ['333', '444'] },
  orders: ['ABA', 'BBA'],
} as const;
const plan = aPlan({
  extraWords: ['ferry rope'],
  trials: [{ ...trial, codes: { a: ['111', '222'], b: ['333', '444'] }, orders: ['ABA', 'BBA'] }],
});

describe('a keepsake that is deleted by its guest', () => {
  it('leaves nothing in the file, closes the link, and takes down what was shared', async () => {
    const { made, host, noor, tomas } = await house.evening(plan);
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'canary-of-noor' });
    await noor.save({ field: 'nose-words', value: { 'own:canary-of-noor': 'clear' } });
    await tomas.save({ value: 'robin-of-tomas' });
    await noor.share();
    await tomas.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await tomas.until('board', ({ pours }) => pours[0]?.notes.length === 2);
    const path = `/api/keepsake/${made.tasting}`;
    expect((await house.ask('DELETE', path, { key: made.hostKey })).status).toBe(403);

    expect((await house.ask('DELETE', path, { key: noor.key })).status).toBe(204);
    expect(await noor.dismissed()).toBe('key-withdrawn');
    expect(bytes()).not.toContain('canary-of-noor');
    const board = await tomas.until('board', ({ pours }) => pours[0]?.notes.length === 1);
    expect(board.pours[0]?.notes[0]?.name).toBe('Tomas');
    expect((await house.ask('GET', path, { key: noor.key })).status).toBe(401);
    expect((await house.ask<Keepsake>('GET', path, { key: tomas.key })).body.pours[0]?.entries).toHaveLength(
      1,
    );
  });
});

describe('an odd-one-out', () => {
  it('comes home with the pick, and with the answer once its talk has been opened', async () => {
    const { made, host, noor, tomas } = await house.evening(plan);
    await host.host({ type: 'JumpTo', cue: 'trial-one/odd-one-out' });
    const picked = { glass: 2, guessed: true };
    await noor.save({ pour: trial.id, field: 'odd-one-out', value: picked });
    await noor.share({ pour: trial.id });
    const home = async () =>
      (await house.ask<Keepsake>('GET', `/api/keepsake/${made.tasting}`, { key: noor.key })).body.trials;
    expect(await home()).toEqual([{ trial: trial.id, glasses: ['111', '333', '222'], picked, odd: null }]);
    await host.host({ type: 'OpenDiscussion', pours: [trial.id] });
    expect(await home()).toMatchObject([{ odd: 2 }]);
    const board = strictBoard.parse(await tomas.until('board', ({ pours }) => pours.length === 1));
    expect(board.pours).toMatchObject([{ pour: trial.id, drink: null, notes: [{ oddGlass: 2 }] }]);
    const stage = await tomas.until('stage', ({ openBoards }) => openBoards.length === 1);
    expect(strictStage.parse(stage)).toMatchObject({ openBoards: [trial.id], extraWords: ['ferry rope'] });
  });
});

describe('the table of a board', () => {
  it('names who sits there while a talk is open, and nobody before or after', async () => {
    const { host, tomas } = await house.evening(plan);
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect(tomas.last('board')?.table).toEqual([]);
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    const open = await tomas.until('board', ({ pours }) => pours.length === 1);
    expect(open.table.map(({ name }) => name)).toEqual(['Noor', 'Tomas']);
    await host.host({ type: 'CloseDiscussion', pours: ['one'] });
    expect((await tomas.until('board', ({ pours }) => pours.length === 0)).table).toEqual([]);
  });
});
