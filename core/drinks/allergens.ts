/**
 * What food law has declared because it can make people ill: the fourteen of Annex II of Regulation (EU) No 1169/2011, in
 * its order. The nine of the United States (FALCPA 2004, with sesame by the FASTER Act 2021) are among them; their wheat
 * is one of the cereals with gluten.
 */
export const allergens = [
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
] as const;
export type Allergen = (typeof allergens)[number];
