import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { LostEnd } from '../../../server/live/lost-end.ts';
import { createCueGate } from '../../../shared/follower/cue-gate.ts';

const guest = (seat: string) => ({ role: 'guest', seat: seatId(seat) }) as const;

describe('the lost end of a log', () => {
  it('[F7] is seen by what was answered, and by a host’s device at once', () => {
    expect(new LostEnd(12, 12).missing).toBe(0);
    expect(new LostEnd(12, 15).missing).toBe(3);
    const lost = new LostEnd(12, 12);
    expect(lost.heard({ role: 'host' }, 12, 12)).toBe(false);
    expect(lost.heard({ role: 'host' }, 17, 12)).toBe(true);
    expect(lost.missing).toBe(5);
  });

  it('[F7] is believed of guests when two seats say so, and then as far as both do', () => {
    const lost = new LostEnd(12, 12);
    expect(lost.heard(guest('noor'), 9_000_000, 12)).toBe(true);
    expect(lost.heard(guest('noor'), 9_000_001, 12)).toBe(true);
    expect(lost.missing).toBe(0);
    lost.heard(guest('tomas'), 14, 12);
    expect(lost.missing).toBe(2);
    expect(lost.heard({ role: 'screen', preview: false }, 99, 12)).toBe(true);
    expect(lost.missing).toBe(2);
  });

  it('[F7] does not leave a device behind: after a rewinding the next view shows, and none older than that', () => {
    const gate = createCueGate<{ readonly version: number }>(() => null, {
      now: () => epochMs(0),
      after: () => () => undefined,
    });
    for (const version of [9, 4]) gate.receive({ version });
    expect(gate.shown.peek()).toEqual({ version: 9 });
    gate.rewind();
    for (const version of [4, 3]) gate.receive({ version });
    expect(gate.shown.peek()).toEqual({ version: 4 });
  });
});
