import { describe, expect, it } from 'vitest';
import { type Line, LineGuard } from '../../../server/live/line-guard.ts';
import { ManualClock } from '../support/manual-clock.ts';

/** A connection that hands on what it is given only when it is told to. */
function aLine(clock = new ManualClock(), guard = new LineGuard(clock)) {
  const heard = new Map<string, (packet: { data?: string }) => void>();
  const socket = {
    bufferedAmount: 0,
    ended: 0,
    terminate() {
      this.ended += 1;
    },
  };
  const line = {
    id: 'line',
    transport: { socket },
    on: (event: string, run: (packet: { data?: string }) => void) => heard.set(event, run.bind(line)),
    close: () => undefined,
  };
  guard.watch(line as unknown as Line);
  return {
    clock,
    line,
    socket,
    send: (length: number) => heard.get('packetCreate')?.({ data: 'x'.repeat(length) }),
    frame: (length = 0) => heard.get('packet')?.({ data: 'x'.repeat(length) }),
    /** What waited is with the network now, which has taken so much of it. */
    flush: (left: number) => {
      heard.get('flush')?.({});
      socket.bufferedAmount = left;
    },
  };
}

const kB = 1024;

describe('a connection', () => {
  it('is let go once more than a megabyte waits for it, wherever it waits', () => {
    const behind = aLine();
    for (let sent = 0; sent < 17; sent += 1) behind.send(64 * kB);
    expect(behind.socket.ended).toBe(0);
    behind.send(64 * kB);
    expect(behind.socket.ended).toBeGreaterThan(0);

    const buffered = aLine();
    buffered.send(64 * kB);
    buffered.flush(1100 * kB);
    buffered.send(64 * kB);
    expect(buffered.socket.ended).toBeGreaterThan(0);
  });

  it('may take its time over one message that is larger than that, and over what comes meanwhile', () => {
    const slow = aLine();
    slow.send(3000 * kB);
    slow.flush(3000 * kB);
    for (let sent = 0; sent < 15; sent += 1) slow.send(64 * kB);
    expect(slow.socket.ended).toBe(0);
    slow.send(100 * kB);
    expect(slow.socket.ended).toBeGreaterThan(0);
  });

  it('that reads may be sent any amount', () => {
    const reader = aLine();
    for (let sent = 0; sent < 1000; sent += 1) {
      reader.send(64 * kB);
      reader.flush(64 * kB);
    }
    expect(reader.socket.ended).toBe(0);
  });

  it('that floods is let go before its frames are read, and one that sends a whole notebook is not', async () => {
    const { clock, socket, frame } = aLine();
    for (let sent = 0; sent < 300; sent += 1) frame();
    await clock.advance(10_000);
    for (let sent = 0; sent < 400; sent += 1) frame();
    expect(socket.ended).toBe(0);
    frame();
    expect(socket.ended).toBe(1);
  });

  it('pays for a frame by its size', () => {
    const { socket, frame } = aLine();
    for (let sent = 0; sent < 30; sent += 1) frame(12 * kB);
    expect(socket.ended).toBe(0);
    frame(12 * kB);
    expect(socket.ended).toBe(1);
  });

  it('shares what it may send with the other devices of its seat, however many come one after the other', async () => {
    const clock = new ManualClock();
    const guard = new LineGuard(clock);
    const come = (holder: string) => {
      const device = aLine(clock, guard);
      guard.heldBy(device.line, holder);
      return device;
    };
    const flood = (device: ReturnType<typeof aLine>): number => {
      let read = 0;
      while (device.socket.ended === 0) {
        device.frame(4 * kB);
        read += 1;
      }
      return read;
    };
    const read = Array.from({ length: 15 }, () => flood(come('a seat')));
    expect(read.reduce((sum, each) => sum + each)).toBeLessThan(80 + 15 + 1);
    const other = come('another seat');
    other.frame(4 * kB);
    expect(other.socket.ended).toBe(0);
    await clock.advance(10_000);
    const back = come('a seat');
    back.frame(4 * kB);
    expect(back.socket.ended).toBe(0);
  });
});
