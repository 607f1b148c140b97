import { momentNow } from './moment.ts';
import { shiftClock } from './shifted-clock.mjs';

/** Before each file of tests: its clock, and that of every process it starts, shows the moment of this run. */
const moment = momentNow();
if (moment !== undefined) {
  // Where files share a process, the one before has moved its clock already.
  const by = Number(process.env.CLOCK_SHIFT ?? 0) + moment.begins - Date.now();
  shiftClock(by);
  process.env.CLOCK_SHIFT = String(by);
  const first = new URL('./clock-of-the-test.mjs', import.meta.url).pathname;
  const { NODE_OPTIONS = '' } = process.env;
  if (!NODE_OPTIONS.includes(first)) process.env.NODE_OPTIONS = `${NODE_OPTIONS} --import=${first}`.trim();
}
