import { Cast } from './cast.ts';
import { engines } from './device.ts';
import { playEvening } from './evening.ts';
import { hasEngine, installEngine } from './installed.ts';
import { keepWhatIsRead } from './read-aloud.ts';
import { layOutSheets } from './sheets.ts';

const folder = new URL('../screenshots/engines', import.meta.url).pathname;

/**
 * The whole evening in each engine, and a sheet of pictures for each screen. `-- webkit` for one engine, `-- --orca` for
 * what a screen reader says instead.
 */
async function main(): Promise<number> {
  const asked = process.argv.slice(2);
  if (asked.includes('--orca')) {
    installEngine('orca');
    if (!hasEngine('orca')) return 1;
    await keepWhatIsRead();
    return 0;
  }
  const faults: string[] = [];
  for (const engine of engines.filter((each) => asked.length === 0 || asked.includes(each))) {
    if (engine !== 'chromium') {
      installEngine(engine);
      if (!hasEngine(engine)) continue;
    }
    const began = performance.now();
    const cast = await Cast.open(engine, folder);
    try {
      await playEvening(cast);
    } catch (error) {
      faults.push(`${engine}: ${error instanceof Error ? error.message : error}`);
    } finally {
      await cast.close();
    }
    faults.push(...cast.faults);
    console.log(`${engine}: ${Math.round((performance.now() - began) / 1000)} s`);
  }
  const screens = await layOutSheets(folder);
  console.log(`${screens.length} screens, each a sheet in ${folder}.`);
  for (const fault of faults) console.error(fault);
  return faults.length === 0 ? 0 : 1;
}

process.exitCode = 1;
main().then(
  (code) => process.exit(code),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
