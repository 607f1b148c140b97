import type { CueView, StageUnderWay, StageView } from './views.ts';

/** What is new of the stage, by field, and by field of its cue: what is absent is as it was told before. */
export type StageChange = Partial<Omit<StageUnderWay, 'version' | 'cue'>> & {
  readonly version: number;
  readonly cue?: Partial<CueView>;
};

/** Undefined where only the whole view says it: before the first, and when the evening ends. */
export function stageChangeBetween(from: StageView | undefined, to: StageView): StageChange | undefined {
  if (from?.status !== 'under-way' || to.status !== 'under-way') return undefined;
  const { cue: before, ...was } = from;
  const { cue: now, ...is } = to;
  const [change, cue] = [newIn(was, is), newIn(before, now)];
  if (change === undefined || cue === undefined) return undefined;
  return { ...change, version: to.version, ...(Object.keys(cue).length > 0 && { cue }) };
}

/** Of an evening under way: of no other there are changes. */
export const withStageChange = (stage: StageView, change: StageChange): StageView => {
  const was = stage as StageUnderWay;
  return { ...was, ...change, cue: { ...was.cue, ...change.cue } };
};

/** The fields that are another; undefined where one has gone, which a message cannot say. */
function newIn<Fields extends object>(from: Fields, to: Fields): Partial<Fields> | undefined {
  const textOf = (fields: Fields, name: string): string | undefined =>
    JSON.stringify(fields[name as keyof Fields]);
  const names = [...new Set([...Object.keys(from), ...Object.keys(to)])];
  const changed = names.filter((name) => textOf(from, name) !== textOf(to, name));
  if (changed.some((name) => textOf(to, name) === undefined)) return undefined;
  return Object.fromEntries(changed.map((name) => [name, to[name as keyof Fields]])) as Partial<Fields>;
}
