import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Allergen, allergens } from '../../../core/drinks/allergens.ts';
import { type PourId, pourId } from '../../../core/ids.ts';
import { avoidedBy } from '../../../core/planning/theme/crowd.ts';
import { toldAllergens } from '../../../core/running-order/told-allergens.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import type { Plan } from '../../../core/tasting.ts';
import { allergenWords as german } from '../../../shared/language/de/allergens.ts';
import { allergenWords as english } from '../../../shared/language/en/allergens.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const withNoted = (plan: Plan, noted: Readonly<Record<string, readonly Allergen[]>>): Plan => ({
  ...plan,
  pours: plan.pours.map((pour) => ({
    ...pour,
    ...(noted[pour.id] === undefined ? {} : { allergens: [...(noted[pour.id] ?? [])] }),
  })),
});
const noted = { ash: ['milk'], birch: ['gluten', 'sulphites'], dogwood: ['eggs'] } as const;
const told = (plan: Plan, id: PourId, named: boolean, dropped?: readonly PourId[]) =>
  toldAllergens(plan, id, named, dropped);

describe('allergens', () => {
  it('are the fourteen of the European law, with the nine of the United States among them', () => {
    // Annex II of Regulation (EU) No 1169/2011, as reprinted by caterers and airlines; seen. In its order.
    expect(allergens).toEqual([
      'gluten',
      'crustaceans',
      'eggs',
      'fish',
      'peanuts',
      'soybeans',
      'milk',
      'nuts',
      'celery',
      'mustard',
      'sesame',
      'sulphites',
      'lupin',
      'molluscs',
    ]);
    // FALCPA of 2004 and FASTER Act of 2021, as quoted by law blogs; seen. Wheat is one of the cereals with gluten.
    const american = [
      'milk',
      'eggs',
      'fish',
      'crustaceans',
      'nuts',
      'peanuts',
      'gluten',
      'soybeans',
      'sesame',
    ];
    expect(allergens).toEqual(expect.arrayContaining(american));
  });

  it('[C6] are told of the pour itself where its name is open', () => {
    const plan = withNoted(planOf(6), noted);
    expect(told(plan, birch, true)).toEqual({ of: 'pour', noted: ['gluten', 'sulphites'] });
    expect(told(plan, pourId('cedar'), true)).toBeNull();
  });

  it('[C6] are told of the whole flight where it is not, the same at each of its glasses', () => {
    const plan = withNoted(planOf(6, { blind: true }), noted);
    const flight = { of: 'flight', noted: ['gluten', 'milk', 'sulphites'] };
    for (const id of [ash, birch, pourId('cedar')]) expect(told(plan, id, false)).toEqual(flight);
    expect(told(plan, pourId('dogwood'), false)?.noted).toEqual(['eggs']);
    expect(told(plan, ash, false, [birch])?.noted).toEqual(['milk']);
  });

  it('[C6] betray no blind glass: which glass of a flight holds what changes nothing that is told', () => {
    const some = fc.subarray([...allergens]);
    fc.assert(
      fc.property(some, some, some, (one, two, three) => {
        const plan = planOf(3, { blind: true });
        const first = withNoted(plan, { ash: one, birch: two, cedar: three });
        const other = withNoted(plan, { ash: three, birch: one, cedar: two });
        expect(told(first, ash, false)).toEqual(told(other, ash, false));
      }),
    );
  });

  it('[C6] stand on the stage before the sip, and with the name of the pour after its reveal', () => {
    const evening = new EveningTold(withNoted(planOf(3, { blind: true }), noted)).goTo('ash/first/swirl');
    const shown = () => {
      const stage = stageView(evening.underWay, 1);
      return stage.status === 'under-way' ? stage.cue.allergens : undefined;
    };
    expect(shown()).toEqual({ of: 'flight', noted: ['gluten', 'milk', 'sulphites'] });
    evening.goTo('ash/water');
    expect(shown()).toBeNull();
    evening.host({ type: 'Reveal', pours: [ash] });
    evening.goTo('ash/first/nose');
    expect(shown()).toEqual({ of: 'pour', noted: ['milk'] });
  });

  it('are counted for the host without anybody’s name, in the order of the law', () => {
    expect(avoidedBy([{ avoids: ['milk', 'gluten'] }, { avoids: ['milk'] }, {}])).toEqual([
      { allergen: 'gluten', guests: 1 },
      { allergen: 'milk', guests: 2 },
    ]);
  });

  it('[C6] are never said to be absent', () => {
    for (const words of [english, german]) {
      const said = [words.told.pour(['x']), words.told.flight(['x']), words.ask, words.hint].join(' ');
      expect(said).not.toMatch(/\bfree (of|from)\b|\bfrei von\b|\bcontains no\b|\benthält kein/i);
    }
  });
});
