import type { PourId } from '../../ids.ts';
import { glassNumbers } from '../../running-order/glass-numbers.ts';
import { limits, type Plan } from '../../tasting.ts';
import type { PouringTurn } from './pouring.ts';
import { columnsOf, type GridColumn, type GridRow } from './pouring-grid.ts';

/**
 * Vials are filled and sent before anybody has a seat, so that a kit belongs to no place at the table: in the pour run kits
 * are numbered from here on, beyond the most places that a plan has.
 */
export const firstKitPlace = limits.guests + 1;

/** A kit for each guest at home; the vials by the numbers or codes on their labels. */
export function kitRowsOf(plan: Plan): GridRow[] {
  const numbers = glassNumbers(plan);
  const glasses = new Map<PourId, { position: number } | { codes: string }>();
  for (const [index, { id }] of plan.pours.entries())
    glasses.set(id, { position: numbers.get(id) ?? index + 1 });
  for (const { id, codes } of plan.trials) glasses.set(id, { codes: [...codes.a, ...codes.b].join(' ') });
  return Array.from({ length: plan.remoteGuests }, (_, index) => ({
    place: firstKitPlace + index,
    kit: index + 1,
    name: null,
    leftHanded: false,
    onlyWater: false,
    glasses,
  }));
}

/** A vial is filled and closed, and nothing more: drops of water come into the glass. */
export const stepsOfVial = (steps: readonly PouringTurn[]): readonly PouringTurn[] => steps.slice(0, 1);

export const vialColumnsOf = (plan: Plan): GridColumn[] =>
  columnsOf(plan).map((column) => ({ ...column, steps: stepsOfVial(column.steps) }));
