import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commandId, seatId, tastingId } from '../../../core/ids.ts';
import type { Session } from '../../../core/session/state.ts';
import { BoardRoom } from '../../../server/live/board-room.ts';
import { hostsOf } from '../../../server/live/rooms.ts';
import type { Store } from '../../../server/store/store.ts';
import {
  type BoardChange,
  type BoardPart,
  type BoardView,
  boardOfParts,
} from '../../../shared/wire/board.ts';
import { type Parts, withChange } from '../../../shared/wire/parts.ts';
import { consentsBefore, type KeptConsents } from '../../../shared/wire/permits.ts';
import type { SharingBefore } from '../../../shared/wire/sharing.ts';
import { ash, EveningTold } from '../../support/evening.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { planOf } from '../../support/plans.ts';
import { FakeSocket, fakeServer } from '../support/fake-socket.ts';
import { ManualClock } from '../support/manual-clock.ts';

const tasting = tastingId('harvest');
const noor = seatId('noor');

let clock: ManualClock;
let store: Store;
let evening: EveningTold;
let live: ReturnType<typeof fakeServer>;
let room: BoardRoom;
let device: FakeSocket;
let ids = 0;

beforeEach(async () => {
  clock = new ManualClock();
  store = memoryStore();
  live = fakeServer();
  evening = new EveningTold(planOf(3)).sit('noor', 'tomas').goTo('ash/water');
  await store.tastings.create({
    tasting,
    code: 'ABC234',
    plan: planOf(3),
    revision: 1,
    createdAt: clock.now(),
  });
  room = aRoom();
  device = enters();
});
afterEach(async () => {
  room.stop();
  await store.close();
});

const aRoom = () => new BoardRoom({ io: live.io, tasting, store, clock }, () => evening.session);

/** What the host or a guest does, and what the room makes of it. */
function happens(change: () => unknown): void {
  const before: Session = evening.session;
  expect(change()).toBe('done');
  room.follow(before, evening.session);
}
const open = () => happens(() => evening.host({ type: 'OpenDiscussion', pours: [ash] }));
const close = () => happens(() => evening.host({ type: 'CloseDiscussion', pours: [ash] }));

async function write(value: string): Promise<void> {
  const entry = { pour: ash, field: 'nose', value, revision: 1, savedAt: clock.now() } as const;
  const answer = { ok: true, revision: 1, value, savedAt: clock.now() } as const;
  ids += 1;
  const answered = { command: commandId(`note-${ids}`), answer };
  await store.notebooks.save({ tasting, seat: noor, entry, answered });
}
const share = (sharing: SharingBefore) => gives(consentsBefore(sharing));
async function gives(consents: KeptConsents, seat = noor): Promise<void> {
  ids += 1;
  const answered = { command: commandId(`share-${ids}`), answer: { ok: true, version: 1 } } as const;
  await store.notebooks.consent({ tasting, seat, pours: [ash], consents, answered });
}

function enters(protocol?: number): FakeSocket {
  const socket = new FakeSocket(protocol);
  live.sockets.push(socket);
  room.welcome([socket.asLive]);
  return socket;
}

/** What a device has shown, one after the other: put together from the changes as a page does. */
function shownOn({ heard }: FakeSocket): BoardView[] {
  let parts: Parts<BoardPart> = new Map();
  return heard.map(({ event, body }) => {
    if (event === 'board') return body as BoardView;
    const change = body as BoardChange;
    parts = withChange(change.anew ? new Map() : parts, change);
    return boardOfParts(parts, change.version);
  });
}
/** Without the one that it got on entering. */
const boards = () => shownOn(device).slice(1);
const written = () => boards().map(({ pours }) => pours[0]?.notes[0]?.sealed[0]?.value);

describe('the board of a tasting', () => {
  it('[Q1] is empty, and no notebook is looked into, until a discussion is open', async () => {
    const looked = vi.spyOn(store.notebooks, 'readPermitted');
    await write('apples');
    await share('shared');
    room.notesChanged(noor, false);
    room.notesChanged(noor, true);
    happens(() => evening.guest('noor', { type: 'ChangeSeat', name: 'Noor' }));
    await clock.advance(10_000);
    expect(boards()).toEqual([]);
    expect(looked).not.toHaveBeenCalled();
    expect(room.view()).toEqual({ version: clock.now() - 10_000, table: [], pours: [] });
  });

  it('goes to guests, screens and hosts at once when it is opened and when it is closed', async () => {
    await write('apples');
    await share('shared');
    const first = room.view().version;
    open();
    expect(boards()).toEqual([
      {
        version: first + 1,
        table: [
          { seat: 'noor', name: 'noor', remote: false },
          { seat: 'tomas', name: 'tomas', remote: false },
        ],
        pours: [
          {
            pour: 'ash',
            drink: 'spirit',
            sealedAt: evening.now,
            notes: [
              {
                seat: 'noor',
                name: 'noor',
                remote: false,
                oddGlass: null,
                sealed: [{ field: 'nose', value: 'apples' }],
                addedLater: [],
              },
            ],
          },
        ],
      },
    ]);
    expect(room.view()).toEqual(boards()[0]);
    close();
    expect(boards().at(-1)).toEqual({ version: first + 2, table: [], pours: [] });
  });

  it('shows at once what was open already when the server came back, with a greater version', async () => {
    open();
    const before = room.view();
    await clock.advance(60_000);
    const again = aRoom();
    expect(again.view()).toEqual({ ...before, version: clock.now() });
    expect(again.view().version).toBeGreaterThan(before.version);
    again.stop();
  });

  it('says nothing when nothing on it changed', async () => {
    open();
    device.heard.length = 1;
    room.notesChanged(noor, true);
    happens(() => evening.host({ type: 'Hold' }));
    await clock.advance(500);
    expect(boards()).toEqual([]);
  });

  it('follows a changed name while it is open, within half a second', async () => {
    open();
    await clock.advance(499);
    happens(() => evening.guest('noor', { type: 'ChangeSeat', name: 'Noor' }));
    expect(boards()).toHaveLength(1);
    await clock.advance(1);
    expect(boards().map(({ table }) => table[0]?.name)).toEqual(['noor', 'Noor']);
  });

  it('looks at nothing again when what changed is neither a board nor a seat', async () => {
    open();
    await clock.advance(500);
    const looked = vi.spyOn(store.notebooks, 'readPermitted');
    happens(() => evening.host({ type: 'Hold' }));
    await clock.advance(500);
    expect(looked).not.toHaveBeenCalled();
    happens(() => evening.host({ type: 'RemoveSeat', seat: noor }));
    expect(
      boards()
        .at(-1)
        ?.table.map(({ seat }) => seat),
    ).toEqual(['tomas']);
    room.notesChanged(noor, true);
    expect(looked.mock.calls.map(([, , only]) => only)).toEqual(['noor']);
  });

  it('gathers what is written for half a second, and takes down at once what is withdrawn [Q2]', async () => {
    await share('shared');
    await write('a');
    open();
    await write('ap');
    room.notesChanged(noor, false);
    await write('app');
    room.notesChanged(noor, false);
    expect(written()).toEqual(['a']);
    await clock.advance(500);
    expect(written()).toEqual(['a', 'app']);
    await share('private');
    room.notesChanged(noor, true);
    expect(written()).toEqual(['a', 'app', undefined]);
    await clock.advance(500);
    expect(boards()).toHaveLength(3);
  });

  it('says nothing more once it is stopped', async () => {
    open();
    await share('shared');
    await write('apples');
    room.notesChanged(noor, false);
    room.stop();
    await clock.advance(10_000);
    expect(boards()).toHaveLength(1);
  });

  it('opens a second pour beside the first', () => {
    evening.goTo('birch/water');
    open();
    const pour = evening.underWay.plan.pours[1]?.id;
    happens(() => evening.host({ type: 'OpenDiscussion', pours: pour === undefined ? [] : [pour] }));
    expect(boards().map(({ pours }) => pours.map((each) => each.pour))).toEqual([['ash'], ['ash', 'birch']]);
  });

  it('[Q9] holds a page without a name, without an id of its seat, as it stood when the talk opened', async () => {
    await write('apples');
    await gives({ page: { sharing: 'unnamed', parts: ['nose'] }, liking: 'counts' });
    open();
    const nobody = { seat: null, name: '', remote: false, oddGlass: null, addedLater: [] };
    expect(boards().at(-1)?.pours[0]?.notes).toEqual([
      { ...nobody, sealed: [{ field: 'nose', value: 'apples' }] },
    ]);
    const keys = device.heard.flatMap(({ body }) => (body as BoardChange).put.map(([key]) => key));
    expect(keys.filter((key) => key.startsWith('n '))).toEqual([expect.stringMatching(/^n ash [\w-]{12}$/)]);
    const entry = {
      pour: ash,
      field: 'nose',
      value: 'apples and pears',
      revision: 2,
      savedAt: clock.now(),
    } as const;
    const later = { ...entry, sealedValue: 'apples' };
    const answered = { command: commandId('later'), answer: { ok: true, version: 1 } } as const;
    await store.notebooks.save({
      tasting,
      seat: noor,
      entry: later,
      answered: { ...answered, answer: { ok: true, ...entry } },
    });
    room.notesChanged(noor, false);
    await clock.advance(10_000);
    expect(boards()).toHaveLength(1);
    // The host takes them off the table: if their page went, it would be known whose it was.
    happens(() => evening.host({ type: 'RemoveSeat', seat: noor }));
    await clock.advance(10_000);
    expect(boards().at(-1)?.pours[0]?.notes).toHaveLength(1);
    await gives({ page: { sharing: 'private', parts: [] } });
    room.notesChanged(noor, true);
    expect(boards().at(-1)?.pours[0]?.notes).toEqual([]);
  });

  it('[Q11] tells hosts how many have answered while a talk is open, not what, and nobody else', async () => {
    const tablet = new FakeSocket(undefined, 'host');
    tablet.join(hostsOf(tasting));
    live.sockets.push(tablet);
    room.welcome([tablet.asLive]);
    const told = (socket: FakeSocket) =>
      socket.heard.flatMap(({ event, body }) => (event === 'talk' ? [body] : []));
    await gives({ page: { sharing: 'private', parts: [] } });
    room.notesChanged(noor, false);
    await clock.advance(1000);
    expect(told(tablet)).toEqual([null]);
    open();
    await gives({ page: { sharing: 'named', parts: ['nose'] } }, seatId('tomas'));
    room.notesChanged(seatId('tomas'), false);
    await clock.advance(1000);
    await gives({ order: 'counts' }, seatId('tomas'));
    room.notesChanged(seatId('tomas'), false);
    await clock.advance(1000);
    close();
    expect(told(tablet)).toEqual([null, { chosen: 1, of: 2 }, { chosen: 2, of: 2 }, null]);
    expect(told(device)).toEqual([]);
  });
});
