import { forecastAhead } from '../../core/running-order/fit-ahead.ts';
import { aheadOf } from '../../core/session/fitting.ts';
import type { UnderWay } from '../../core/session/state.ts';
import type { EpochMs } from '../../core/units.ts';

/** The end of an evening under way, as its host's view tells it. */
export const forecastOf = (session: UnderWay, now: EpochMs) => forecastAhead(aheadOf(session, now));
