import { houseId, tastingId } from '../../core/ids.ts';
import { type Plan, planSchema } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { SetAside } from './set-aside.ts';
import type { TastingRow, UnreadableTasting } from './store.ts';
import { planOfToday } from './upcasts.ts';

/** As it stands in the table. */
export interface Row {
  readonly tasting: string;
  readonly code: string;
  readonly plan: string;
  readonly revision: number;
  readonly created_at: number;
  readonly house: string | null;
}

/** Whoever comes to an evening asks for its plan, and to read one takes as long as all else that is done for them. */
const lastRead = new Map<string, Plan>();
const mostRead = 8;

/** Throws what is wrong with it. */
function planIn(text: string): Plan {
  const known = lastRead.get(text);
  if (known !== undefined) return known;
  const plan = planSchema.parse(planOfToday(JSON.parse(text)));
  const [oldest] = lastRead.keys();
  if (oldest !== undefined && lastRead.size === mostRead) lastRead.delete(oldest);
  lastRead.set(text, plan);
  return plan;
}

export function fromRow(row: Row): TastingRow | SetAside {
  const tasting = tastingId(row.tasting);
  try {
    return {
      tasting,
      code: row.code,
      plan: planIn(row.plan),
      revision: row.revision,
      createdAt: epochMs(row.created_at),
      ...houseIn(row),
    };
  } catch (error) {
    return new SetAside(tasting, { kind: 'plan-unreadable', event: null }, { cause: error });
  }
}

/** Nothing for the first house. */
export const houseIn = (row: { readonly house: string | null } | undefined) =>
  row === undefined || row.house === null ? {} : { house: houseId(row.house) };

export function orThrow(row: Row | undefined): TastingRow | undefined {
  const read = row && fromRow(row);
  if (read instanceof SetAside) throw read;
  return read;
}

export const unreadable = (row: Row, { tasting, trouble }: SetAside): UnreadableTasting => ({
  tasting,
  code: row.code,
  title: titleIn(row.plan),
  createdAt: epochMs(row.created_at),
  trouble,
});

/** The title, where it still stands in what is left of the plan. */
export function titleIn(plan: string): string {
  const quoted = /"title":("(?:[^"\\]|\\.){0,200}")/.exec(plan)?.[1];
  try {
    return String(JSON.parse(quoted ?? '""'));
  } catch {
    return '';
  }
}
