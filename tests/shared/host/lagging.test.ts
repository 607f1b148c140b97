import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { epochMs } from '../../../core/units.ts';
import { laggingOf } from '../../../host/conduct/table/lag-line.tsx';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

function seen(awayFor: Readonly<Record<string, number>>, sinceStep: number) {
  const evening = new EveningTold(planOf(3)).sit('ada', 'ben');
  const view = hostView(evening.underWay, 1);
  if (view.status !== 'under-way') throw new Error('It is under way.');
  const now = doorsAt + 600_000;
  const away = Object.entries(awayFor).map(([name, seconds]) => ({
    seat: seatId(name),
    since: epochMs(now - seconds * 1000),
  }));
  return laggingOf({ ...view, takesEffectAt: epochMs(now - sinceStep * 1000) }, away, now);
}

describe('who lags', () => {
  it('is nobody who is connected, nor a phone that was gone for a moment', () => {
    expect(seen({}, 5)).toEqual({ silent: [], behind: [] });
    expect(seen({ ada: 14 }, 5)).toEqual({ silent: [], behind: [] });
  });

  it('is whoever was last heard of before the step that the room is at', () => {
    expect(seen({ ada: 40 }, 30)).toEqual({ silent: [], behind: ['ada'] });
    expect(seen({ ada: 40 }, 50)).toEqual({ silent: [], behind: [] });
  });

  it('is whoever has not been heard of for two minutes, and said once', () => {
    expect(seen({ ada: 119, ben: 120 }, 30)).toEqual({ silent: ['ben'], behind: ['ada'] });
    expect(seen({ zoe: 500 }, 30)).toEqual({ silent: [], behind: [] });
  });
});
