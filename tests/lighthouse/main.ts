import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planSchema } from '../../core/tasting.ts';
import { hostLink, seatLink } from '../../host/access/key-link.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { House } from '../server/support/house.ts';
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
    for (const [name, url] of Object.entries(pages)) {
      if (wanted.length > 0 && !wanted.includes(name)) continue;
      const report = join(reports, `${name}.json`);
      await measure(url, report, findChromium());
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

/** The pages by name, with a table that is not empty: addresses carry keys of this one evening, which ends with it. */
async function openAnEvening(origin: string, houseKey: string): Promise<Readonly<Record<string, string>>> {
  const house = new House({ url: origin, stop: async () => undefined });
  const made = await house.plan(planSchema.parse(demoEvening), houseKey);
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const guest = await house.guest(made, 'Noor');
  return {
    'guest-door': `${origin}/`,
    'guest-invitation': `${origin}/j/${made.code}`,
    'guest-room': seatLink(origin, made.tasting, guest.key),
    'guest-survey': `${origin}/survey/${made.code}`,
    'room-screen': `${origin}/screen`,
    'host-home': `${origin}/host#key=${houseKey}`,
    'host-doors': hostLink(origin, made.tasting, made.hostKey),
  };
}

process.exitCode = 1;
main().then(
  (code) => process.exit(code),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
