import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId } from '../../../core/ids.ts';
import { notesRoom, seatRoom } from '../../../server/live/rooms.ts';
import { refusal } from '../../../server/refusal.ts';
import { type Store, StoreFailure } from '../../../server/store/store.ts';
import { keyOf, noor, OneConductor, tasting } from '../support/one-conductor.ts';

let room: OneConductor;
beforeEach(async () => {
  room = await OneConductor.open();
});
afterEach(() => room.close());

const one = pourId('one');

describe('notes', () => {
  const save = (value: string, id = room.anId()) =>
    room.conductor.saveNote(noor, { id, pour: one, field: 'nose', value, base: 0 });

  beforeEach(async () => {
    await room.openDoors();
    await room.sit('noor');
    await room.goTo('one/first/look');
    room.said.length = 0;
  });

  it('go to the other devices of their seat and nowhere else', async () => {
    expect(await save('apples')).toMatchObject({ ok: true, revision: 1 });
    expect(room.said.map(({ event, to }) => [event, to])).toEqual([['notebook', [notesRoom(tasting, noor)]]]);
    room.said.length = 0;
    expect(
      await room.conductor.giveConsents(noor, { id: room.anId(), pour: one, sharing: 'shared' }),
    ).toMatchObject({
      ok: true,
    });
    expect(room.said.map(({ event, to }) => [event, to])).toEqual([['notebook', [notesRoom(tasting, noor)]]]);
  });

  it('are told entry by entry, with all that is shared: a notebook that grows is not sent again and again', async () => {
    const { conductor, store } = room;
    await save('apples');
    await conductor.giveConsents(noor, { id: room.anId(), pour: one, sharing: 'counted' });
    room.said.length = 0;
    const palate = { id: room.anId(), pour: one, field: 'palate', value: 'salt', base: 0 } as const;
    await conductor.saveNote(noor, palate);
    const sharings = [{ pour: one, sharing: 'counted' }];
    const consents = [expect.objectContaining({ pour: one })];
    expect(room.said.map(({ body }) => body)).toEqual([
      {
        seat: noor,
        entries: [expect.objectContaining({ field: 'palate', value: 'salt' })],
        consents,
        sharings,
      },
    ]);
    expect(store.notebooks.read(tasting, noor).entries).toHaveLength(2);
    room.said.length = 0;
    await conductor.giveConsents(noor, { id: room.anId(), pour: one, sharing: 'private' });
    expect(room.said.map(({ body }) => body)).toEqual([{ seat: noor, entries: [], consents, sharings: [] }]);
  });

  it('are not told again when nothing changed', async () => {
    const id = commandId('a-note');
    await save('apples', id);
    room.said.length = 0;
    expect(await save('apples', id)).toMatchObject({ ok: true, revision: 1 });
    expect(await save('', room.anId())).toMatchObject({ ok: true });
    expect(room.said).toEqual([]);
  });

  it('that the store does not take are refused', async () => {
    const save = async () => {
      throw new StoreFailure('The disk is full.');
    };
    room.again({ store: { ...room.store, notebooks: { ...room.store.notebooks, save } } });
    const answer = await room.conductor.saveNote(noor, {
      id: room.anId(),
      pour: one,
      field: 'nose',
      value: 'apples',
      base: 0,
    });
    expect(answer).toEqual(refusal('not-stored'));
    expect(room.log.lines).toHaveLength(1);
  });

  it('are forgotten with what was saved while they were being forgotten, and their devices are let go', async () => {
    await save('apples');
    room.said.length = 0;
    const forgetting = room.conductor.forgetNotes(noor);
    const between = save('pears');
    expect(await forgetting).toBe(true);
    await between;
    expect(room.store.notebooks.read(tasting, noor).entries).toEqual([]);
    expect(room.store.keys.find(keyOf('noor').hash)).toBeUndefined();
    expect(room.said.filter(({ event }) => event === 'dismissal')).toEqual([
      { event: 'dismissal', to: [seatRoom(tasting, noor)], body: 'key-withdrawn' },
    ]);
  });

  it.each([1, 2])('are not said to be forgotten when the store refuses the %i. time', async (failingAt) => {
    let times = 0;
    const forget: Store['notebooks']['forget'] = async (...whose) => {
      times += 1;
      if (times === failingAt) throw new StoreFailure('The disk is full.');
      return room.store.notebooks.forget(...whose);
    };
    room.again({ store: { ...room.store, notebooks: { ...room.store.notebooks, forget } } });
    room.said.length = 0;
    expect(await room.conductor.forgetNotes(noor)).toBe(false);
    expect(times).toBe(failingAt);
    expect(room.said).toEqual([]);
  });
});
