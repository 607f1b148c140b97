/** Small statistics of measured runs. */

/** Quantile by the nearest rank; NaN for no values, so that a figure that was not measured cannot pass for one. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** One figure beside its goal. A goal of undefined is shown and not judged. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** At most this, or with `atLeast` at least. */
  readonly goal?: number;
  readonly atLeast?: boolean;
}

export function met({ value, goal, atLeast = false }: Figure): boolean | undefined {
  if (goal === undefined) return undefined;
  return atLeast ? value >= goal : value <= goal;
}

export function shown({ value }: Figure): string {
  if (!Number.isFinite(value)) return 'not measured';
  return value >= 100 ? Math.round(value).toLocaleString('en') : String(Number(value.toPrecision(3)));
}

export const wanted = ({ goal, atLeast }: Figure): string =>
  goal === undefined ? '' : `${atLeast ? 'at least' : 'at most'} ${goal}`;

export function line(figure: Figure): string {
  const verdict = { true: 'met', false: 'MISSED', undefined: '' }[String(met(figure)) as 'true'];
  return `  ${figure.name.padEnd(70)} ${shown(figure).padStart(9)} ${figure.unit.padEnd(6)} ${wanted(figure).padEnd(14)} ${verdict}`;
}

/** Of the load average: what is taken at more is marked, for milliseconds hardly hold there. */
export const busyAbove = 2;

/** A figure with its verdict; `met` is null without a goal, and `busy` says that the load may have spoilt it. */
export interface Judged {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly goal: number | null;
  readonly met: boolean | null;
  readonly load: number;
  readonly busy: boolean;
}

export function judge(figure: Figure, load: number): Judged {
  const { name, value, unit, goal = null } = figure;
  return { name, value, unit, goal, met: met(figure) ?? null, load, busy: load > busyAbove };
}
