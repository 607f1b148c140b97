import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;

/** How a test writes a time of day or a day, or asks for one: its own words, or those of the product's functions. */
const speaksOfTime =
  /\baTime\b|\bwritten(?:Day)?\(|timeOfDay|figuresOfDay|dayAndTime|faceOf|timeZone|startsAt|finishBy|wallClock|wall-clock|DateTimeFormat|toLocale(?:Date|Time)?String|T\d\d:\d\d/;

export const touchesTimeOfDay = (source: string): boolean => speaksOfTime.test(source);

/**
 * The files of unit and browser tests that a time of day can turn red, as paths from the root: all others say nothing of
 * one, and `npm test` runs them at one moment a time.
 */
export function timeOfDayFiles(): readonly string[] {
  const folders = ['core', 'shared', 'house', 'outside', 'e2e'].map((folder) => `tests/${folder}`);
  return execFileSync('git', ['ls-files', ...folders], { cwd: root, encoding: 'utf8' })
    .split('\n')
    .filter((file) => /\.test\.tsx?$/.test(file))
    .filter((file) => touchesTimeOfDay(readFileSync(join(root, file), 'utf8')));
}
