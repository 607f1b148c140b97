import type { Plan } from '../../../core/tasting.ts';

export type Theme = Plan['theme'];
export type ThemeKind = Theme['kind'];

const shared = ['producer', 'region', 'country', 'style'] as const;
export type SharedFact = (typeof shared)[number];
export type HeldFact = SharedFact | 'vintage';

/** What a theme of each kind may turn on, the most usual first. */
export const turnsOf = {
  free: [],
  horizontal: shared,
  vertical: ['vintage', 'age'],
  versus: ['region', 'strength', 'price', 'country', 'style', 'producer'],
} as const satisfies Record<ThemeKind, readonly string[]>;

export type Turn = (typeof turnsOf)[ThemeKind][number];

/** A theme of this kind as it begins; what the present one says is kept where it means the same. */
export function themeOfKind(kind: ThemeKind, now: Theme): Theme {
  if (kind === now.kind) return now;
  switch (kind) {
    case 'free':
      return { kind };
    case 'horizontal':
      return { kind, by: 'producer' };
    case 'vertical':
      return { kind, by: 'vintage' };
    case 'versus':
      return { kind, by: 'region' };
    default:
      return kind satisfies never;
  }
}

/** The theme turning on something else; a turn that its kind does not have leaves it as it is. */
export function turned(theme: Theme, by: Turn): Theme {
  switch (theme.kind) {
    case 'free':
      return theme;
    case 'horizontal': {
      const turn = turnsOf.horizontal.find((each) => each === by);
      if (turn === undefined) return theme;
      return holding({ ...theme, by: turn }, theme.held);
    }
    case 'vertical': {
      const turn = turnsOf.vertical.find((each) => each === by);
      return turn === undefined ? theme : { ...theme, by: turn };
    }
    case 'versus': {
      const turn = turnsOf.versus.find((each) => each === by);
      return turn === undefined ? theme : { ...theme, by: turn };
    }
    default:
      return theme satisfies never;
  }
}

/** A horizontal in which this fact is the same in all pours, or none in particular: what differs from pour to pour is never. */
export function holding(
  { held: _, ...theme }: Extract<Theme, { kind: 'horizontal' }>,
  held: HeldFact | undefined,
): Theme {
  return held === undefined || held === theme.by ? theme : { ...theme, held };
}

/** What a horizontal may hold: everything but what it goes across. */
export const heldOptions = (by: SharedFact): readonly HeldFact[] => [
  ...shared.filter((fact) => fact !== by),
  'vintage',
];

/** A theme that holds in each flight by itself, or in the whole evening; the sides of a comparison meet as they say. */
export function inEachFlight(theme: Theme, each: boolean): Theme {
  if (theme.kind !== 'horizontal' && theme.kind !== 'vertical') return theme;
  if (each) return { ...theme, each: 'flight' };
  const { each: _, ...whole } = theme;
  return whole;
}
