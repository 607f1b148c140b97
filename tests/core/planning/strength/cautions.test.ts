import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sources } from '../../../../core/planning/figures/sources.ts';
import { type CautionSetting, standingCautions } from '../../../../core/planning/strength/cautions.ts';
import { emergencyNumbers } from '../../../../core/planning/strength/emergency-numbers.ts';
import {
  type AgeCountry,
  ageToAsk,
  legalAges,
  minimumAge,
} from '../../../../core/planning/strength/legal-ages.ts';
import { planOf } from '../../../support/plans.ts';

const setting = (given: Partial<CautionSetting>): CautionSetting => ({
  country: 'US',
  shipsKits: false,
  withoutAlcohol: false,
  ...given,
});
const codes = (given: Partial<CautionSetting>) => standingCautions(setting(given)).map(({ code }) => code);

describe('the age that guests are told', () => {
  it('is the highest of the country, and none where it is not known or nothing holds alcohol', () => {
    const plan = planOf(2);
    expect(minimumAge({ ...plan, lawOf: 'US' })).toBe(21);
    expect(minimumAge({ ...plan, lawOf: 'DE' })).toBe(18);
    expect(minimumAge({ ...plan, lawOf: 'BR' })).toBeNull();
    expect(minimumAge(plan)).toBeNull();
    const pours = plan.pours.map((pour) => ({ ...pour, abv: 0 }));
    expect(minimumAge({ pours, lawOf: 'US' })).toBeNull();
  });
});

describe('emergency numbers', () => {
  it('are there for every country that we know an age of, in figures, with a source', () => {
    expect(Object.keys(emergencyNumbers).toSorted()).toEqual(Object.keys(legalAges).toSorted());
    for (const { numbers, source } of Object.values(emergencyNumbers)) {
      for (const number of numbers) expect(number).toMatch(/^\d{2,3}$/);
      expect(sources[source].title).not.toBe('');
    }
  });

  it('are 112 in every country of the European Union, 911 in North America, 999 in Britain, 111 in New Zealand', () => {
    // Federal Communications Commission (112 from any country of the Union), NHS (999), New Zealand health pages (111).
    const european = ['IE', 'AT', 'FR', 'DE', 'NL', 'IT', 'ES', 'DK', 'SE'] as const;
    for (const country of european) expect(emergencyNumbers[country].numbers).toContain('112');
    expect([emergencyNumbers.US, emergencyNumbers.CA].map(({ numbers }) => numbers[0])).toEqual([
      '911',
      '911',
    ]);
    expect([emergencyNumbers.GB, emergencyNumbers.NZ].map(({ numbers }) => numbers[0])).toEqual([
      '999',
      '111',
    ]);
  });
});

describe('[C3] the usual cautions', () => {
  it('come with every tasting of alcohol', () => {
    expect(codes({})).toEqual(
      expect.arrayContaining([
        'spit-every-sip',
        'water-between-pours',
        'eat-first',
        'nobody-drives-after-tasting',
        'no-sum-tells-when-to-drive',
        'no-alcohol-below-age',
        'no-alcohol-in-pregnancy',
        'no-alcohol-with-medicines',
        'no-safe-amount-known',
        'law-on-serving',
        'follow-published-guide',
      ]),
    );
    expect(new Set(codes({})).size).toBe(codes({}).length);
  });

  it('name the law on shipping when kits travel', () => {
    expect(codes({ shipsKits: true })).toContain('law-on-shipping');
    expect(codes({})).not.toContain('law-on-shipping');
  });

  it('stay away from a tasting without alcohol', () => {
    expect(codes({ withoutAlcohol: true })).toEqual([]);
  });

  it('name the age with its source, and always the local law', () => {
    const age = standingCautions(setting({ country: 'JP' })).find(
      ({ code }) => code === 'no-alcohol-below-age',
    );
    expect(age).toMatchObject({ figures: { age: { value: 20, unit: 'years' } }, source: 'jp-age' });
    expect(codes({ country: 'JP' })).toContain('ask-local-law-for-age');
    expect(codes({ country: undefined })).toContain('ask-local-law-for-age');
    expect(codes({ country: undefined })).not.toContain('no-alcohol-below-age');
  });

  it('ask for the highest age that a country names', () => {
    for (const country of Object.keys(legalAges) as AgeCountry[]) {
      const asked = ageToAsk(country);
      for (const rule of legalAges[country]) expect(asked.age, country).toBeGreaterThanOrEqual(rule.age);
    }
    expect([ageToAsk('DE').age, ageToAsk('SE').age, ageToAsk('CA').age]).toEqual([18, 20, 19]);
  });

  it('point at the published guide for tasting drinks with alcohol', () => {
    const guide = standingCautions(setting({})).find(({ code }) => code === 'follow-published-guide');
    expect(sources[guide?.source ?? 'definition'].title).toContain('ASTM E1879');
  });
});

describe('[C3] what the planning never reckons', () => {
  const folder = new URL('../../../../core/planning/', import.meta.url);

  it('has no sum about blood or breath, and none about being fit to drive', () => {
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ts'),
    );
    expect(files).toContain('strength/evening-strength.ts');
    const banned =
      /blood|breath|widmark|promille|\bbac\b|sober|fit(ness)? to drive|safe to drive|per ?mille/i;
    for (const name of files) {
      expect(readFileSync(new URL(name, folder), 'utf8'), name).not.toMatch(banned);
    }
  });
});
