import { type PourId, pourId } from '../../ids.ts';
import type { Plan } from '../../tasting.ts';

/**
 * The same plan with ids drawn anew for its pours and odd-one-outs, wherever it names them. Ids reach guests' phones, so that
 * those of an earlier evening, or of a file that somebody has written by hand, could tell a blind pour by its name [Q4].
 *
 * @param draw a random id that says nothing; asked again while what it gives is taken
 */
export function withDrawnIds(plan: Plan, draw: () => string): Plan {
  const drawn = new Map<string, PourId>();
  // A number may belong to a pour that is gone: it still counts.
  for (const id of new Set([...[...plan.pours, ...plan.trials].map((each) => each.id), ...plan.numbers])) {
    let fresh = draw();
    while ([...drawn.values()].includes(pourId(fresh))) fresh = draw();
    drawn.set(id, pourId(fresh));
  }
  const of = (id: PourId): PourId => drawn.get(id) ?? id;
  const keys = <Value>(record: Readonly<Record<string, Value>>, rename: (key: string) => string) =>
    Object.fromEntries(Object.entries(record).map(([key, value]) => [rename(key), value]));
  return {
    ...plan,
    pours: plan.pours.map((pour) => ({ ...pour, id: of(pour.id) })),
    trials: plan.trials.map((trial) => ({ ...trial, id: of(trial.id), a: of(trial.a), b: of(trial.b) })),
    numbers: plan.numbers.map(of),
    servingOrders: plan.servingOrders.map(({ rows }) => ({ rows: rows.map((row) => row.map(of)) })),
    codes: keys(plan.codes, (key) => of(pourId(key))),
    cueEdits: keys(plan.cueEdits, (cue) => {
      const [pour = '', ...rest] = cue.split('/');
      return [of(pourId(pour)), ...rest].join('/');
    }),
  };
}
