import { describe, expect, it } from 'vitest';
import { cueId, seatId } from '../../../core/ids.ts';
import type { HostSeat } from '../../../core/session/views/host-seats.ts';
import { createCommandsUnderWay } from '../../../host/evening/commands-under-way.ts';
import { missingKit, tableOf } from '../../../host/evening/table.ts';

const seat = (id: string, more: Partial<HostSeat> = {}): HostSeat => ({
  id: seatId(id),
  name: id,
  leftHanded: false,
  remote: false,
  presence: 'seated',
  cautionsRead: false,
  groundRulesAccepted: false,
  onlyWater: false,
  readsRulesFirst: false,
  signal: null,
  kit: [],
  missed: 0,
  ...more,
});
const from = (seats: readonly HostSeat[], room = 0, home = 0) => ({ seats, expected: { room, home } });
const here = (...ids: string[]) => ({
  hosts: 1,
  seats: ids.map((id) => ({ seat: seatId(id), roundTrip: null })),
  screens: 0,
  screensAsking: [],
});

describe('the table', () => {
  it('puts who wants the host first, the most pressing before the others', () => {
    const seats = [
      seat('a', { signal: 'more-time' }),
      seat('b'),
      seat('c', { presence: 'waiting' }),
      seat('d', { signal: 'needs-host' }),
    ];
    const table = tableOf(from(seats), here('a', 'b', 'c', 'd'));
    expect(table.asking.map((each) => [each.seat.id, each.state])).toEqual([
      ['d', 'needs-host'],
      ['c', 'at-door'],
      ['a', 'more-time'],
    ]);
    expect(table.others.map((each) => each.seat.id)).toEqual(['b']);
  });

  it('keeps everybody else in the order in which they sat down, whatever their state', () => {
    const seats = [seat('a'), seat('b', { signal: 'ready' }), seat('c')];
    const table = tableOf(from(seats), here('a', 'b'));
    expect(table.others.map((each) => [each.seat.id, each.state])).toEqual([
      ['a', 'tasting'],
      ['b', 'ready'],
      ['c', 'away'],
    ]);
  });

  it('still hears a call for the host from a phone that has gone to sleep', () => {
    expect(tableOf(from([seat('a', { signal: 'needs-host' })]), here()).asking).toHaveLength(1);
    expect(tableOf(from([seat('a', { signal: 'more-time' })]), here()).asking).toHaveLength(0);
  });

  it('counts those at home apart, with their kits and how far away they are', () => {
    const whole = ['vials', 'lids', 'water', 'spit-cup', 'white-paper'] as const;
    const seats = [
      seat('a', { signal: 'ready' }),
      seat('b', { remote: true, signal: 'ready', kit: whole }),
      seat('c', { remote: true, kit: ['water', 'vials'] }),
      seat('d', { remote: true, signal: 'ready' }),
    ];
    const table = tableOf(from(seats), {
      ...here('a', 'c'),
      seats: [
        { seat: seatId('b'), roundTrip: 82 },
        { seat: seatId('c'), roundTrip: null },
      ],
    });
    expect(table.home).toEqual({ seated: 3, expected: 3, here: 2, ready: 1, kits: 1 });
    // Those at home are counted there, and only there.
    expect(table.room).toEqual({ here: 0, expected: 1 });
    const planned = tableOf(from(seats, 8, 4), here('a', 'b'));
    expect([planned.room, planned.home.expected]).toEqual([{ here: 1, expected: 8 }, 4]);
    expect(table.others.map(({ roundTrip }) => roundTrip)).toEqual([null, 82, null, null]);
    expect(missingKit(seats[1] ?? seat('x'))).toEqual([]);
    expect(missingKit(seats[2] ?? seat('x'))).toEqual(['lids', 'spit-cup', 'white-paper']);
  });

  it('counts the seated only, and keeps those who are gone apart', () => {
    const seats = [
      seat('a', { signal: 'ready', groundRulesAccepted: true }),
      seat('b'),
      seat('c', { presence: 'waiting' }),
      seat('d', { presence: 'left' }),
      seat('e', { presence: 'removed' }),
    ];
    const table = tableOf(from(seats), here('a', 'c'));
    expect(table.counts).toEqual({
      seated: 2,
      here: 1,
      ready: 1,
      moreTime: 0,
      needHost: 0,
      asking: 1,
      groundRules: 1,
    });
    expect(table.gone.map(({ id }) => id)).toEqual(['d', 'e']);
  });
});

describe('commands to the room', () => {
  const setUp = (answer: Parameters<typeof createCommandsUnderWay>[0]['send']) => {
    const refused: string[] = [];
    let settle = (): void => {};
    const commands = createCommandsUnderWay({
      send: answer,
      onRefusal: (code) => refused.push(code),
      pause: () =>
        new Promise((resolve) => {
          settle = resolve;
        }),
    });
    return { commands, refused, settle: () => settle() };
  };

  it('takes no second press until the answer has come and the thumb has settled', async () => {
    let sent = 0;
    const { commands, settle } = setUp(async () => {
      sent += 1;
      return { ok: true };
    });
    expect(await commands.send({ type: 'Hold' })).toBe(true);
    expect(commands.waiting.value.has('Hold')).toBe(true);
    expect(await commands.send({ type: 'Hold' })).toBe(false);
    expect(sent).toBe(1);
    settle();
    await Promise.resolve();
    expect(commands.waiting.value.size).toBe(0);
    expect(await commands.send({ type: 'Hold' })).toBe(true);
    expect(sent).toBe(2);
  });

  it('lets other asks through meanwhile', async () => {
    const { commands } = setUp(async () => ({ ok: true }));
    void commands.send({ type: 'Hold' });
    expect(await commands.send({ type: 'Resume' })).toBe(true);
  });

  it('lets the same through for another guest or glass, but no second step of a thumb that taps twice [P1]', async () => {
    const { commands } = setUp(async () => ({ ok: true }));
    for (const name of ['a', 'b'])
      expect(await commands.send({ type: 'AdmitSeat', seat: seatId(name) })).toBe(true);
    expect(await commands.send({ type: 'AdmitSeat', seat: seatId('a') })).toBe(false);
    expect(await commands.send({ type: 'Advance', from: cueId('a') })).toBe(true);
    expect(await commands.send({ type: 'Advance', from: cueId('b') })).toBe(false);
  });

  it('tells of every refusal but that another device was faster', async () => {
    const { commands, refused } = setUp(async ({ type }) => ({
      ok: false,
      code: type === 'Hold' ? 'moved-on' : type === 'Resume' ? 'not-held' : 'no-answer',
    }));
    await commands.send({ type: 'Hold' });
    await commands.send({ type: 'Resume' });
    await commands.send({ type: 'Finish' });
    expect(refused).toEqual(['not-held', 'no-answer']);
  });
});
