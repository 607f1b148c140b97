import { describe, expect, it } from 'vitest';
import {
  a430FromSrm,
  averageBeer,
  beerColour,
  beerTransmittance,
  ebcToSrm,
  lovibondToSrm,
  srmFromA430,
  srmToEbc,
} from '../support/colour/beer-colour.ts';
import { ciede2000 } from '../support/colour/colour-difference.ts';
import { correlatedColourTemperature } from '../support/colour/colour-temperature.ts';
import { contrastRatio, textOnSwatch } from '../support/colour/contrast.ts';
import { srgbToLinear, toScreen } from '../support/colour/srgb.ts';
import { chromaticity, d65White } from '../support/colour/tristimulus.ts';
import published from './colour.json';

/**
 * Values from outside the project; each case of colour.json names its source and whether it was published,
 * computed by independent code from the published formula, or written down from memory.
 */
type Input = Readonly<Record<string, unknown>>;

const num = (input: Input, key: string): number => {
  const value = input[key];
  if (typeof value !== 'number') throw new Error(`the case has no number ${key}`);
  return value;
};
const text = (input: Input, key: string): string => String(input[key]);
const triple = (value: unknown): [number, number, number] => {
  const [a, b, c] = value as number[];
  return [a ?? Number.NaN, b ?? Number.NaN, c ?? Number.NaN];
};

const operations: Readonly<Record<string, (input: Input) => unknown>> = {
  srmToEbc: (input) => ({ ebc: srmToEbc(num(input, 'srm')), a430: a430FromSrm(num(input, 'srm')) }),
  ebcToSrm: (input) => ebcToSrm(num(input, 'ebc')),
  srmFromA430: (input) => srmFromA430(num(input, 'a430')),
  lovibondToSrm: (input) => lovibondToSrm(num(input, 'lovibond')),
  beerTransmission: (input) =>
    beerTransmittance(num(input, 'srm'), num(input, 'pathCm'), num(input, 'wavelengthNm')),
  beerSwatch: (input) => {
    const [a, b, c, d] = (input.coefficients ?? averageBeer) as number[];
    const spectrum = [a ?? 0, b ?? 1, c ?? 0, d ?? 1] as const;
    const colour = beerColour(num(input, 'srm'), num(input, 'pathCm'), spectrum);
    const { rgb, outOfGamut } = toScreen(colour);
    return { XYZ: [colour.X, colour.Y, colour.Z], ...chromaticity(colour), srgb: rgb, outOfGamut };
  },
  beerLuminanceOrder: (input) =>
    (input.pairs as [number, number][]).map(([srm, pathCm]) => beerColour(srm, pathCm).Y),
  whitePoint: () => ({ ...chromaticity(d65White), ...d65White }),
  mccamyCct: (input) => correlatedColourTemperature(num(input, 'x'), num(input, 'y')),
  srgbToLinear: (input) => srgbToLinear(num(input, 'value')),
  contrastRatio: (input) => contrastRatio(text(input, 'a'), text(input, 'b')),
  textOnSwatch: (input) => textOnSwatch(text(input, 'swatch')),
  ciede2000: (input) => ciede2000(triple(input.lab1), triple(input.lab2)),
};

type Tolerance = number | string | Readonly<Record<string, number | string>> | undefined;

/** Every number in `expected` against the same place in `got`; a tolerance that is a word is not asserted. */
function agree(got: unknown, expected: unknown, tolerance: Tolerance, where: string): void {
  if (typeof tolerance === 'string') return;
  if (typeof expected === 'number') {
    const within = typeof tolerance === 'number' ? tolerance : 0;
    expect(typeof got, where).toBe('number');
    expect(Math.abs((got as number) - expected), `${where}: ${got} for ${expected}`).toBeLessThanOrEqual(
      within,
    );
  } else if (Array.isArray(expected)) {
    expect(got, where).toHaveLength(expected.length);
    expected.forEach((each, index) => {
      agree((got as unknown[])[index], each, tolerance, `${where}[${index}]`);
    });
  } else if (typeof expected === 'object' && expected !== null) {
    for (const [key, each] of Object.entries(expected)) {
      const own = typeof tolerance === 'object' ? tolerance[key] : tolerance;
      agree((got as Record<string, unknown>)[key], each, own, `${where}.${key}`);
    }
  } else {
    expect(got, where).toBe(expected);
  }
}

describe('colour against published values', () => {
  it.each(published.cases)('$name ($source)', ({ name, input, expected, tolerance }) => {
    const operation = operations[input.op];
    if (operation === undefined) throw new Error(`no operation ${input.op}`);
    agree(operation(input), expected, tolerance as Tolerance, name);
  });

  it('finds that a deeper glass and a darker beer let less light through, in strict order', () => {
    const cases = published.cases.filter(({ input }) => input.op === 'beerLuminanceOrder');
    expect(cases.length).toBeGreaterThan(0);
    for (const { input } of cases) {
      const luminances = operations.beerLuminanceOrder?.(input) as number[];
      luminances.slice(1).forEach((each, index) => {
        expect(each).toBeLessThan(luminances[index] ?? 0);
      });
    }
  });
});
