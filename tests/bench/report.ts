import { readFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import type { Figure } from './figures.ts';
import { busyAbove, met, shown, wanted } from './figures.ts';
import type { SessionsRun } from './sessions.ts';
import type { TapRun } from './tap.ts';

export interface Part {
  readonly name: string;
  /** ISO 8601, when it was measured. */
  readonly at: string;
  readonly figures: readonly Figure[];
  readonly taps?: readonly TapRun[];
  readonly sessions?: readonly SessionsRun[];
}

/** What it was measured on, and with which versions. */
export function machine(): string {
  const [processor] = cpus();
  const versions = ['socket.io', 'ws', 'better-sqlite3'].map((name) => `${name} ${versionOf(name)}`);
  return `${cpus().length} processors (${processor?.model.trim() ?? 'unknown'}), ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}, ${versions.join(', ')}`;
}

const versionOf = (name: string): string =>
  (
    JSON.parse(readFileSync(new URL(`../../node_modules/${name}/package.json`, import.meta.url), 'utf8')) as {
      readonly version: string;
    }
  ).version;

/** What the command writes down of its last runs, for people. */
export function report(parts: readonly Part[]): string {
  return [
    '# Speed and size',
    '',
    'Written by `npm run bench -- --save`. Times are medians of rounds in which ours and what it is compared with take',
    'turns, so that a ratio says more than the milliseconds beside it. The floor is a plain `ws` server that serialises',
    'once and loops over its sockets. What has no goal is shown, not judged. Why something was missed stands in',
    '[MISSED.md](MISSED.md).',
    '',
    `Machine: ${machine()}. What else it did meanwhile is told by the load average in each heading; above ${busyAbove} it is marked busy.`,
    '',
    ...parts.flatMap((part) => [
      `## ${part.name}, ${part.at}`,
      '',
      '| figure | value | goal | |',
      '| --- | ---: | --- | --- |',
      ...part.figures.map((figure) => {
        const verdict = { true: 'met', false: '**missed**', undefined: '' }[String(met(figure)) as 'true'];
        return `| ${figure.name} | ${shown(figure)} ${figure.unit} | ${wanted(figure)} | ${verdict} |`;
      }),
      '',
    ]),
    ...growth(parts),
  ].join('\n');
}

function growth(parts: readonly Part[]): string[] {
  const taps = parts.flatMap((part) => part.taps ?? []);
  const sessions = parts.flatMap((part) => part.sessions ?? []);
  if (taps.length + sessions.length === 0) return [];
  return [
    '## How cost grows',
    '',
    '![growth](growth.svg)',
    '',
    '| guests | tap, ms | floor, ms | ratio | server time, ratio | KiB per guest |',
    '| ---: | ---: | ---: | ---: | ---: | ---: |',
    ...taps.map(
      (run) =>
        `| ${run.guests} | ${run.oursMs.toFixed(1)} | ${run.floorMs.toFixed(1)} | ${run.ratio.toFixed(2)} | ${run.cpuRatio.toFixed(2)} | ${(run.bytesPerGuest / 1024).toFixed(1)} |`,
    ),
    '',
    '| sessions of ten | alarm late p99, ms | one page to disk p99, ms | event loop p99, ms | of one processor | KiB per guest |',
    '| ---: | ---: | ---: | ---: | ---: | ---: |',
    ...sessions.map(
      (run) =>
        `| ${run.sessions}${run.busyDisk === true ? ', busy disk' : ''} | ${run.lateP99.toFixed(1)} | ${run.diskP99.toFixed(1)} | ${run.loopP99.toFixed(1)} | ${run.busy.toFixed(2)} | ${(run.bytesPerGuest / 1024).toFixed(1)} |`,
    ),
    '',
  ];
}
