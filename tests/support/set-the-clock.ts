import { momentNow } from './moment.ts';
import { shiftClock } from './shifted-clock.mjs';

/** Before each file of tests: its clock, and that of every process it starts, shows the moment of this run. */
const moment = momentNow();
if (moment !== undefined) {
  const by = moment.begins - Date.now();
  shiftClock(by);
  process.env.CLOCK_SHIFT = String(by);
  const first = new URL('./clock-of-the-test.mjs', import.meta.url).pathname;
  process.env.NODE_OPTIONS = `${process.env.NODE_OPTIONS ?? ''} --import=${first}`.trim();
}
