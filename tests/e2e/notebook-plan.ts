import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';

/** The demo evening with everything that a notebook can be asked for. */
export const plan = planSchema.parse({
  ...demoEvening,
  level: 'devotees',
  practice: false,
  ranking: 'each-flight',
  liking: true,
  extraWords: ['ferry rope', 'Salt/pepper'],
  trials: [
    {
      id: 'lastlamp',
      flight: 0,
      a: 'kV7nQ2xd',
      b: 'b9TzLw4h',
      codes: { a: ['311', '577'], b: ['642', '909'] },
      orders: ['ABA', 'BBA'],
    },
  ],
  pours: demoEvening.pours?.map((pour) => ({
    ...pour,
    reading: [{ title: 'A walk through the Fennmark hills', link: 'https://example.test/walk' }],
  })),
});
