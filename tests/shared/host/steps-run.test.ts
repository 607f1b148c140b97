import { describe, expect, it } from 'vitest';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { saysNext } from '../../../host/conduct/now/say-line.tsx';
import { endsFirstGlass } from '../../../host/conduct/now/steps-offer.tsx';
import { EveningTold } from '../../support/evening.ts';

describe('[P19] the steps of a glass that may run', () => {
  it('are offered where the first glass ends, and nowhere else', () => {
    const evening = new EveningTold();
    const offered: string[] = [];
    while (evening.cue !== 'farewell') {
      const view = hostView(evening.underWay, 1);
      if (view.status !== 'under-way') throw new Error('It is under way.');
      if (endsFirstGlass(view, runningOrderView(evening.underWay, 1).cues)) offered.push(evening.cue);
      evening.next();
    }
    expect(offered).toEqual(['ash/water']);
  });

  it('have their words five seconds before they come, and not while the clock is held or the host leads', () => {
    const now = 1_800_000_000_000;
    const running = (left: number) =>
      ({ kind: 'running', startsAt: epochMs(now - 60_000), endsAt: epochMs(now + left) }) as const;
    expect(saysNext({ endsBy: 'clock', clock: running(5001) }, now)).toBe(false);
    expect(saysNext({ endsBy: 'clock', clock: running(5000) }, now)).toBe(true);
    expect(saysNext({ endsBy: 'host', clock: running(5000) }, now)).toBe(false);
    const held = { kind: 'held', startsAt: epochMs(now), remaining: durationMs(2000) } as const;
    expect(saysNext({ endsBy: 'clock', clock: held }, now)).toBe(false);
  });
});
