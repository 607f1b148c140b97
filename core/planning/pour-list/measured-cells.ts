import { strongestAbv } from '../../tasting.ts';
import { IMPERIAL_FLUID_OUNCE, US_FLUID_OUNCE } from '../figures/fluid-ounces.ts';
import {
  type CellReading,
  empty,
  type ForeignMoney,
  fact,
  problem,
  saidOf,
  saysNothing,
} from './cell-reading.ts';
import { currencyIn, type HeadingUnit } from './headings.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import { numberAtStart, steady } from './numbers.ts';

export function ranged(value: number, least: number, most: number): CellReading {
  return value >= least && value <= most
    ? fact(value)
    : problem({ code: 'out-of-range', value, least, most });
}

/** A number with no unit but the ones named, within its limits. */
export function plainNumber(
  cell: string,
  least: number,
  most: number,
  units: RegExp = /^$/,
  whole = false,
): CellReading {
  if (saysNothing(cell)) return empty;
  const read = numberAtStart(cell);
  if (read === undefined) return problem({ code: 'not-a-number' });
  if (read.rest !== '' && !units.test(read.rest)) return problem({ code: 'unit-unknown', rest: read.rest });
  if (whole && !Number.isInteger(read.value)) return problem({ code: 'not-whole', value: read.value });
  return ranged(read.value, least, most);
}

const percent = /^(%|°|prozent|percent|abv|alc|alk|alcohol|vol|by|volume|\.|-|,|\/|\s)*$/i;
const proofWord = /^(°\s*)?(us\s*)?proof$/i;

/** Strength in % vol. Proof is the US proof of 27 CFR 30.11, which is twice the per cent by volume. */
export function strengthCell(cell: string, unit: HeadingUnit | undefined): CellReading {
  if (saysNothing(cell)) return empty;
  const read = numberAtStart(cell.replace(/^(abv|alc\.?|vol\.?)[:\s]*/i, ''));
  if (read === undefined) return problem({ code: 'not-a-number' });
  const { value, rest } = read;
  const inProof = proofWord.test(rest) || (rest === '' && unit === 'proof');
  if (!inProof && !percent.test(rest)) return problem({ code: 'unit-unknown', rest });
  const abv = inProof ? steady(value / 2) : value;
  if (abv < 0) return problem({ code: 'out-of-range', value, least: 0, most: strongestAbv });
  if (abv > strongestAbv) {
    const asProof = steady(value / 2);
    return problem({
      code: 'above-any-drink',
      value,
      ...(!inProof && asProof <= strongestAbv ? { asProof } : {}),
    });
  }
  return inProof ? fact(abv, { code: 'us-proof-halved', proof: value, abv }) : fact(abv);
}

const yearsUnit =
  /^[-\s]*(y|yo|y\.?\s?o\.?|yr|yrs|years?|year[-\s]old|years[-\s]old|jahre?|j\.?|jährig|ans?|anni|años)\.?$/i;
const monthsUnit = /^[-\s]*(m|mo|months?|monate?|mois)\.?$/i;

export function ageCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const read = numberAtStart(cell);
  if (read === undefined) return problem({ code: 'not-a-number' });
  const { value, rest } = read;
  if (monthsUnit.test(rest)) return ranged(steady(value / 12), 0, 150);
  if (rest !== '' && !yearsUnit.test(rest)) return problem({ code: 'unit-unknown', rest });
  return ranged(value, 0, 150);
}

/** The one year in a cell, alone or in a date; two different years are no vintage. */
export function vintageCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const numbers = cell.match(/\d+/g) ?? [];
  const years = [...new Set(numbers.filter(({ length }) => length === 4).map(Number))];
  const [year] = years;
  if (year === undefined || years.length > 1) return problem({ code: 'no-year' });
  return ranged(year, 1700, 2200);
}

/** Both in one column: a year is a year, and anything below is an age. */
export function ageOrVintageCell(cell: string): CellReading {
  if (saysNothing(cell)) return empty;
  const year = vintageCell(cell);
  if (year.is === 'fact') return { ...year, as: 'vintage' };
  const years = ageCell(cell);
  return years.is === 'fact' ? { ...years, as: 'age' } : years;
}

const volumeUnits: readonly (readonly [RegExp, HeadingUnit])[] = [
  [/^(ml|millilit(er|re)s?)\.?$/i, 'ml'],
  [/^(cl|zentiliter|centilit(er|re)s?)\.?$/i, 'cl'],
  [/^(l|ltr|lit(er|re)s?)\.?$/i, 'l'],
  [/^(fl\.?\s*)?oz\.?$/i, 'oz'],
];

function inMillilitres(value: number, unit: HeadingUnit, ounce: 'us' | 'imperial'): number {
  switch (unit) {
    case 'cl':
      return steady(value * 10);
    case 'l':
      return steady(value * 1000);
    case 'oz':
      return steady(value * (ounce === 'us' ? US_FLUID_OUNCE : IMPERIAL_FLUID_OUNCE));
    case 'ml':
    case 'proof':
      return value;
    default:
      return unit satisfies never;
  }
}

/**
 * A volume in mL. Bare numbers of a bottle up to 5 are litres, and said to be; those up to 100 could be centilitres or
 * millilitres, and are asked about. A bare pour is in mL.
 */
export function volumeCell(
  cell: string,
  of: 'bottle' | 'pour',
  heading: HeadingUnit | undefined,
  ounce: 'us' | 'imperial',
): CellReading {
  if (saysNothing(cell)) return empty;
  const most = of === 'bottle' ? 20_000 : 500;
  const inLitres = /[^cm]l(tr|iter|itre)?\.?$/i.test(cell) || heading === 'l';
  const read = numberAtStart(cell, !inLitres);
  if (read === undefined) return problem({ code: 'not-a-number' });
  const own = volumeUnits.find(([form]) => form.test(read.rest))?.[1];
  if (read.rest !== '' && own === undefined) return problem({ code: 'unit-unknown', rest: read.rest });
  const unit = own ?? heading;
  if (unit === undefined && of === 'bottle' && read.value > 0 && read.value < 100) {
    if (read.value > 5) return problem({ code: 'unit-missing' });
    const ml = steady(read.value * 1000);
    return fact(ml, { code: 'litres-taken', ml });
  }
  const ml = inMillilitres(read.value, unit ?? 'ml', ounce);
  return ml > 0 && ml <= most ? fact(ml) : problem({ code: 'out-of-range', value: ml, least: 1, most });
}

/** Currencies that are written with a dollar sign alone where they are at home. */
const dollars = new Set(['USD', 'CAD', 'AUD', 'NZD', 'MXN', 'HKD', 'SGD', 'TWD', 'CLP', 'COP', 'ARS']);

/** The currency of a price that is not the plan's; `$` and `Fr.` where the plan's is written otherwise. */
function otherCurrency(text: string, heading: string | undefined, plan: string): string | undefined {
  const named = currencyIn(text) ?? heading;
  if (named !== undefined) return named === plan ? undefined : named;
  if (text.includes('$') && !dollars.has(plan)) return '$';
  return /\bfr\.?(?![a-z])/i.test(text) && plan !== 'CHF' ? 'CHF' : undefined;
}

/**
 * A price in minor units of the plan's currency. `digits`: how many decimals that has. A price in another one is left out
 * until `money` says what becomes of it.
 */
export function priceCell(
  cell: string,
  plan: {
    readonly currency: string;
    readonly digits: number;
    readonly money?: Readonly<Record<string, ForeignMoney>> | undefined;
  },
  headingCurrency: string | undefined,
): CellReading {
  if (saysNothing(cell)) return empty;
  const currency = otherCurrency(cell, headingCurrency, plan.currency);
  const bare = cell
    .replace(/[€£$¥]|\b[A-Z]{3}\b|\b(euro?s?|dollars?)\b|\bfr\b\.?/gi, '')
    .replace(/[.,]\s*[-–—]+\s*$/, '');
  const read = numberAtStart(bare, true);
  if (read === undefined) return problem({ code: 'not-a-number' });
  if (read.rest !== '') return problem({ code: 'unit-unknown', rest: read.rest });
  const told = currency === undefined ? undefined : saidOf(plan.money?.[currency]);
  const rate = told?.how === 'convert' ? (told.rate ?? 1) : 1;
  const minor = Math.round(steady(read.value * rate * 10 ** plan.digits));
  const most = 100_000_000;
  if (minor < 0 || minor > most) {
    return problem({ code: 'out-of-range', value: read.value, least: 0, most: most / 10 ** plan.digits });
  }
  if (currency === undefined) return fact(minor);
  const note = { code: 'other-currency', currency, price: read.value, how: told?.how ?? 'open' } as const;
  return told === undefined || told.how === 'leave' ? { is: 'left-out', note } : fact(minor, note);
}

/**
 * Smoke as 0 to 3, a word, or ppm of phenols in the malt; the bands of ppm are common practice, no source. */
export function peatCell(cell: string, heading: string, { peat: words }: ListVocabulary): CellReading {
  if (cell.trim() === '') return empty;
  const read = numberAtStart(cell);
  if (read === undefined) {
    const peat = words.get(fold(cell));
    if (peat !== undefined) return fact(peat);
    return saysNothing(cell) ? empty : problem({ code: 'not-one-of', meaning: 'peat' });
  }
  const ppm = /^ppm$/i.test(read.rest) || (read.rest === '' && /\bppm\b/i.test(heading));
  if (ppm && read.value >= 0) {
    const peat = read.value === 0 ? 0 : read.value < 15 ? 1 : read.value < 35 ? 2 : 3;
    return fact(peat, { code: 'ppm-as-peat', ppm: read.value, peat });
  }
  return plainNumber(cell, 0, 3, /^\/ ?3$/, true);
}

/** Beer's colour. One SRM is 1.97 EBC (both are defined from the absorbance at 430 nm: 12.7 A and 25 A). */
export function ebcCell(cell: string): CellReading {
  const read = plainNumber(cell, 0, 394, /^ebc$/i);
  if (read.is !== 'fact' || typeof read.fact !== 'number') return read;
  const srm = Math.round((read.fact / 1.97) * 10) / 10;
  return fact(srm, { code: 'ebc-as-srm', ebc: read.fact, srm });
}
