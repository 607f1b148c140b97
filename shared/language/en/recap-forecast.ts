import type { Foretold } from '../../../core/recap/foretold.ts';

/** How good the evening's forecast was, in English. */
export const forecastWords = {
  moments: {
    start: 'At the welcome',
    third: 'After a third',
    'two-thirds': 'After two thirds',
  } satisfies Record<Foretold['when'], string>,
  range: (moment: string, early: string, late: string, likely: string) =>
    `${moment} the forecast said ${early} to ${late}, most likely ${likely}.`,
  ended: (end: string, held: number, of: number) =>
    `It ended at ${end}: ${held} of ${of} were right. About eight in ten should be.`,
};
export type ForecastWords = typeof forecastWords;
