import { type Plan, type PlanInput, planSchema } from '../../../core/tasting.ts';

/** Three invented whiskies for newcomers, talked about after each pour, unless told otherwise. */
export const aPlan = (changes: Partial<PlanInput> = {}): Plan =>
  planSchema.parse({
    title: 'Peat and patience',
    hostName: 'Ilse',
    place: 'The cellar',
    drink: 'spirit',
    level: 'newcomers',
    practice: false,
    discussion: 'each-pour',
    pours: ['one', 'two', 'three'].map((id) => ({
      id,
      drink: 'spirit',
      name: `Marshlight ${id}`,
      producer: 'Nethermoor',
      abv: 46,
    })),
    ...changes,
  });
