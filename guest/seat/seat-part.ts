import { ArrivalPage } from './arrival-page.tsx';
import { DeviceNotices, FirstWords } from './device-notices.tsx';
import { GroundRules } from './ground-rules.tsx';
import { MySeat } from './my-seat.tsx';
import { ToneTest } from './tone-test.tsx';

/** What a guest may change about their own place. */
export const seatPages = { ArrivalPage, DeviceNotices, FirstWords, GroundRules, MySeat, ToneTest };
