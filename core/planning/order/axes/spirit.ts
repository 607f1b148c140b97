import { type Axis, age, logistic, pungency, within } from './axis.ts';

/**
 * How much each cask lays over what follows, light to heavy. Bourbon before sherry is common practice, no
 * source; so is the rest of this ladder.
 */
const caskLevels: Readonly<Record<string, number>> = {
  none: 0,
  steel: 0,
  glass: 0,
  refill: 0.2,
  bourbon: 0.3,
  oak: 0.4,
  virgin: 0.5,
  'new oak': 0.5,
  rum: 0.55,
  wine: 0.7,
  cognac: 0.7,
  madeira: 0.8,
  port: 0.85,
  sherry: 0.9,
};

/** Other words for these casks. */
const caskWords: Readonly<Record<string, string>> = {
  kein: 'none',
  keins: 'none',
  ohne: 'none',
  stahl: 'steel',
  edelstahl: 'steel',
  glas: 'glass',
  wiederbefüllt: 'refill',
  eiche: 'oak',
  'neue eiche': 'new oak',
  frischholz: 'new oak',
  wein: 'wine',
  portwein: 'port',
};

/** A cask by its one word, in English or German, with or without the word for cask behind it. */
function caskLevel(cask: string): number | undefined {
  const word = cask
    .trim()
    .toLowerCase()
    .replace(/[ -]?(cask|fass|fässer)$/, '');
  return caskLevels[caskWords[word] ?? word];
}

/**
 * Spirits: quiet before powerful, sweet before dry, low strength before high, young before old, unpeated before peated,
 * light cask before heavy. Common practice, no source; which of them count how much is our own, and all are added up, so
 * that no pair of them rules alone.
 */
export const spiritAxes: readonly Axis[] = [
  {
    code: 'smoke',
    weight: 6,
    facts: ['peat'],
    level: ({ peat, smoked }) => {
      const marked = within(peat, 0, 3);
      if (marked !== undefined) return marked / 3;
      return smoked === true ? 2 / 3 : undefined;
    },
  },
  {
    code: 'strength',
    weight: 5,
    facts: ['abv'],
    level: ({ abv }) => {
      const known = within(abv, 0, 100);
      return known === undefined ? undefined : logistic(known, 48, 8);
    },
  },
  pungency(4),
  {
    code: 'dryness',
    weight: 2,
    facts: ['marks'],
    level: ({ marks }) => {
      const mark = within(marks?.dryness, 0, 10);
      return mark === undefined ? undefined : mark / 10;
    },
  },
  {
    code: 'cask',
    weight: 2,
    facts: ['cask'],
    level: ({ cask }) => (cask === undefined ? undefined : caskLevel(cask)),
  },
  age(1.5, 12),
];
