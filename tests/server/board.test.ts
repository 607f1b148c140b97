import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { BoardView } from '../../shared/wire/board.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock });
});
afterEach(() => house.close());

const notesOn = (board: BoardView | undefined) => board?.pours.flatMap(({ notes }) => notes) ?? [];

async function atFirstGlass() {
  const evening = await house.evening();
  await evening.host.host({ type: 'JumpTo', cue: 'one/first/look' });
  return evening;
}

describe('the board', () => {
  it('[Q1, Q2] shows what was shared once the discussion is open, to everybody, and closes', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'apples' });
    await noor.share();
    await tomas.save({ value: 'mine alone' });
    expect(notesOn(host.last('board'))).toEqual([]);
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    for (const device of [host, noor, tomas]) {
      const board = await device.until('board', ({ pours }) => pours.length === 1);
      expect(notesOn(board)).toEqual([
        {
          seat: noor.seat,
          oddGlass: null,
          name: 'Noor',
          remote: false,
          sealed: [{ field: 'nose', value: 'apples' }],
          addedLater: [],
        },
      ]);
    }
    await host.host({ type: 'CloseDiscussion', pours: ['one'] });
    for (const device of [host, tomas]) await device.until('board', ({ pours }) => pours.length === 0);
  });

  it('[Q2] takes down what is withdrawn', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'apples' });
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await noor.share();
    await clock.advance(500);
    await tomas.until('board', (board) => notesOn(board).length === 1);
    await noor.save({ value: 'apples and pears', base: 1 });
    // Not even the pause that gathers changes is waited for.
    await noor.share({ sharing: 'private' });
    await tomas.until('board', (board) => notesOn(board).length === 0);
  });

  it('[Q3] seals the notes as they stand, and marks what is added', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'apples' });
    await noor.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await noor.save({ value: 'apples and smoke', base: 1 });
    await noor.save({ field: 'palate', value: 'salt' });
    await clock.advance(500);
    const board = await tomas.until('board', (view) => notesOn(view)[0]?.addedLater.length === 2);
    expect(notesOn(board)[0]).toMatchObject({
      sealed: [{ field: 'nose', value: 'apples' }],
      addedLater: [
        { field: 'nose', value: 'and smoke' },
        { field: 'palate', value: 'salt' },
      ],
    });
    // Taking back what was said before the others spoke is not possible on the board.
    await noor.save({ value: 'pears', base: 2 });
    await clock.advance(500);
    const changed = await tomas.until('board', (view) => notesOn(view)[0]?.addedLater[0]?.value === 'pears');
    expect(notesOn(changed)[0]?.sealed).toEqual([{ field: 'nose', value: 'apples' }]);
  });

  it('[Q3] keeps the first seal when a discussion is opened again', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'apples' });
    await noor.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await host.host({ type: 'CloseDiscussion', pours: ['one'] });
    await tomas.until('board', ({ pours }) => pours.length === 0);
    await noor.save({ value: 'apples, pears', base: 1 });
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    const board = await tomas.until('board', ({ pours }) => pours.length === 1);
    expect(notesOn(board)[0]).toMatchObject({
      sealed: [{ field: 'nose', value: 'apples' }],
      addedLater: [{ field: 'nose', value: ', pears' }],
    });
  });

  it('does not carry what a guest who was removed has shared', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'rude words' });
    await noor.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await tomas.until('board', (board) => notesOn(board).length === 1);
    await host.host({ type: 'RemoveSeat', seat: noor.seat });
    await clock.advance(500);
    await tomas.until('board', (board) => notesOn(board).length === 0);
  });

  it('gathers many changes into few messages', async () => {
    const { host, noor, tomas } = await atFirstGlass();
    await noor.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await tomas.until('board', ({ pours }) => pours.length === 1);
    const before = tomas.count('board');
    for (let revision = 0; revision < 20; revision += 1) {
      await noor.save({ value: 'x'.repeat(revision + 1), base: revision });
    }
    await clock.advance(500);
    await tomas.until('board', (board) => String(notesOn(board)[0]?.addedLater[0]?.value).length === 20);
    expect(tomas.count('board') - before).toBeLessThanOrEqual(2);
  });
});

describe('notes', () => {
  it('are taken for glasses that have been in front of the room, also after leaving and after the end', async () => {
    const { made, host, noor } = await atFirstGlass();
    expect(await noor.save({ pour: 'two', value: 'too early' })).toMatchObject({ code: 'not-reached' });
    expect(await noor.save({ pour: 'elsewhere', value: 'where' })).toMatchObject({ code: 'not-reached' });
    expect(await noor.share({ pour: 'elsewhere' })).toMatchObject({ code: 'not-reached' });
    expect(await noor.share({ pour: 'two' })).toMatchObject({ code: 'not-reached' });
    await noor.guest({ type: 'LeaveTable' });
    expect(await noor.save({ value: 'on the way home' })).toMatchObject({ ok: true, revision: 1 });
    await host.host({ type: 'Finish' });
    expect(await noor.save({ value: 'at home', base: 1 })).toMatchObject({ ok: true, revision: 2 });
    const { body } = await house.ask<Keepsake>('GET', `/api/keepsake/${made.tasting}`, { key: noor.key });
    expect(body.pours).toMatchObject([
      { pour: 'one', facts: { name: 'Marshlight one' }, entries: [{ value: 'at home' }] },
    ]);
  });

  it('are saved once for the same command, which is answered with what stands there', async () => {
    const { noor } = await atFirstGlass();
    await noor.save({ id: 'saved-only-once', value: 'apples' });
    const later = await noor.save({ value: 'apples and pears', base: 1 });
    expect(await noor.save({ id: 'saved-only-once', value: 'apples' })).toEqual(later);
  });

  it('[Q4] of a blind pour come home without its name until it is revealed', async () => {
    const plan = aPlan({ blind: true, codes: { one: '417', two: '902', three: '388' } });
    const { made, host, noor } = await house.evening(plan);
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'guessing' });
    const keepsake = () => house.ask<Keepsake>('GET', `/api/keepsake/${made.tasting}`, { key: noor.key });
    expect(JSON.stringify((await keepsake()).body)).not.toContain('Marshlight');
    expect((await keepsake()).body.pours).toMatchObject([{ facts: null, code: '417' }]);
    await host.host({ type: 'Reveal', pours: ['one'] });
    expect((await keepsake()).body.pours[0]?.facts?.name).toBe('Marshlight one');
  });

  it('goes whole to pages of the protocol before, and to others in parts', async () => {
    const { made, host, noor, tomas } = await atFirstGlass();
    await noor.save({ value: 'apples' });
    await noor.share();
    const old = await house.enter({ ...credentials('guest', made.tasting, tomas.key), protocol: 1 });
    expect((await old.until('board')).pours).toEqual([]);
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    for (const device of [old, tomas]) {
      expect(notesOn(await device.until('board', ({ pours }) => pours.length === 1))).toMatchObject([
        { sealed: [{ field: 'nose', value: 'apples' }] },
      ]);
    }
    expect(old.count('board-change')).toBe(0);
    expect(tomas.frames.some((frame) => frame.startsWith('2["board",'))).toBe(false);
    await noor.share({ sharing: 'private' });
    for (const device of [old, tomas]) await device.until('board', (board) => notesOn(board).length === 0);
  });
});
