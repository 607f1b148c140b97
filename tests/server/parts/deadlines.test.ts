import { describe, expect, it } from 'vitest';
import type { ClockCommand } from '../../../core/session/command.ts';
import { seconds } from '../../../core/units.ts';
import { Deadlines } from '../../../server/live/deadlines.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { ManualClock } from '../support/manual-clock.ts';

/** An evening whose server was down for two hours in the middle of a cue. */
function overtime(before: (evening: EveningTold) => void = () => undefined) {
  const evening = new EveningTold().goTo('ash/first/nose');
  evening.host({ type: 'ChoosePacing', pacing: { by: 'clock' } });
  before(evening);
  evening.wait(7200);
  return { evening, ...loaded(evening) };
}

function loaded(evening: EveningTold) {
  const clock = new ManualClock(evening.now);
  const asked: ClockCommand[] = [];
  const deadlines = new Deadlines(clock, evening.session, (ask) => asked.push(ask));
  deadlines.arm(evening.session);
  return { clock, asked, deadlines };
}

describe('the alarms of a session', () => {
  it('[P3] ask when the time is over, once', async () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    const { clock, asked } = loaded(evening);
    expect(evening.now).toBe(doorsAt);
    await clock.advance(evening.idealMs - 1);
    expect(asked).toEqual([]);
    await clock.advance(10_000);
    expect(asked).toEqual([{ type: 'ExpireCue', cue: 'ash/first/nose' }]);
  });

  it('[P7] wait for the host when the time ran out while nobody watched', async () => {
    const { clock, asked, deadlines, evening } = overtime();
    await clock.advance(60_000);
    deadlines.armAgain(evening.session);
    await clock.advance(60_000);
    expect(asked).toEqual([]);
    expect(deadlines.pending).toBe(false);
    expect(deadlines.waitForHost(evening.session)).toBe(true);
  });

  it('[P7] wait still when the overtime was held over another restart, and then resumed', async () => {
    const { evening } = overtime();
    evening.host({ type: 'Hold' });
    const { clock, asked, deadlines } = loaded(evening);
    evening.host({ type: 'Resume' });
    deadlines.arm(evening.session);
    await clock.advance(60_000);
    expect(asked).toEqual([]);
  });

  it('[P4, P7] count again once the host has given more time, or gone on', async () => {
    const { clock, asked, deadlines, evening } = overtime();
    evening.host({ type: 'GiveTime', seconds: seconds(60) });
    deadlines.arm(evening.session);
    expect(deadlines.waitForHost(evening.session)).toBe(false);
    await clock.advance(61_000);
    expect(asked).toHaveLength(1);
    expect(deadlines.waitForHost(evening.session)).toBe(false);
    evening.wait(120).goTo('ash/first/look');
    deadlines.arm(evening.session);
    await clock.advance(120_000 + evening.idealMs);
    expect(asked).toHaveLength(2);
  });

  it('[P7] run on when a held clock has time left', async () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    evening.host({ type: 'Hold' });
    evening.wait(7200);
    const { clock, asked, deadlines } = loaded(evening);
    evening.host({ type: 'Resume' });
    deadlines.arm(evening.session);
    await clock.advance(evening.idealMs);
    expect(asked).toHaveLength(1);
  });

  it('[P7, P17] wait for the host when the machine slept over the end, whichever alarm rings first', async () => {
    for (const pacing of [{ by: 'clock' }, { by: 'room', share: 1 }] as const) {
      const evening = new EveningTold().goTo('ash/first/nose');
      evening.host({ type: 'ChoosePacing', pacing });
      const { clock, asked, deadlines } = loaded(evening);
      clock.sleep(7_200_000);
      // Phones come back before anything rings.
      expect(deadlines.waitForHost(evening.session)).toBe(true);
      await clock.advance(60_000);
      expect(asked).toEqual([]);
      evening.wait(7300).host({ type: 'GiveTime', seconds: seconds(60) });
      deadlines.arm(evening.session);
      expect(deadlines.waitForHost(evening.session)).toBe(false);
      await clock.advance(200_000);
      expect(asked.at(-1)).toEqual({ type: 'ExpireCue', cue: 'ash/first/nose' });
    }
  });

  it('[P8, P17] are not late when they ask again long after the time', async () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    const { clock, asked, deadlines } = loaded(evening);
    await clock.advance(evening.idealMs + 600_000);
    deadlines.armAgain(evening.session);
    await clock.advance(1);
    expect(asked).toHaveLength(2);
    expect(deadlines.waitForHost(evening.session)).toBe(false);
  });
});
