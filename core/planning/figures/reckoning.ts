import type { SourceId } from './sources.ts';

/** The unit of a figure, for the words around it. '1' is a plain ratio. */
export type FigureUnit =
  | 'mL'
  | 'g'
  | '% vol'
  | 'kg/m3'
  | '1'
  | 'drinks'
  | 'drops'
  | 'guests'
  | 'seats'
  | 'pours'
  | 'bottles'
  | 'vials'
  | 'pieces'
  | 'minor units'
  | 'years';

export interface Figure {
  readonly value: number;
  readonly unit: FigureUnit;
}

/** What each kind of step starts from. A message file that words every code is complete by this list. */
export interface StepInputs {
  'ethanol-volume': 'pour' | 'strength';
  'ethanol-mass': 'ethanol' | 'density';
  'ethanol-sum': 'pours';
  'drinks-by-mass': 'ethanol' | 'perDrink';
  'drinks-by-volume': 'ethanol' | 'perDrink';
  'drop-water': 'drops' | 'perDrop';
  'source-mass': 'volume' | 'strength' | 'density';
  'source-mass-fraction': 'strength';
  'target-mass-fraction': 'strength';
  'water-mass': 'sourceMass' | 'sourceFraction' | 'targetFraction';
  'water-volume': 'mass' | 'density';
  'mixed-mass-fraction': 'ethanol' | 'mass';
  'mixed-strength': 'fraction' | 'density';
  'final-volume': 'mass' | 'density';
  'final-volume-by-strength': 'volume' | 'strength' | 'target';
  'servings-in-bottle': 'bottle' | 'pour';
  'full-pours': 'servings';
  'left-in-bottle': 'bottle' | 'pours' | 'pour';
  'pours-for-people': 'guests' | 'perGuest' | 'hostPours';
  'reserve-pours': 'pours' | 'reserve';
  'pours-needed': 'pours' | 'reserve';
  'bottles-to-buy': 'poursNeeded' | 'fullPours';
  'volume-poured': 'poursNeeded' | 'pour';
  'left-over': 'bottles' | 'bottle' | 'poured';
  'vial-size': 'pour' | 'headspace';
  'vials-needed': 'guests' | 'pours';
  'items-per-seat': 'seats' | 'perSeat';
  'items-shared': 'seats' | 'seatsEach';
  'items-spare': 'items' | 'itemsEach';
  'items-with-spare': 'items' | 'spare';
  'water-for-table': 'seats' | 'perSeat' | 'pours' | 'perPour';
  'cost-line': 'price' | 'count';
  'cost-sum': 'lines';
  'cost-per-seat': 'total' | 'seats';
  'share-of-limit': 'limit' | 'ethanol';
  'smaller-pours': 'pours' | 'share';
  'fewer-pours': 'limit' | 'smallest';
}

export type StepCode = keyof StepInputs;

/** One line of "how this was reckoned": codes and figures; the words live with the screens. */
export interface ReckoningStep<Code extends StepCode = StepCode> {
  readonly code: Code;
  readonly inputs: Readonly<Record<StepInputs[Code], Figure>>;
  readonly result: Figure;
  readonly source: SourceId;
}

/** Steps in the order of the sum; the last result of a kind is the figure shown. */
export type Reckoning = readonly AnyStep[];
export type AnyStep = { [Code in StepCode]: ReckoningStep<Code> }[StepCode];

export const figure = (value: number, unit: FigureUnit): Figure => ({ value, unit });

export function step<Code extends StepCode>(
  code: Code,
  inputs: Record<StepInputs[Code], Figure>,
  result: Figure,
  source: SourceId,
): ReckoningStep<Code> {
  return { code, inputs, result, source };
}
