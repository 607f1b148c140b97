import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { measureAir } from './air.ts';
import { measureCall } from './call.ts';
import { bundleChildren } from './child.ts';
import { measureCluster } from './cluster.ts';
import { measureColdStart } from './cold-start.ts';
import { busyAbove, type Figure, type Judged, judge, line } from './figures.ts';
import { growthPicture } from './growth-picture.ts';
import { measureHealing } from './healing.ts';
import { measureInteraction } from './interaction.ts';
import { measureRecap } from './large-recap.ts';
import { measureList } from './list.ts';
import { measureLongEvening } from './long-evening.ts';
import { measureNotes } from './notes.ts';
import { measurePages } from './page-weight.ts';
import { machine, type Part, report } from './report.ts';
import { measureSessions, type SessionsRun, sessionFigures } from './sessions.ts';
import { measureStorm } from './storm.ts';
import { measureTap, type TapRun, tapFigures } from './tap.ts';

/**
 * Every figure of speed and size, side by side with what it is compared with:
 *
 *   npm run bench -- [--quick] [--save] [--json] [--only taps,notes,storm,healing,cold-start,pages,air,memory,recap,list,interaction,sessions,cluster]
 *
 * `--quick` measures fewer and smaller; `--save` writes the table and the picture beside this file; `--json` prints what was
 * measured as its last line. The exit code is 1 when a goal was missed. Results of earlier runs stand in .cache/bench/ until their part is measured again.
 */
const { values: options } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    save: { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
    only: { type: 'string', default: '' },
  },
});
const { quick } = options;

type Measured = Pick<Part, 'figures' | 'taps' | 'sessions'>;
const parts: Readonly<Record<string, { readonly name: string; readonly run: () => Promise<Measured> }>> = {
  taps: { name: 'One tap to all guests', run: () => measureTaps(quick ? [20, 200] : [20, 200, 1000, 5000]) },
  notes: { name: 'Notes', run: only(() => measureNotes(quick ? 100 : 1000, quick ? 2 : 8)) },
  storm: { name: 'A crowd comes back', run: only(() => measureStorm(quick ? 100 : 1000, quick ? 3 : 9)) },
  healing: {
    name: 'Out of a hole',
    run: only(() => measureHealing(quick ? 10 : 100, quick ? 5 : 60, quick ? 1 : 2)),
  },
  'cold-start': {
    name: 'Cold start',
    run: only(() => measureColdStart(quick ? 50 : 1000, 500, quick ? 3 : 9)),
  },
  pages: { name: 'Pages', run: only(() => measurePages(quick ? 1 : 5)) },
  air: { name: 'On the air', run: only(measureAir) },
  memory: {
    name: 'A long evening',
    run: only(() => measureLongEvening(quick ? 10 : 50, quick ? 2 : 8)),
  },
  recap: { name: 'Looking back', run: only(() => measureRecap(quick ? 20 : 200, 9, quick ? 2 : 6)) },
  list: { name: 'Many evenings', run: only(() => measureList(quick ? 50 : 1000, quick ? 2 : 7)) },
  interaction: {
    name: 'Under a finger',
    run: only(() => measureInteraction(quick ? 6 : 40)),
  },
  call: {
    name: 'The call from home',
    run: only(() => measureCall(quick ? [2, 4] : [2, 4, 6, 8], quick ? 3 : 10)),
  },
  sessions: {
    name: 'Many sessions',
    run: () => measureAllSessions(quick ? [1, 10] : [1, 10, 100, 500], quick ? 10 : 90),
  },
  cluster: {
    name: 'Many processes',
    run: only(() => (quick ? measureCluster(20, 10, 5, 15) : measureCluster(200, 200, 60, 15))),
  },
};

function only(run: () => Promise<Figure[]>): () => Promise<Measured> {
  return async () => ({ figures: await run() });
}

async function measureTaps(sizes: readonly number[]): Promise<Measured> {
  const taps: TapRun[] = [];
  for (const guests of sizes) taps.push(await measureTap(guests));
  return { figures: taps.flatMap(tapFigures), taps };
}

/** The smaller ones only show how cost grows, and take a quarter of the time. */
async function measureAllSessions(counts: readonly number[], seconds: number): Promise<Measured> {
  const sessions: SessionsRun[] = [];
  const most = counts.at(-1) ?? 1;
  for (const count of counts)
    sessions.push(
      await measureSessions({
        sessions: count,
        guests: 10,
        seconds: count === most ? seconds : seconds / 4,
      }),
    );
  sessions.push(await measureSessions({ sessions: most, guests: 10, seconds: seconds / 2, busyDisk: true }));
  return { figures: sessions.flatMap(sessionFigures), sessions };
}

const cache = new URL('../../.cache/bench/', import.meta.url);
const kept = new URL('figures.json', cache);
mkdirSync(cache, { recursive: true });

function keptParts(): Record<string, Part> {
  try {
    return JSON.parse(readFileSync(kept, 'utf8')) as Record<string, Part>;
  } catch {
    return {};
  }
}

const asked = options.only === '' ? Object.keys(parts) : options.only.split(',');
await bundleChildren();
const judged: Judged[] = [];
/** Parts that failed: the others are measured all the same, and these count as missed. */
const unmeasured: string[] = [];
for (const key of asked) {
  const part = parts[key];
  if (part === undefined)
    throw new Error(`No part is called ${key}; there are ${Object.keys(parts).join(', ')}.`);
  const load = loadavg()[0]?.toFixed(1);
  console.log(`\n${part.name} (load average ${load})`);
  const measured = await part.run().catch((error: unknown) => console.error(error));
  if (measured === undefined) {
    unmeasured.push(`${part.name}: not measured`);
    continue;
  }
  for (const figure of measured.figures) console.log(line(figure));
  judged.push(...measured.figures.map((figure) => judge(figure, Number(load))));
  const busy = Number(load) > busyAbove ? ' (busy)' : '';
  const at = `${new Date().toISOString().slice(0, 10)}, load ${load}${busy}`;
  if (quick) continue;
  writeFileSync(
    kept,
    JSON.stringify({ ...keptParts(), [key]: { name: part.name, at, ...measured } }, null, 1),
  );
}

const all = Object.keys(parts).flatMap((key) => keptParts()[key] ?? []);
const taps = all.flatMap((part) => part.taps ?? []);
const quiet = all.flatMap((part) => part.sessions ?? []).filter(({ busyDisk }) => busyDisk !== true);
writeFileSync(new URL('growth.svg', cache), growthPicture(taps, quiet));
if (options.save) {
  writeFileSync(new URL('FIGURES.md', import.meta.url), report(all));
  writeFileSync(new URL('growth.svg', import.meta.url), growthPicture(taps, quiet));
}
const missed = [...judged.filter(({ met }) => met === false).map(({ name }) => name), ...unmeasured];
if (options.json) console.log(JSON.stringify({ figures: judged, missed, machine: machine() }));
process.exitCode = missed.length > 0 ? 1 : 0;
