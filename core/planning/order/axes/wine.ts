import { type Axis, age, logistic, pungency, saturating, throughKnots, within } from './axis.ts';
import type { PourFacts } from './pour-facts.ts';

export type WineCategory =
  | 'sparkling white'
  | 'still white'
  | 'sparkling rose'
  | 'still rose'
  | 'sparkling red'
  | 'still red'
  | 'wine under a film of yeast'
  | 'naturally sweet wine'
  | 'ice wine'
  | 'liqueur wine'
  | 'mistelle';

/**
 * The order in which categories are served at a competition. Source: OIV standard for international wine and
 * spirit competitions, OIV/CONCOURS 332A/2009, article 10.
 */
export const wineCategoryOrder: readonly WineCategory[] = [
  'sparkling white',
  'still white',
  'sparkling rose',
  'still rose',
  'sparkling red',
  'still red',
  'wine under a film of yeast',
  'naturally sweet wine',
  'ice wine',
  'liqueur wine',
  'mistelle',
];

/** EU labels call a still wine sweet from 45 g/L (Delegated Regulation (EU) 2019/33, from memory). */
const SWEET_FROM_G_PER_L = 45;

/**
 * The category that the facts tell, or undefined without a colour or kind, and for orange wine, which no list has. Wine
 * under a film of yeast has its own place while it is dry; a sweet one is a liqueur wine.
 */
function wineCategory(facts: PourFacts): WineCategory | undefined {
  switch (facts.wineKind) {
    case 'film-yeast':
      return (within(facts.sugarGPerL, 0, 800) ?? 0) >= SWEET_FROM_G_PER_L
        ? 'liqueur wine'
        : 'wine under a film of yeast';
    case 'naturally-sweet':
      return 'naturally sweet wine';
    case 'ice':
      return 'ice wine';
    case 'liqueur':
      return 'liqueur wine';
    case 'mistelle':
      return 'mistelle';
    case undefined:
      break;
    default:
      return facts.wineKind satisfies never;
  }
  if (facts.fortified === true) return 'liqueur wine';
  switch (facts.colour) {
    case 'white':
      return facts.sparkling === true ? 'sparkling white' : 'still white';
    case 'rose':
      return facts.sparkling === true ? 'sparkling rose' : 'still rose';
    case 'red':
      return facts.sparkling === true ? 'sparkling red' : 'still red';
    case 'orange':
    case undefined:
      return undefined;
    default:
      return facts.colour satisfies never;
  }
}

const categoryLevel = (category: WineCategory): number =>
  wineCategoryOrder.indexOf(category) / (wineCategoryOrder.length - 1);

/**
 * Orange wine is made of white grapes as red wine is, on their skins: its tannin says where it stands between white and
 * red (common practice, no source). Not known, it stands in the middle of the two.
 */
function orangeLevel({ tannin, sparkling }: PourFacts): number {
  const kind = sparkling === true ? 'sparkling' : 'still';
  const [white, red] = [categoryLevel(`${kind} white`), categoryLevel(`${kind} red`)];
  return white + ((red - white) * ((within(tannin, 1, 5) ?? 3) - 1)) / 4;
}

/**
 * Sugar in g/L to a level, knots at the limits of the terms on labels: still wine dry to 4, medium dry to 12,
 * medium to 45; sparkling brut to 12, dry to 32, medium dry to 50 (Delegated Regulation (EU) 2019/33, annex
 * III, from memory). The levels at the knots are ours: within "dry" sugar hardly counts.
 */
function sweetness(sugar: number, sparkling: boolean): number {
  const [dry, mediumDry, medium] = sparkling ? [12, 32, 50] : [4, 12, 45];
  if (sugar > medium) return 0.6 + 0.4 * saturating(sugar - medium, 100);
  return throughKnots(sugar, [
    [0, 0],
    [dry, 0.03],
    [mediumDry, 0.13],
    [medium, 0.6],
  ]);
}

const unwooded = new Set(['none', 'steel', 'glass', 'concrete', 'clay', 'unwooded']);

/**
 * Wine: the categories as the OIV orders them, light before full, dry before sweet, young before old,
 * unwooded before wooded. Dry before sweet and light before full outrank white before red (general wine
 * guidance), so one step of body or a truly sweet wine weighs more than the colour does. Young before old is
 * contested; the host can turn it round.
 */
export const wineAxes: readonly Axis[] = [
  {
    code: 'sweetness',
    weight: 9,
    facts: ['sugarGPerL', 'marks'],
    level: ({ sugarGPerL, sparkling, marks }) => {
      const sugar = within(sugarGPerL, 0, 800);
      if (sugar !== undefined) return sweetness(sugar, sparkling === true);
      const mark = within(marks?.dryness, 0, 10);
      return mark === undefined ? undefined : ((10 - mark) / 10) ** 2;
    },
  },
  {
    code: 'body',
    weight: 6,
    facts: ['body'],
    level: ({ body }) => {
      const known = within(body, 1, 5);
      return known === undefined ? undefined : (known - 1) / 4;
    },
  },
  {
    code: 'category',
    weight: 3,
    facts: ['colour'],
    level: (facts) => {
      const category = wineCategory(facts);
      if (category !== undefined) return categoryLevel(category);
      return facts.colour === 'orange' ? orangeLevel(facts) : undefined;
    },
  },
  pungency(3),
  {
    code: 'strength',
    weight: 1.5,
    facts: ['abv'],
    level: ({ abv }) => {
      const known = within(abv, 0, 100);
      return known === undefined ? undefined : logistic(known, 13.5, 2);
    },
  },
  age(0.8, 10),
  {
    code: 'cask',
    weight: 0.5,
    facts: ['cask'],
    level: ({ cask }) => (cask === undefined ? undefined : unwooded.has(cask.trim().toLowerCase()) ? 0 : 1),
  },
];
