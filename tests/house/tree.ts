import { execFileSync } from 'node:child_process';

const root = new URL('../..', import.meta.url).pathname;

/** Files that git tracks or would track: what a clone of the working tree would hold. */
function tracked(): string[] {
  const options = { cwd: root, encoding: 'utf8' } as const;
  const present = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], options);
  const deleted = new Set(execFileSync('git', ['ls-files', '--deleted'], options).split('\n'));
  return present.split('\n').filter((file) => file !== '' && !deleted.has(file));
}

export const trackedSources = (): string[] => tracked().filter((file) => /\.tsx?$/.test(file));

/** What is written by hand and read by people: code, and the styles beside it. */
export const trackedTexts = (): string[] => tracked().filter((file) => /\.(?:tsx?|mjs|css)$/.test(file));

export const trackedTopLevel = (): string[] => [
  ...new Set(tracked().map((file) => file.split('/')[0] ?? '')),
];
