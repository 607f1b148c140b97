import type { Allergen } from '../../../core/drinks/allergens.ts';

const listed = new Intl.ListFormat('en', { type: 'conjunction' });

/** Allergens and how they are told, in English. Never that something is absent. */
export const allergenWords = {
  names: {
    gluten: 'gluten (wheat, barley, rye, oats)',
    crustaceans: 'crustaceans',
    eggs: 'egg',
    fish: 'fish',
    peanuts: 'peanuts',
    soybeans: 'soya',
    milk: 'milk',
    nuts: 'nuts',
    celery: 'celery',
    mustard: 'mustard',
    sesame: 'sesame',
    sulphites: 'sulphites',
    lupin: 'lupin',
    molluscs: 'molluscs',
  } satisfies Record<Allergen, string>,
  told: {
    pour: (names: readonly string[]) => `Contains, among other things: ${listed.format(names)}.`,
    flight: (names: readonly string[]) => `In this flight, among other things: ${listed.format(names)}.`,
  },
  vial: {
    pour: (names: readonly string[]) => `Contains ${names.join(', ')}…`,
    flight: (names: readonly string[]) => `In this flight: ${names.join(', ')}…`,
  },
  ask: 'Anything you must not have? Ask your host before you sip.',
  title: 'Allergens',
  noneNoted: 'none noted',
  hint: 'From the label or the producer. Many labels of drinks say nothing, and a spirit’s need not name the grain: ask the producer. You decide, and what you note is told before the first sip, for a blind pour with its whole flight. Nothing noted does not mean that there is nothing in it.',
  usual: {
    spirit: 'Liqueurs and flavoured spirits may hold milk, egg or nuts.',
    wine: 'Wine mostly holds sulphites; fining may leave egg, milk or fish.',
    beer: 'Beer mostly holds gluten; some hold milk, nuts or sulphites.',
  },
  source:
    'The fourteen of Regulation (EU) No 1169/2011, Annex II; the nine of the United States are among them.',
  prepare:
    'Ask everybody what they must not have, and ask the producers. The bread has gluten and may have milk or sesame: keep another kind apart.',
  avoid: 'Anything you must not have?',
  avoidHint:
    'So that your host can ask the producers and choose the bread. Your name is not on it, so say it again on the evening.',
  avoided: (names: readonly string[]) =>
    `Guests who answered must not have: ${names.join('; ')}. There is no name on it: ask everybody again, and the producers first.`,
  times: (name: string, guests: number) => `${name} (${guests})`,
};

export type AllergenWords = typeof allergenWords;
