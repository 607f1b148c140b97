import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { cardOf, namedPour } from '../../../core/session/views/pour-card.ts';
import { type Pour, pourSchema } from '../../../core/tasting.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const told = {
  producer: 'Nethermoor',
  region: 'The Low Fens',
  country: 'Marland',
  style: 'single malt',
  ageYears: 12,
  vintage: 2019,
  abv: 46,
  cask: 'a first-fill hogshead',
  link: 'https://nethermoor.example/ash',
  story: 'Laid down in the flood year.',
  reading: [{ title: 'The fens', link: 'https://nethermoor.example/fens' }],
};
const bare: Pour = pourSchema.parse({ id: 'ash', drink: 'spirit', name: 'The ash cask' });

describe('the card of a pour that may be named', () => {
  it('has every fact that guests may know, and none that is for the host alone', () => {
    const pour = pourSchema.parse({
      ...bare,
      ...told,
      peat: 3,
      body: 4,
      priceMinor: 8900,
      hostNote: 'Say nothing of the price.',
      photos: { front: 'photo-1', back: 'photo-2' },
    });
    expect(namedPour(pour, '417')).toStrictEqual({
      kind: 'named',
      id: 'ash',
      drink: 'spirit',
      code: '417',
      name: 'The ash cask',
      ...told,
      sparkling: false,
      serve: { minC: 18, maxC: 22 },
      photos: { front: 'photo-1', back: 'photo-2' },
    });
  });

  it('says of every fact that is not known that it is not', () => {
    expect(namedPour(bare, null)).toStrictEqual({
      kind: 'named',
      id: 'ash',
      drink: 'spirit',
      code: null,
      name: 'The ash cask',
      ...Object.fromEntries(Object.keys(told).map((fact) => [fact, null])),
      sparkling: false,
      serve: null,
      reading: [],
      photos: { front: null, back: null },
    });
  });
});

describe('the card of a pour that the plan does not have', () => {
  it('is none', () => {
    expect(cardOf(new EveningTold(planOf(3)).underWay, pourId('nowhere'))).toBeNull();
  });
});
