import { shiftClock } from './shifted-clock.mjs';

/** Loaded first by every process that a test starts: its clock shows what the test's own shows. */
shiftClock(Number(process.env.CLOCK_SHIFT ?? 0));
