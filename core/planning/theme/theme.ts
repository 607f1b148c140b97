import type { PlannedPour } from '../order/axes/pour-facts.ts';
import {
  byFact,
  type ComparedFact,
  grouped,
  type HeldFact,
  type SharedFact,
  sidesOf,
  tells,
} from './theme-sides.ts';

export type Theme =
  | { readonly kind: 'free' }
  /** Neighbours of one time: `held` is the same in all, `by` differs from pour to pour. */
  | {
      readonly kind: 'horizontal';
      readonly by: SharedFact;
      readonly held?: HeldFact | undefined;
      readonly each?: 'flight' | undefined;
    }
  /** One producer through the years. With `each`, here and in a horizontal, every flight is one of its own. */
  | { readonly kind: 'vertical'; readonly by: 'vintage' | 'age'; readonly each?: 'flight' | undefined }
  /** Sides against each other: a flight for each side, or flights that match one of each side. */
  | {
      readonly kind: 'versus';
      readonly by: ComparedFact;
      /** Side by side unless matched. */
      readonly flights?: 'side-by-side' | 'matched' | undefined;
    };

type MissingThemeFact = HeldFact | 'ageYears' | 'abv' | 'priceMinor';

/** Something that goes against the theme; `flight`, from 0, where it does so in one flight of several. */
export type ThemeCheck = ThemeFault & { readonly flight?: number | undefined };

type ThemeFault =
  /** A vertical needs one producer; this pour is from another than most. */
  | {
      readonly code: 'another-producer';
      readonly pour: string;
      readonly producer: string;
      readonly expected: string;
    }
  /** A vertical steps through the years; these stand on the same step. */
  | { readonly code: 'same-step'; readonly pours: readonly string[]; readonly step: number }
  /** A horizontal holds this fact; this pour differs from most. */
  | {
      readonly code: 'does-not-share';
      readonly fact: HeldFact;
      readonly pour: string;
      readonly value: string;
      readonly expected: string;
    }
  /** A horizontal goes across this fact; these pours do not differ in it. */
  | {
      readonly code: 'not-apart';
      readonly fact: SharedFact;
      readonly pours: readonly string[];
      readonly value: string;
    }
  /** The theme turns on a fact that this pour does not tell. */
  | {
      readonly code: 'fact-missing';
      readonly fact: MissingThemeFact;
      readonly pour: string;
    }
  /** A comparison needs at least two sides. */
  | { readonly code: 'one-side-only' }
  /** Sides of different sizes: the larger one shows more of itself. */
  | { readonly code: 'uneven-sides'; readonly sizes: readonly number[] }
  /** A flight should be one side alone, and holds several. */
  | { readonly code: 'sides-mixed'; readonly pours: readonly string[] }
  /** A flight should have one of each side, and some side is not in it. */
  | { readonly code: 'side-missing' }
  /** Nothing to compare yet. */
  | { readonly code: 'too-few-pours'; readonly pours: number };

/** Pours outside the largest group that shares a fact, with the value of that group. */
function strangers(
  pours: readonly PlannedPour[],
  fact: HeldFact,
): { pour: PlannedPour; value: string; expected: string }[] {
  const groups = byFact(pours, fact).sort((a, b) => b.length - a.length);
  const first = groups[0]?.[0];
  const expected = first && tells(first, fact);
  if (expected === undefined) return [];
  return groups
    .slice(1)
    .flatMap((group) => group.map((pour) => ({ pour, value: tells(pour, fact) ?? '', expected })));
}

const missing = (pours: readonly PlannedPour[], fact: HeldFact): ThemeFault[] =>
  pours.flatMap((pour) =>
    tells(pour, fact) === undefined ? [{ code: 'fact-missing', fact, pour: pour.id }] : [],
  );

function checkHorizontal(
  theme: Extract<Theme, { kind: 'horizontal' }>,
  pours: readonly PlannedPour[],
): ThemeFault[] {
  const { by: across, held } = theme;
  const notApart = byFact(pours, across).flatMap((group): ThemeFault[] => {
    const [first, second] = group;
    if (first === undefined || second === undefined) return [];
    return [
      {
        code: 'not-apart',
        fact: across,
        pours: group.map(({ id }) => id),
        value: tells(first, across) ?? '',
      },
    ];
  });
  if (held === undefined) return [...missing(pours, across), ...notApart];
  const differing = strangers(pours, held).map(
    ({ pour, value, expected }): ThemeFault => ({
      code: 'does-not-share',
      fact: held,
      pour: pour.id,
      value,
      expected,
    }),
  );
  return [...missing(pours, across), ...missing(pours, held), ...notApart, ...differing];
}

function checkVertical(by: 'vintage' | 'ageYears', pours: readonly PlannedPour[]): ThemeFault[] {
  const others = strangers(pours, 'producer').map(
    ({ pour, value, expected }): ThemeFault => ({
      code: 'another-producer',
      pour: pour.id,
      producer: value,
      expected,
    }),
  );
  const unknown = pours.flatMap((pour): ThemeFault[] =>
    pour[by] === undefined ? [{ code: 'fact-missing', fact: by, pour: pour.id }] : [],
  );
  const same = [...grouped(pours, (pour) => pour[by])].flatMap(([step, group]): ThemeFault[] =>
    group.length > 1 ? [{ code: 'same-step', pours: group.map(({ id }) => id), step }] : [],
  );
  return [...missing(pours, 'producer'), ...others, ...unknown, ...same];
}

function comparedFact(by: ComparedFact): MissingThemeFact {
  switch (by) {
    case 'strength':
      return 'abv';
    case 'price':
      return 'priceMinor';
    case 'country':
    case 'region':
    case 'style':
    case 'producer':
      return by;
    default:
      return by satisfies never;
  }
}

function checkVersus(by: ComparedFact, pours: readonly PlannedPour[]): ThemeFault[] {
  const sides = sidesOf(by, pours);
  const sizes = sides.map((side) => side.length);
  const sided = new Set(sides.flat());
  const fact = comparedFact(by);
  const unknown = pours.flatMap((pour): ThemeFault[] =>
    sided.has(pour) ? [] : [{ code: 'fact-missing', fact, pour: pour.id }],
  );
  if (sides.length < 2) return [...unknown, { code: 'one-side-only' }];
  return new Set(sizes).size > 1 ? [...unknown, { code: 'uneven-sides', sizes }] : unknown;
}

/** Where the sides of a comparison stand in the flights: each alone in its own, or one of each in every one. */
function checkMeetings(
  { by, flights: meet }: Extract<Theme, { kind: 'versus' }>,
  pours: readonly PlannedPour[],
  flights: readonly (readonly PlannedPour[])[],
): ThemeCheck[] {
  const sides = sidesOf(by, pours);
  if (sides.length < 2) return [];
  return flights.flatMap((flight, index): ThemeCheck[] => {
    const here = sides.filter((side) => side.some((pour) => flight.includes(pour)));
    if (meet === 'matched')
      return here.length > 0 && here.length < sides.length ? [{ code: 'side-missing', flight: index }] : [];
    return here.length > 1 ? [{ code: 'sides-mixed', pours: flight.map(({ id }) => id), flight: index }] : [];
  });
}

function faultsIn(theme: Theme, pours: readonly PlannedPour[]): readonly ThemeFault[] {
  const few: ThemeFault[] = pours.length < 2 ? [{ code: 'too-few-pours', pours: pours.length }] : [];
  switch (theme.kind) {
    case 'free':
      return [];
    case 'horizontal':
      return [...few, ...checkHorizontal(theme, pours)];
    case 'vertical':
      return [...few, ...checkVertical(theme.by === 'age' ? 'ageYears' : 'vintage', pours)];
    case 'versus':
      return [...few, ...checkVersus(theme.by, pours)];
    default:
      return theme satisfies never;
  }
}

/**
 * Everything in the lineup that goes against its theme. An empty list means that it holds. `flights` are the same pours as
 * they are cut: a theme for flights is looked for in each.
 */
export function checkTheme(
  theme: Theme,
  pours: readonly PlannedPour[],
  flights: readonly (readonly PlannedPour[])[] = [pours],
): readonly ThemeCheck[] {
  if (flights.length < 2 || theme.kind === 'free') return faultsIn(theme, pours);
  if (theme.kind === 'versus') return [...faultsIn(theme, pours), ...checkMeetings(theme, pours, flights)];
  if (theme.each === undefined) return faultsIn(theme, pours);
  return flights.flatMap((flight, index) =>
    faultsIn(theme, flight).map((fault) => ({ ...fault, flight: index })),
  );
}
