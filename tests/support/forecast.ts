import { forecast } from '../../core/running-order/forecast.ts';
import { aheadOf } from '../../core/session/fitting.ts';
import type { UnderWay } from '../../core/session/state.ts';
import type { EpochMs } from '../../core/units.ts';

/** The end of an evening under way, as its host's view tells it. */
export const forecastOf = (session: UnderWay, now: EpochMs) => {
  const ahead = aheadOf(session, now);
  return forecast(ahead.from, ahead.remaining, ahead.habits);
};
