import { type Allergen, allergens } from '../../drinks/allergens.ts';
import { type Level, usualFlights } from '../../tasting.ts';

/**
 * Who is coming. Five questions, each with four answers that score 0 to 3; the words to them live with the
 * other texts. None of them asks about health, money or how much somebody drinks; what a guest must not have is asked
 * apart, because the host has to know it before buying.
 */
export const crowdQuestions = [
  /** How many guided tastings have you sat through: none, one or two, a handful, more than I can count. */
  'tastings-sat-through',
  /** When you like a glass, can you say why: no, with help, in my own words, so that others find it too. */
  'words-for-a-glass',
  /** How do you choose a bottle: somebody hands it to me, by label, by style, by who made it and how. */
  'choosing-a-bottle',
  /** Two glasses side by side: I drink them, I have a favourite, I can tell them apart, I can say what was done. */
  'two-side-by-side',
  /** A quiet evening of small sips and notes: rather not, once, gladly, the longer the better. */
  'quiet-evening',
] as const;

export type CrowdQuestion = (typeof crowdQuestions)[number];
export type CrowdAnswer = 0 | 1 | 2 | 3;
export type SurveyAnswers = Readonly<Partial<Record<CrowdQuestion, CrowdAnswer>>> & {
  /** What this guest must not have; absent where nothing was said. */
  readonly avoids?: readonly Allergen[] | undefined;
};

/** Fewer answers than this say too little to place anybody. */
const ENOUGH_ANSWERS = 3;
/** Mean scores from which a guest counts as a regular and as a devotee: a third and three quarters of the way up. */
const REGULAR_FROM = 1;
const DEVOTEE_FROM = 2.25;

export type GuestPlacing =
  | { readonly status: 'placed'; readonly level: Level; readonly score: number }
  | { readonly status: 'too-few-answers'; readonly answered: number };

type CrowdNote =
  /** Some are new: the practice round with plain water is on, and steps are spoken in full. */
  | { readonly code: 'newcomers-among-them'; readonly guests: number }
  /** Some know much more than the evening assumes: offer them extra reading, not extra pours. */
  | { readonly code: 'devotees-among-them'; readonly guests: number }
  /** Newcomers and devotees in one room: the middle is served, neither end. */
  | { readonly code: 'wide-spread' }
  /** These did not answer enough to be placed and are not counted. */
  | { readonly code: 'not-placed'; readonly guests: number }
  /** Fewer than half have been placed: ask again or choose by hand. */
  | { readonly code: 'mostly-unknown' };

export interface CrowdSpread {
  readonly newcomers: number;
  readonly regulars: number;
  readonly devotees: number;
  readonly notPlaced: number;
}

export type CrowdAdvice =
  | { readonly status: 'unknown'; readonly spread: CrowdSpread; readonly notes: readonly CrowdNote[] }
  | {
      readonly status: 'advised';
      readonly level: Level;
      /** The usual flights for that level: their sum is the number of pours. */
      readonly flightSizes: readonly number[];
      readonly practiceRound: boolean;
      readonly spread: CrowdSpread;
      readonly notes: readonly CrowdNote[];
    };

/** Where one guest's answers put them: the mean of what was answered, from three answers on. */
export function placeGuest(answers: SurveyAnswers): GuestPlacing {
  const given = crowdQuestions.flatMap((question) => answers[question] ?? []);
  if (given.length < ENOUGH_ANSWERS) return { status: 'too-few-answers', answered: given.length };
  const score = given.reduce<number>((sum, answer) => sum + answer, 0) / given.length;
  const level = score >= DEVOTEE_FROM ? 'devotees' : score >= REGULAR_FROM ? 'regulars' : 'newcomers';
  return { status: 'placed', level, score };
}

function countLevels(placings: readonly GuestPlacing[]): CrowdSpread {
  const spread = { newcomers: 0, regulars: 0, devotees: 0, notPlaced: 0 };
  for (const placing of placings) {
    if (placing.status === 'placed') spread[placing.level]++;
    else spread.notPlaced++;
  }
  return spread;
}

/** The level that at least half of those placed have reached: an even room goes to the lower one. */
function levelOf(spread: CrowdSpread, placed: number): Level {
  if (spread.devotees * 2 > placed) return 'devotees';
  return (spread.devotees + spread.regulars) * 2 > placed ? 'regulars' : 'newcomers';
}

/**
 * A size for the crowd: the level that more than half of those placed have reached, so nobody's evening is
 * set by one expert or one beginner; a newcomer anywhere turns the practice round on.
 */
export function adviseCrowd(surveys: readonly SurveyAnswers[]): CrowdAdvice {
  const spread = countLevels(surveys.map(placeGuest));
  const placed = spread.newcomers + spread.regulars + spread.devotees;
  const notes: CrowdNote[] = [];
  if (spread.notPlaced > 0) notes.push({ code: 'not-placed', guests: spread.notPlaced });
  if (placed === 0) return { status: 'unknown', spread, notes };
  if (placed * 2 < surveys.length) notes.push({ code: 'mostly-unknown' });
  const level = levelOf(spread, placed);
  if (level !== 'newcomers' && spread.newcomers > 0) {
    notes.push({ code: 'newcomers-among-them', guests: spread.newcomers });
  }
  if (level !== 'devotees' && spread.devotees > 0) {
    notes.push({ code: 'devotees-among-them', guests: spread.devotees });
  }
  if (spread.newcomers > 0 && spread.devotees > 0) notes.push({ code: 'wide-spread' });
  const practiceRound = spread.newcomers > 0;
  return { status: 'advised', level, flightSizes: usualFlights[level], practiceRound, spread, notes };
}

/** How many guests said that they must not have it; those that somebody named, in the order of the law. */
export const avoidedBy = (
  surveys: readonly SurveyAnswers[],
): readonly { readonly allergen: Allergen; readonly guests: number }[] =>
  allergens
    .map((allergen) => ({
      allergen,
      guests: surveys.filter(({ avoids }) => avoids?.includes(allergen) === true).length,
    }))
    .filter(({ guests }) => guests > 0);
