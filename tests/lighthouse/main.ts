import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { hostLink, seatLink } from '../../host/access/key-link.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import type { KeptSeat } from '../../shared/seats/kept-seats.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { aKey, House } from '../server/support/house.ts';
import { findChromium } from '../support/browser.ts';
import { forgetFolder, spawnServer, temporaryFolder } from '../support/server.ts';
import { type Category, categories, goals, measure, type Scores, scoresIn, shortOf } from './measure.ts';

const root = new URL('../..', import.meta.url).pathname;
const reports = join(root, '.cache/lighthouse');

/** Measures the pages of a demo evening one by one, as a phone would load them, from what `npm run build` has made. */
async function main(): Promise<number> {
  const folder = await temporaryFolder();
  const server = await spawnServer({ folder, from: 'bundle' });
  mkdirSync(reports, { recursive: true });
  try {
    const pages = await openAnEvening(server.origin, server.houseKey);
    const wanted = process.argv.slice(2);
    let missed = 0;
    console.log(['page'.padEnd(18), ...categories.map((each) => each.padStart(15))].join(''));
    for (const [name, { url, seat }] of Object.entries(pages)) {
      if (wanted.length > 0 && !wanted.includes(name)) continue;
      const report = join(reports, `${name}.json`);
      const profile = seat && (await profileThatSits(server.origin, seat));
      await measure(url, report, findChromium(), profile);
      if (profile !== undefined) await forgetFolder(profile);
      const scores = scoresIn(JSON.parse(readFileSync(report, 'utf8')));
      console.log(line(name, scores));
      for (const { category, why } of shortOf(JSON.parse(readFileSync(report, 'utf8')))) {
        missed += 1;
        console.log(`  below ${goals[category]} in ${category}: ${why.join('; ')}`);
      }
    }
    console.log(`Whole reports are in ${reports}.`);
    return missed === 0 ? 0 : 1;
  } finally {
    await server.stop();
    await forgetFolder(folder);
  }
}

const line = (name: string, scores: Scores): string =>
  [name.padEnd(18), ...categories.map((each: Category) => String(scores[each]).padStart(15))].join('');

interface Page {
  readonly url: string;
  /** Of a device that sits there and has read the cautions; absent: one that comes for the first time. */
  readonly seat?: KeptSeat;
}

/** The pages by name, with a table that is not empty: addresses carry keys of these evenings, which end with the run. */
async function openAnEvening(origin: string, houseKey: string): Promise<Readonly<Record<string, Page>>> {
  const house = new House({ url: origin, stop: async () => undefined });
  const plan = planSchema.parse({ ...demoEvening, remoteGuests: 2, guess: { on: true, without: [] } });
  const evening = async () => {
    const made = await house.plan(plan, houseKey);
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    return { made, host, guest: await house.guest(made, 'Noor') };
  };
  const { made, guest } = await evening();
  // A second one at a glass that may be guessed, with somebody at home who may join the call.
  const later = await evening();
  const atHome = aKey();
  await house.takeSeat(later.made.code, { key: atHome, name: 'Tomás', remote: true });
  const nosed = compile(plan).find((cue) => cue.kind === 'step' && cue.sense === 'nose');
  await later.host.host({ type: 'JumpTo', cue: nosed?.id });
  const sits = (at: CreatedTasting, key: string): Page => ({
    url: `${origin}/seat`,
    seat: { tasting: at.tasting, key, code: null, title: null, cautioned: true },
  });
  return {
    'guest-door': { url: `${origin}/` },
    'guest-invitation': { url: `${origin}/j/${made.code}` },
    'guest-cautions': { url: seatLink(origin, made.tasting, guest.key) },
    'guest-room': sits(made, guest.key),
    'guest-guess': sits(later.made, later.guest.key),
    'guest-call': sits(later.made, atHome),
    'guest-device-check': { url: `${origin}/kit/${made.code}` },
    'guest-survey': { url: `${origin}/survey/${made.code}` },
    'room-screen': { url: `${origin}/screen` },
    'host-home': { url: `${origin}/host#key=${houseKey}` },
    'host-doors': { url: hostLink(origin, made.tasting, made.hostKey) },
  };
}

/** A folder for a browser that has a seat and has read the cautions, and has never loaded our pages. */
async function profileThatSits(origin: string, seat: KeptSeat): Promise<string> {
  const folder = await temporaryFolder();
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findChromium(),
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  const page = await context.newPage();
  await page.goto(`${origin}/api/nothing`);
  await page.evaluate((kept) => localStorage.setItem('quietpour.seats', JSON.stringify([kept])), seat);
  await context.close();
  return folder;
}

process.exitCode = 1;
main().then(
  (code) => process.exit(code),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
