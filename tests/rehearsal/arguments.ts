import { parseArgs } from 'node:util';

export interface RehearsalArguments {
  readonly guests: number;
  /** How many times faster than a real evening. */
  readonly speed: number;
  readonly seed: number;
  /** One JSON object as the last line, for programs. */
  readonly json: boolean;
  /** A person conducts the stand-ins in a browser. */
  readonly watch: boolean;
  /** The steps of a glass run by themselves. */
  readonly stepsRun: boolean;
  /** Instead of an evening: how often the range of the forecast holds the end. */
  readonly calibration: boolean;
}

export const usage = [
  'npm run rehearse -- [--guests 12] [--speed 60] [--seed 1] [--json] [--watch] [--steps-run] [--calibration]',
  '  --guests  how many stand-in guests, 1 to 500',
  '  --speed   how many times faster than a real evening, 1 to 1000',
  '  --seed    the same number gives the same evening again, 0 to 4294967295',
  '  --json    print the result as one JSON object on the last line',
  '  --watch   keep the server running and conduct the stand-ins yourself',
  '  --steps-run    the steps of a glass run by themselves and wait at its end',
  '  --calibration  no evening, but how often the range of the forecast holds the end of 2,000 simulated ones',
].join('\n');

const ranges = {
  guests: { from: 1, to: 500 },
  speed: { from: 1, to: 1000 },
  seed: { from: 0, to: 2 ** 32 - 1 },
} as const;

/**
 * What was asked for on the command line, or a sentence that says what to write instead.
 * @param anySeed taken when no seed was asked for
 */
export function readArguments(words: readonly string[], anySeed: number): RehearsalArguments | string {
  const parsed = parsedOptions(words);
  if (typeof parsed === 'string') return parsed;
  const watch = parsed.watch === true;
  const guests = numberIn('guests', parsed.guests, 12);
  const speed = numberIn('speed', parsed.speed, watch ? 1 : 60);
  // A table that is compared with the last one is drawn the same way.
  const seed = numberIn('seed', parsed.seed, parsed.calibration === true ? 1 : anySeed);
  for (const each of [guests, speed, seed]) if (typeof each === 'string') return each;
  if (watch && parsed.json) return 'Choose --json or --watch: a rehearsal that you conduct has no result.';
  return {
    guests: Number(guests),
    speed: Number(speed),
    seed: Number(seed),
    json: parsed.json === true,
    watch,
    stepsRun: parsed['steps-run'] === true,
    calibration: parsed.calibration === true,
  };
}

function parsedOptions(words: readonly string[]) {
  try {
    const { values } = parseArgs({
      args: [...words],
      options: {
        guests: { type: 'string' },
        speed: { type: 'string' },
        seed: { type: 'string' },
        json: { type: 'boolean' },
        watch: { type: 'boolean' },
        'steps-run': { type: 'boolean' },
        calibration: { type: 'boolean' },
      },
    });
    return values;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function numberIn(name: keyof typeof ranges, written: string | undefined, usual: number): number | string {
  const { from, to } = ranges[name];
  const value = written === undefined ? usual : /^\d{1,10}$/.test(written) ? Number(written) : Number.NaN;
  if (value >= from && value <= to) return value;
  return `--${name} takes a whole number from ${from} to ${to}, not “${written}”.`;
}
