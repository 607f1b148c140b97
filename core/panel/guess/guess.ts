/** What may be guessed of a blind glass, in the order in which it is asked. */
export const guessFacts = ['style', 'origin', 'vintage', 'age', 'abv', 'price'] as const;
export type GuessFact = (typeof guessFacts)[number];

/**
 * A guess or the truth of one fact. Style: a code. Origin: a path from the country down, `france/burgundy`. Vintage: a year. Age:
 * years. Strength: % vol. Price: of a bottle, in minor units of the evening's currency.
 */
export type GuessValue = string | number;

/** What can be answered, fact by fact; every list holds more than the evening's own. A fact that is not there is not asked. */
export type GuessSheet = Readonly<Partial<Record<GuessFact, readonly GuessValue[]>>>;

/** What one pour is, fact by fact, as far as it is known. */
export type GuessTruth = Readonly<Partial<Record<GuessFact, GuessValue>>>;

/** How sure somebody may say that they are of the first fact that is asked, in per cent. */
export const surenesses = [25, 50, 75, 95] as const;

/** What one guest guesses of one glass: any of the facts, and how sure they are of the first one. */
export type Guess = Readonly<Partial<Record<GuessFact | 'sure', GuessValue>>>;

/** The fact that sureness is about: the first that is asked of what is right or wrong. */
export const sureFact = (sheet: GuessSheet): 'style' | 'origin' | undefined =>
  sheet.style ? 'style' : sheet.origin ? 'origin' : undefined;
