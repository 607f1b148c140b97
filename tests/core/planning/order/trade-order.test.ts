import { describe, expect, it } from 'vitest';
import type { PourFacts } from '../../../../core/planning/order/axes/pour-facts.ts';
import { bestLineup } from '../../../../core/planning/order/lineup.ts';

/** Rules that hosts of such evenings follow: common practice, no source. Each line is an order from first to last. */
const spirits: readonly (readonly [string, readonly Omit<PourFacts, 'drink'>[]])[] = [
  [
    'delicate to pungent',
    [{ marks: { pungency: 2 } }, { marks: { pungency: 5 } }, { marks: { pungency: 9 } }],
  ],
  ['sweet to dry', [{ marks: { dryness: 1 } }, { marks: { dryness: 8 } }]],
  ['young to old', [{ ageYears: 3 }, { ageYears: 12 }, { ageYears: 18 }, { ageYears: 40 }]],
  ['young to old by year of distillation', [{ vintage: 2012 }, { vintage: 1991 }]],
  [
    'smoke last, even at lower strength',
    [
      { abv: 60, peat: 0 },
      { abv: 46, peat: 3 },
    ],
  ],
  ['a little smoke before a lot', [{ peat: 0 }, { peat: 1 }, { peat: 2 }, { peat: 3 }]],
  ['refill, bourbon, wine, sherry', ['refill', 'bourbon', 'wine', 'Sherry '].map((cask) => ({ cask }))],
  [
    'Stahl, Bourbonfass, Weinfass, Sherryfass',
    ['Stahl', 'Bourbonfass', 'Wein-Fass', 'Sherryfass'].map((cask) => ({ cask })),
  ],
  [
    'strength before age',
    [
      { abv: 40, ageYears: 18 },
      { abv: 60, ageYears: 10 },
    ],
  ],
];

const wines: readonly (readonly [string, readonly Omit<PourFacts, 'drink'>[]])[] = [
  [
    'sparkling, white, rosé, red, fortified',
    [
      { colour: 'white', sparkling: true },
      { colour: 'white' },
      { colour: 'rose' },
      { colour: 'red' },
      { colour: 'red', fortified: true },
    ],
  ],
  [
    'brut before a bone dry still wine',
    [
      { colour: 'white', sparkling: true, sugarGPerL: 11 },
      { colour: 'white', sugarGPerL: 1 },
    ],
  ],
  [
    'sweet sparkling after dry still',
    [
      { colour: 'white', sugarGPerL: 2 },
      { colour: 'white', sparkling: true, sugarGPerL: 60 },
    ],
  ],
  [
    'light red before full white',
    [
      { colour: 'red', body: 1 },
      { colour: 'white', body: 4 },
    ],
  ],
  [
    'white before red of the same weight',
    [
      { colour: 'white', body: 3 },
      { colour: 'red', body: 3 },
    ],
  ],
  [
    'off-dry white before dry red',
    [
      { colour: 'white', sugarGPerL: 9 },
      { colour: 'red', sugarGPerL: 2 },
    ],
  ],
  [
    'medium white after dry red',
    [
      { colour: 'red', sugarGPerL: 2 },
      { colour: 'white', sugarGPerL: 30 },
    ],
  ],
  [
    'orange by its tannin: with hardly any after white, gripping beside red',
    [
      { colour: 'white' },
      { colour: 'orange', tannin: 2 },
      { colour: 'orange', tannin: 4 },
      { colour: 'red' },
    ],
  ],
  [
    'orange between white and red where its tannin is not known',
    [{ colour: 'white' }, { colour: 'orange' }, { colour: 'red' }],
  ],
  [
    'dry wine under a film of yeast before naturally sweet wine, sweet after',
    [
      { wineKind: 'film-yeast', sugarGPerL: 2 },
      { wineKind: 'naturally-sweet', sugarGPerL: 130 },
      { wineKind: 'film-yeast', sugarGPerL: 130 },
    ],
  ],
  [
    'unwooded before wooded',
    [
      { colour: 'white', cask: 'steel' },
      { colour: 'white', cask: 'oak' },
    ],
  ],
  ['young before old', [{ vintage: 2023 }, { vintage: 2015 }, { vintage: 1996 }]],
  [
    'dry and light before sweet and fortified',
    [
      { colour: 'white', sugarGPerL: 3, abv: 12 },
      { colour: 'red', fortified: true, sugarGPerL: 100, abv: 20 },
    ],
  ],
];

const beers: readonly (readonly [string, readonly Omit<PourFacts, 'drink'>[]])[] = [
  ['mild before strong', [{ abv: 3.5 }, { abv: 5 }, { abv: 8 }, { abv: 12 }]],
  ['pale before dark', [{ srm: 3 }, { srm: 15 }, { srm: 40 }]],
  ['sour after clean', [{ abv: 5 }, { abv: 5, sour: true }]],
  [
    'smoked after clean',
    [
      { abv: 5, srm: 15 },
      { abv: 5, srm: 15, smoked: true },
    ],
  ],
  [
    'a sour of low strength after a pale lager',
    [
      { abv: 4.8, srm: 3, ibu: 20 },
      { abv: 4, srm: 3, ibu: 8, sour: true },
    ],
  ],
];

const order = (drink: PourFacts['drink'], facts: readonly Omit<PourFacts, 'drink'>[]) => {
  // Ids fall as the expected places rise: a tie broken by id would come out backwards.
  const pours = facts.map((each, at) => ({ ...each, drink, id: `p${9 - at}` }));
  return bestLineup(pours).steps.map(({ pour }) => 9 - Number(pour.slice(1)));
};

describe('orders of the trade', () => {
  const all = [
    ...spirits.map(([name, facts]) => ['spirit', name, facts] as const),
    ...wines.map(([name, facts]) => ['wine', name, facts] as const),
    ...beers.map(([name, facts]) => ['beer', name, facts] as const),
  ];
  it.each(all)('%s: %s', (drink, _, facts) => {
    expect(order(drink, facts)).toEqual(facts.map((__, at) => at));
  });

  it('serves beer before wine before spirits in one evening', () => {
    const mixed = bestLineup([
      { id: 'a', drink: 'spirit', abv: 40 },
      { id: 'b', drink: 'wine', abv: 15, sugarGPerL: 200 },
      { id: 'c', drink: 'beer', abv: 12, smoked: true },
    ]);
    expect(mixed.steps.map(({ pour }) => pour)).toEqual(['c', 'b', 'a']);
    expect(mixed.steps[1]?.reason).toMatchObject({ code: 'rises', axis: 'drink' });
  });
});
