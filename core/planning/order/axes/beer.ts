import { type Axis, logistic, pungency, saturating, within } from './axis.ts';

/**
 * Beer: pale and mild before strong, dark, bitter, sour or smoked. Common practice, no source; the weights
 * are our own.
 */
export const beerAxes: readonly Axis[] = [
  {
    code: 'smoke',
    weight: 6,
    facts: ['smoked'],
    level: ({ smoked, peat }) => {
      const marked = within(peat, 0, 3);
      return marked === undefined ? Number(smoked === true) : Math.max(marked / 3, Number(smoked === true));
    },
  },
  {
    code: 'sourness',
    weight: 4,
    facts: ['sour'],
    level: ({ sour }) => Number(sour === true),
  },
  {
    code: 'strength',
    weight: 4,
    facts: ['abv'],
    level: ({ abv }) => {
      const known = within(abv, 0, 100);
      return known === undefined ? undefined : logistic(known, 7, 2);
    },
  },
  {
    code: 'bitterness',
    weight: 4,
    facts: ['ibu'],
    level: ({ ibu }) => {
      const known = within(ibu, 0, 2000);
      return known === undefined ? undefined : saturating(known, 40);
    },
  },
  {
    code: 'colour',
    weight: 3,
    facts: ['srm'],
    level: ({ srm }) => {
      const known = within(srm, 0, 1000);
      return known === undefined ? undefined : saturating(known, 20);
    },
  },
  pungency(3),
  {
    code: 'body',
    weight: 2,
    facts: ['body'],
    level: ({ body }) => {
      const known = within(body, 1, 5);
      return known === undefined ? undefined : (known - 1) / 4;
    },
  },
];
