import { beforeEach, describe, expect, it } from 'vitest';
import { type SeatId, seatId, tastingId } from '../../../core/ids.ts';
import type { Session } from '../../../core/session/state.ts';
import { epochMs } from '../../../core/units.ts';
import { BoardRoom } from '../../../server/live/board-room.ts';
import type { PermittedPage, Store } from '../../../server/store/store.ts';
import { type BoardChange, type BoardPart, boardOfParts } from '../../../shared/wire/board.ts';
import { type Parts, withChange } from '../../../shared/wire/parts.ts';
import { EveningTold } from '../../support/evening.ts';
import { givenBefore } from '../../support/permitted.ts';
import { planOf, pourNames } from '../../support/plans.ts';
import { FakeSocket, fakeServer } from '../support/fake-socket.ts';
import { ManualClock } from '../support/manual-clock.ts';

const tasting = tastingId('harvest');
const guests = Array.from({ length: 200 }, (_, index) => seatId(`guest-${index}`));
const plan = planOf(9);
const fields = ['look', 'nose', 'palate', 'finish'] as const;
const largest = 70_000;

let clock: ManualClock;
let evening: EveningTold;
let live: ReturnType<typeof fakeServer>;
let room: BoardRoom;
let pages: Map<SeatId, PermittedPage[]>;

/** What a guest wrote of a pour: some 200 characters in each field, as who has much to say. */
const written = (seat: SeatId, pour: string, more = ''): PermittedPage => ({
  seat,
  pour: plan.pours.find(({ id }) => id === pour)?.id ?? ('none' as never),
  ...givenBefore('shared'),
  entries: fields.map((field) => ({
    pour: plan.pours[0]?.id ?? ('none' as never),
    field,
    value: `${field} of ${pour} by ${seat}: ${'orchard fruit, wet slate and smoke; '.repeat(5)}${more}`,
    revision: 1,
    savedAt: epochMs(clock.now()),
  })),
});

beforeEach(() => {
  clock = new ManualClock();
  live = fakeServer();
  evening = new EveningTold(plan).sit(...guests);
  for (const pour of pourNames) evening.goTo(`${pour}/water`);
  pages = new Map(guests.map((seat) => [seat, pourNames.map((pour) => written(seat, pour))]));
  const readPermitted = (_: unknown, pours: readonly string[], only?: SeatId) =>
    (only === undefined ? [...pages.values()] : [pages.get(only) ?? []])
      .flat()
      .filter(({ pour }) => pours.includes(pour));
  const store = { notebooks: { readPermitted } } as unknown as Store;
  room = new BoardRoom({ io: live.io, tasting, store, clock }, () => evening.session);
});

function happens(change: () => unknown): void {
  const before: Session = evening.session;
  expect(change()).toBe('done');
  room.follow(before, evening.session);
}
const openAll = () =>
  happens(() => evening.host({ type: 'OpenDiscussion', pours: plan.pours.map(({ id }) => id) }));

function enters(protocol?: number): FakeSocket {
  const socket = new FakeSocket(protocol);
  live.sockets.push(socket);
  room.welcome([socket.asLive]);
  return socket;
}
const enterAll = (count: number) => Array.from({ length: count }, () => enters());

function shownOn({ heard }: FakeSocket) {
  let parts: Parts<BoardPart> = new Map();
  let version = 0;
  for (const { event, body } of heard) {
    if (event !== 'board-change') continue;
    const change = body as BoardChange;
    parts = withChange(change.anew ? new Map() : parts, change);
    version = change.version;
  }
  return boardOfParts(parts, version);
}
const bytes = (heard: readonly { readonly body: unknown }[]): number =>
  heard.reduce((sum, { body }) => sum + Buffer.byteLength(JSON.stringify(body)), 0);

/** What this does makes a device hear so much more. */
async function heardAfter(device: FakeSocket, run: () => void): Promise<FakeSocket['heard']> {
  const before = device.heard.length;
  run();
  await clock.advance(500);
  return device.heard.slice(before);
}
function writes(seat: SeatId, pour: string, more: string): void {
  pages.set(
    seat,
    (pages.get(seat) ?? []).map((page) => (page.pour === pour ? written(seat, pour, more) : page)),
  );
  room.notesChanged(seat, false);
}

describe('a board of 200 guests and nine pours', () => {
  it('comes in slices of a bounded size, and is whole in four seconds', async () => {
    const [device] = enterAll(3);
    if (device === undefined) throw new Error('Nobody entered.');
    openAll();
    expect(shownOn(device).table).toHaveLength(200);
    await clock.advance(4000);
    expect(shownOn(device)).toEqual(room.view());
    expect(shownOn(device).pours.flatMap(({ notes }) => notes)).toHaveLength(1800);
    const sizes = device.heard.map((each) => bytes([each]));
    expect(Math.max(...sizes)).toBeLessThan(largest);
    expect(sizes.length).toBeGreaterThan(20);
    // Encoded once for all, however many they are, but for what each hears alone as it comes; and the hosts are told once.
    expect(live.broadcasts).toHaveLength(device.heard.length - 1 + 1);
  });

  it('costs a thousandth of itself when one guest writes a word, and thirty who type at once their own pages', async () => {
    const device = enters();
    openAll();
    await clock.advance(4000);
    const whole = bytes([{ body: room.view() }]);
    const one = bytes(await heardAfter(device, () => writes(guests[7] ?? seatId(''), 'elm', 'and pears')));
    // A whole board was sent before: 1.8 MB for each word.
    expect(whole).toBeGreaterThan(1_500_000);
    expect(one).toBeGreaterThan(0);
    expect(one / whole).toBeLessThan(1 / 1000);
    const thirty = bytes(
      await heardAfter(device, () => {
        for (const seat of guests.slice(0, 30)) writes(seat, 'fir', 'and figs');
      }),
    );
    expect(thirty / whole).toBeLessThan(1 / 40);
    expect(shownOn(device)).toEqual(room.view());
  });

  it('[Q2] loses what is withdrawn at once, also while it is still on its way to slow and fast devices', async () => {
    const [fast, slow] = enterAll(2);
    if (fast === undefined || slow === undefined) throw new Error('Nobody entered.');
    openAll();
    await clock.advance(500);
    slow.conn.transport.writable = false;
    await clock.advance(300);
    const [first, last] = [guests[0], guests[199]];
    if (first === undefined || last === undefined) throw new Error('No guests.');
    for (const seat of [first, last]) {
      pages.set(seat, []);
      room.notesChanged(seat, true);
    }
    const seen = (device: FakeSocket) =>
      shownOn(device).pours.flatMap(({ notes }) => notes.map((note) => note.seat));
    for (const device of [fast, slow]) expect(seen(device)).not.toContain(first);
    slow.conn.transport.writable = true;
    await clock.advance(4000);
    for (const device of [fast, slow]) {
      expect(shownOn(device)).toEqual(room.view());
      expect(JSON.stringify(device.heard)).not.toContain(`nose of ivy by ${last}`);
    }
  });

  it('is not piled up before a device that does not keep up: it gets what is so when it has', async () => {
    const [fast, slow] = enterAll(2);
    if (fast === undefined || slow === undefined) throw new Error('Nobody entered.');
    openAll();
    await clock.advance(4000);
    slow.conn.transport.writable = false;
    const before = slow.heard.length;
    for (let turn = 0; turn < 4; turn += 1) {
      for (const seat of guests.slice(0, 80)) writes(seat, 'ivy', `turn ${turn}`);
      await clock.advance(1000);
    }
    const piled = bytes(slow.heard.slice(before));
    expect(bytes(fast.heard.slice(before))).toBeGreaterThan(4 * piled);
    expect(piled).toBeLessThan(2 * largest);
    slow.conn.transport.writable = true;
    await clock.advance(3000);
    expect(shownOn(slow)).toEqual(room.view());
    // Level again, it hears the same messages as all others.
    const sent = live.broadcasts.length;
    writes(guests[3] ?? seatId(''), 'ash', 'plums');
    await clock.advance(500);
    expect(live.broadcasts).toHaveLength(sent + 1);
    expect(shownOn(slow)).toEqual(room.view());
  });

  it('is encoded for a crowd that comes back at once as for one', async () => {
    openAll();
    await clock.advance(4000);
    const one = await broadcastsAfter(() => enters());
    const many = await broadcastsAfter(() => enterAll(100));
    expect(many).toBeLessThanOrEqual(one + 1);
    for (const socket of [live.sockets[0], live.sockets[1], live.sockets[100]])
      expect(socket && shownOn(socket)).toEqual(room.view());
  });

  it('goes whole to pages of before, no more often than each three seconds, and at once when something is withdrawn', async () => {
    const old = enters(1);
    openAll();
    expect(old.heard.map(({ event }) => event)).toEqual(['board', 'board']);
    for (let turn = 0; turn < 6; turn += 1) {
      writes(guests[0] ?? seatId(''), 'ash', `turn ${turn}`);
      await clock.advance(500);
    }
    expect(old.heard.length).toBeLessThanOrEqual(4);
    await clock.advance(3000);
    expect(old.heard.at(-1)?.body).toEqual(room.view());
    const count = old.heard.length;
    pages.set(guests[0] ?? seatId(''), []);
    room.notesChanged(guests[0] ?? seatId(''), true);
    expect(old.heard).toHaveLength(count + 1);
    expect(old.heard.at(-1)?.body).toEqual(room.view());
  });
});

async function broadcastsAfter(run: () => unknown): Promise<number> {
  const before = live.broadcasts.length;
  run();
  await clock.advance(4000);
  return live.broadcasts.length - before;
}
