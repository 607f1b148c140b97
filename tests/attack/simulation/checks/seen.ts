import type { SessionEvent } from '../../../../core/session/event.ts';
import { type Session, unopened } from '../../../../core/session/state.ts';
import { stageView } from '../../../../core/session/views/stage.ts';
import { inOrder } from '../in-order.ts';
import { standings } from './log.ts';

/** A command as the device that sent it knows it: a title that nobody else gives. Times in ms of one clock. */
export interface AskedTitle {
  readonly title: string;
  readonly asked: number;
  /** Absent: nobody knows what became of it. */
  readonly answered?: { readonly at: number; readonly version: number };
}

/** What devices saw of one evening, in the order in which they saw it. */
export interface History {
  readonly asked: readonly AskedTitle[];
  /** The stage as each device was shown it. */
  readonly seen: readonly { readonly device: string; readonly view: SeenView }[];
}
/** A stage view as it came over the wire. */
export type SeenView = { readonly version: number };

/**
 * Holds what devices saw against the log, and says what cannot be: each answered command stands in the log exactly once, at
 * the version of its answer; what was answered before another was asked has a lower version; each view is what `evolve` makes
 * of the log up to its version; no device goes back. What was never answered may stand there once or not at all. (The order
 * in real time is that of linearizability: Herlihy and Wing, 1990, doi 10.1145/78969.78972.)
 */
export function faultsIn({ asked, seen }: History, log: readonly SessionEvent[]): string[] {
  const faults: string[] = [];
  for (const { title, answered } of asked) {
    const at = log.flatMap((event, index) =>
      event.type === 'TitleMended' && event.title === title ? [index + 1] : [],
    );
    if (at.length > 1) faults.push(`"${title}" stands in the log ${at.length} times.`);
    if (answered === undefined) continue;
    if (at.length === 0) faults.push(`"${title}" was answered and is lost.`);
    else if (at[0] !== answered.version)
      faults.push(`"${title}" was answered as ${answered.version} and stands at ${at[0]}.`);
  }
  faults.push(...outOfOrder(asked));
  const known = new Map<number, string>();
  const after = standings(log);
  const expected = (version: number): string => {
    const made = known.get(version) ?? stageOf(after[version], version);
    known.set(version, made);
    return made;
  };
  const newest = new Map<string, number>();
  for (const { device, view } of seen) {
    const { version } = view;
    const before = newest.get(device) ?? 0;
    if (version < before) faults.push(`${device} went back from version ${before} to ${version}.`);
    newest.set(device, Math.max(before, version));
    if (version > log.length) faults.push(`${device} saw version ${version} of a log of ${log.length}.`);
    else if (inOrder(view) !== expected(version))
      faults.push(`${device} saw something else at version ${version} than the log says.`);
  }
  return faults;
}

function outOfOrder(asked: readonly AskedTitle[]): string[] {
  const answered = asked.flatMap((each) =>
    each.answered === undefined ? [] : [{ ...each, answered: each.answered }],
  );
  const byAnswer = answered.toSorted((one, other) => one.answered.at - other.answered.at);
  const faults: string[] = [];
  let newest: (typeof answered)[number] | undefined;
  let next = 0;
  for (const each of answered.toSorted((one, other) => one.asked - other.asked)) {
    for (
      let done = byAnswer[next];
      done !== undefined && done.answered.at < each.asked;
      done = byAnswer[next]
    ) {
      if (newest === undefined || done.answered.version > newest.answered.version) newest = done;
      next += 1;
    }
    if (newest !== undefined && newest.answered.version >= each.answered.version)
      faults.push(
        `"${newest.title}" was answered before "${each.title}" was asked, and has no lower version.`,
      );
  }
  return faults;
}

/** What everybody is shown of it, as text. */
export const stageOf = (session: Session = unopened, version: number): string =>
  session.status === 'unopened'
    ? 'nothing'
    : inOrder(JSON.parse(JSON.stringify(stageView(session, version))));
