/** When, where and in whose way of writing a run of the tests takes place. */
export interface Moment {
  readonly zone: string;
  /** BCP 47; what a device prefers, and with it the language of its pages. */
  readonly locale: string;
  /** What the clocks on the wall show as each file begins, in ms since 1970. */
  readonly begins: number;
  /** For a person: `23:50 on 31 December, Asia/Kolkata, de`. */
  readonly name: string;
}

export const zones = ['UTC', 'America/St_Johns', 'Asia/Kolkata', 'Pacific/Auckland'] as const;
export const locales = ['en-GB', 'en-US', 'de'] as const;
type Zone = (typeof zones)[number];

/** Where clocks stay the same all year, guests come from where they change: Vienna's nights, at 01:00 UTC. */
const vienna = { spring: Date.UTC(2028, 2, 26, 1), autumn: Date.UTC(2028, 9, 29, 1) };

/**
 * The instants at which clocks go forward and back, by the rules of the IANA time zone database: Newfoundland at 02:00 on
 * the second Sunday of March and the first of November, New Zealand at 02:00 and 03:00 on the last Sunday of September
 * and the first of April. `moment.test.ts` holds them against this machine's own zones.
 */
export const changes: Readonly<Record<Zone, { readonly spring: number; readonly autumn: number }>> = {
  UTC: vienna,
  'Asia/Kolkata': vienna,
  'America/St_Johns': { spring: Date.UTC(2028, 2, 12, 5, 30), autumn: Date.UTC(2028, 10, 5, 4, 30) },
  'Pacific/Auckland': { spring: Date.UTC(2028, 8, 23, 14), autumn: Date.UTC(2028, 3, 1, 14) },
};

const minute = 60_000;
/** Late enough that an evening has both sides of midnight, or of a change of the clocks. */
const ahead = 10 * minute;

/** A leap year, so that the day after 28 February is another one than usual. */
const times: readonly (readonly [name: string, begins: (zone: Zone) => number])[] = [
  ['00:05', (zone) => wallIn(zone, '2028-06-14T00:05')],
  ['09:55', (zone) => wallIn(zone, '2028-06-14T09:55')],
  ['12:00', (zone) => wallIn(zone, '2028-06-14T12:00')],
  ['23:50', (zone) => wallIn(zone, '2028-06-14T23:50')],
  ['23:50 on 28 February', (zone) => wallIn(zone, '2028-02-28T23:50')],
  ['23:50 on 31 December', (zone) => wallIn(zone, '2028-12-31T23:50')],
  ['ten minutes before clocks go forward', (zone) => changes[zone].spring - ahead],
  ['ten minutes before clocks go back', (zone) => changes[zone].autumn - ahead],
];

/** Every time of day in every zone and locale; the place in this list is the seed that names it. */
export const moments: readonly Moment[] = times.flatMap(([name, begins]) =>
  zones.flatMap((zone) =>
    locales.map((locale) => ({ zone, locale, begins: begins(zone), name: `${name}, ${zone}, ${locale}` })),
  ),
);

/** The instant at which a zone's clock shows this, on a day on which it shows it once. */
function wallIn(timeZone: string, wall: string): number {
  const asIfUtc = Date.parse(`${wall}Z`);
  const shown = (at: number) =>
    Date.parse(`${new Date(at).toLocaleString('sv', { timeZone }).replace(' ', 'T')}Z`);
  return asIfUtc - (shown(asIfUtc) - asIfUtc);
}

/** One of them by its seed; throws a sentence when there is none of that name. */
export function momentOf(seed: string): Moment {
  const moment = /^\d+$/.test(seed) ? moments[Number(seed)] : undefined;
  if (moment !== undefined) return moment;
  throw new Error(`MOMENT takes a whole number from 0 to ${moments.length - 1}; it is ${seed}.`);
}

/** At what moment this run of the tests takes place; undefined where none was drawn, as in a rehearsal. */
export const momentNow = (environment: NodeJS.ProcessEnv = process.env): Moment | undefined =>
  environment.MOMENT === undefined ? undefined : momentOf(environment.MOMENT);

/**
 * Draws a moment for this run, unless MOMENT names one already, says which, and lets every process that is started from
 * here on live in its zone and locale. Called where the runner is configured, before it starts anything.
 */
export function drawMoment(environment: NodeJS.ProcessEnv = process.env): Moment {
  const drawn = environment.MOMENT === undefined;
  const seed = environment.MOMENT ?? String(Math.floor(Math.random() * moments.length));
  const moment = momentOf(seed);
  environment.MOMENT = seed;
  environment.TZ = moment.zone;
  // What programs on this machine take for its locale, installed or not.
  environment.LC_ALL = `${moment.locale === 'de' ? 'de_DE' : moment.locale.replace('-', '_')}.UTF-8`;
  if (drawn) console.log(`The tests run at ${moment.name}. Again at this moment: MOMENT=${seed}`);
  return moment;
}
