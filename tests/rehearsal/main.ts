import { randomInt } from 'node:crypto';
import { demoEvening } from '../../shared/demo/evening.ts';
import { forgetFolder, spawnServer, temporaryFolder } from '../support/server.ts';
import { type RehearsalArguments, readArguments, usage } from './arguments.ts';
import { calibrate, evenings } from './calibration.ts';
import { rehearsedPlan } from './plan.ts';
import { rehearse } from './rehearse.ts';
import { faultsOf } from './report.ts';
import { watch } from './watch.ts';

/** Plays a whole evening with stand-in guests against a server of its own. */
async function main(): Promise<number> {
  const asked = readArguments(process.argv.slice(2), randomInt(1_000_000));
  if (typeof asked === 'string') {
    console.error(`${asked}\n\n${usage}`);
    return 2;
  }
  if (asked.calibration) return showCalibration(asked);
  const folder = await temporaryFolder();
  try {
    return asked.watch ? await watch(asked, folder) : await playThrough(asked, folder);
  } finally {
    await forgetFolder(folder);
  }
}

async function playThrough(asked: RehearsalArguments, folder: string): Promise<number> {
  const { guests, speed, seed, json, stepsRun } = asked;
  console.log(
    `A rehearsal with ${guests} guests at ${speed} times the pace; play it again with --seed ${seed}.`,
  );
  const server = await spawnServer({ folder, seats: Math.max(200, guests) });
  try {
    const { origin, houseKey } = server;
    const report = await rehearse({
      origin,
      houseKey,
      guests,
      speed,
      seed,
      stepsRun,
      plan: rehearsedPlan(guests),
    });
    const faults = faultsOf(report);
    if (/qz[0-9a-z]{10}zq/.test(server.output()))
      faults.push('[Q1] A note stands in what the server logged.');
    for (const fault of faults) console.error(fault);
    if (json) console.log(JSON.stringify(report));
    else console.log(inWords(report, faults.length));
    return faults.length === 0 ? 0 : 1;
  } finally {
    await server.stop();
  }
}

/** The range is made to hold eight of ten ends; more than four points beside that is a fault. */
function showCalibration({ json, seed }: RehearsalArguments): number {
  console.log(
    `Of ${evenings} simulated evenings each, how many ended within the range of the forecast (80 % is meant):`,
  );
  const cases = calibrate(demoEvening, evenings, seed);
  for (const { pacing, seats, at, covered } of cases)
    console.log(
      [
        pacing.padEnd(10),
        `${seats} seats`.padStart(9),
        at.padStart(11),
        `${(100 * covered).toFixed(1)} %`,
      ].join('  '),
    );
  const off = cases.filter(({ covered }) => Math.abs(covered - 0.8) > 0.04);
  for (const { pacing, seats, at } of off)
    console.error(`By ${pacing} with ${seats} seats, ${at}: more than four points off.`);
  if (json) console.log(JSON.stringify({ cases }));
  return off.length === 0 ? 0 : 1;
}

function inWords(report: Awaited<ReturnType<typeof rehearse>>, faults: number): string {
  const { cues, cuesSeenByAll, nextTaps, notesAcknowledged, notesStored, reconnects, fanoutMs, seconds } =
    report;
  return [
    `${cues} cues in ${seconds} s, ${cuesSeenByAll} of them seen by everybody who was there;`,
    `${nextTaps} taps of the big button;`,
    `${notesStored} of ${notesAcknowledged} notes found again; ${reconnects} reconnections;`,
    `a cue reached the phones within ${fanoutMs.p50} ms (half) and ${fanoutMs.p99} ms (99 of 100).`,
    faults === 0 ? 'Nothing was lost, nothing leaked, no rule was broken.' : `${faults} faults, see above.`,
  ].join('\n');
}

// Whatever ends this process before the verdict is in, it has not gone well.
process.exitCode = 1;
main().then(
  (code) => process.exit(code),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
