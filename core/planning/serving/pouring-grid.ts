import { type ServiceTemperature, serviceTemperatureOf } from '../../drinks/service-temperature.ts';
import type { PourId } from '../../ids.ts';
import { glassNumbers } from '../../running-order/glass-numbers.ts';
import { servedInOwnOrders } from '../../session/serving.ts';
import type { Seat } from '../../session/state.ts';
import type { Plan } from '../../tasting.ts';
import { type Levels, levelOf, type PouringTurn, pouringStepsOf, stepsDone } from './pouring.ts';
import { type GlassSet, glassesAt } from './pouring-order.ts';

/** Who sits where, in the order in which seats were taken. */
type Seats = readonly Pick<Seat, 'name' | 'leftHanded' | 'remote' | 'presence' | 'onlyWater'>[];

/** A bottle's way along the table: one glass at each place, or the three of an odd-one-out. */
export interface GridColumn {
  readonly id: PourId;
  readonly kind: 'pour' | 'trial';
  readonly flight: number;
  readonly code: string | null;
  readonly name: string;
  /** At which it is served, where its facts tell; null for an odd-one-out, whose two drinks have their own columns. */
  readonly serve: ServiceTemperature | null;
  readonly steps: readonly PouringTurn[];
}

export interface GridRow {
  readonly place: number;
  /** Of vials for a guest at home: which kit, from 1. */
  readonly kit?: number;
  /** Null until somebody has sat down there. */
  readonly name: string | null;
  readonly leftHanded: boolean;
  /** [C4] Nothing more is poured here. */
  readonly onlyWater: boolean;
  /** By column: which glass it is for this guest, or the codes to pour of an odd-one-out. */
  readonly glasses: ReadonlyMap<PourId, { readonly position: number } | { readonly codes: string }>;
}

/** Columns in pouring order: flight by flight, each odd-one-out after its flight. */
export function columnsOf(plan: Plan): GridColumn[] {
  return glassesAt({ ...plan, ownOrders: false }, 1).flatMap((set): GridColumn[] => {
    if (set.kind === 'trial') {
      const trial = plan.trials.find(({ id }) => id === set.trial);
      const named = (id: PourId | undefined) => plan.pours.find((pour) => pour.id === id)?.name ?? '';
      const name =
        trial === undefined
          ? ''
          : `${codesOf(trial.codes.a)} ${named(trial.a)}, ${codesOf(trial.codes.b)} ${named(trial.b)}`;
      const drink = plan.pours.find((pour) => pour.id === trial?.a)?.drink ?? plan.drink;
      return [
        {
          id: set.trial,
          kind: 'trial',
          flight: set.flight,
          code: null,
          name,
          serve: null,
          steps: pouringStepsOf(drink, plan),
        },
      ];
    }
    return set.pours
      .flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? [])
      .map((pour) => ({
        id: pour.id,
        kind: 'pour',
        flight: set.flight,
        code: plan.blind ? (plan.codes[pour.id] ?? null) : null,
        name: pour.name,
        serve: serviceTemperatureOf(pour),
        steps: pouringStepsOf(pour.drink, plan),
      }));
  });
}

const codesOf = (codes: readonly string[]): string => codes.join('/');

/** Places as the plan lays them, and those beyond it that somebody has taken; without the numbers of guests at home. */
export function rowsOf(plan: Plan, seats: Seats): GridRow[] {
  const taken = new Map(
    seats.flatMap((seat, index) =>
      seat.remote || seat.presence === 'removed' ? [] : [[index + 1, seat] as const],
    ),
  );
  const atHome = new Set(seats.flatMap((seat, index) => (seat.remote ? [index + 1] : [])));
  const rows: GridRow[] = [];
  const last = Math.max(0, ...taken.keys());
  for (let place = 1; rows.length < plan.guests || place <= last; place += 1) {
    if (atHome.has(place)) continue;
    const seat = taken.get(place);
    rows.push({
      place,
      name: seat?.name ?? null,
      leftHanded: seat?.leftHanded ?? false,
      onlyWater: seat?.onlyWater ?? false,
      glasses: positionsAt(plan, glassesAt(plan, place)),
    });
  }
  return rows;
}

function positionsAt(plan: Plan, sets: readonly GlassSet[]): GridRow['glasses'] {
  const glasses = new Map<PourId, { position: number } | { codes: string }>();
  const numbers = servedInOwnOrders(plan) ? undefined : glassNumbers(plan);
  let position = 0;
  for (const set of sets) {
    if (set.kind === 'trial')
      glasses.set(set.trial, { codes: set.glasses.map(({ code }) => code).join(' ') });
    else {
      for (const pour of set.pours) {
        position += 1;
        glasses.set(pour, { position: numbers?.get(pour) ?? position });
      }
    }
  }
  return glasses;
}

/** Places where something is poured [C4]. */
export const pouredAt = (rows: readonly GridRow[]): GridRow[] => rows.filter(({ onlyWater }) => !onlyWater);

/** How many of the glasses to pour have all of their steps. */
export function readyIn(levels: Levels, rows: readonly GridRow[], columns: readonly GridColumn[]): number {
  return columns.reduce(
    (sum, { id, steps }) =>
      sum +
      pouredAt(rows).filter(({ place }) => stepsDone(steps, levelOf(levels, id, place)) === steps.length)
        .length,
    0,
  );
}
