import { type Memory, startChild } from './child.ts';
import { syncDisk } from './disk.ts';
import { type Figure, quantile } from './figures.ts';

export interface SessionsRun {
  readonly sessions: number;
  readonly guests: number;
  /** Whether another process wrote to the disk all the time. */
  readonly busyDisk?: boolean;
  /** Ms by which an alarm of the server's clock rang late, p99. */
  readonly lateP99: number;
  readonly loopP99: number;
  /** Ms that the disk took for one page meanwhile, p99. */
  readonly diskP99: number;
  /** Share of one processor. */
  readonly busy: number;
  /** Cues that took effect, over all tables. */
  readonly turned: number;
  readonly bytesPerGuest: number;
}

interface LoopWatch {
  readonly cpuMs: number;
  /** Of the delay of the event loop, ms. */
  readonly p99: number;
  readonly lateness: readonly number[];
}

const pause = (seconds: number) => new Promise((done) => setTimeout(done, seconds * 1000));

export interface SessionsToMeasure {
  readonly sessions: number;
  readonly guests: number;
  readonly seconds: number;
  readonly busyDisk?: boolean;
  /** A PostgreSQL to lie in; absent: a file. */
  readonly database?: string;
}

/** How many times as fast as the real one the clock of all sessions runs. */
export const speed = 20;

/** Many sessions in one process, all conducted by their clock. */
export async function measureSessions({
  sessions,
  guests,
  seconds,
  busyDisk = false,
  database,
}: SessionsToMeasure): Promise<SessionsRun> {
  const [ours, tables] = [startChild('our-server'), startChild('tables')];
  const other = busyDisk ? startChild('busy-disk') : undefined;
  try {
    const at = await ours.ask<{ port: number; houseKey: string }>('listen', { speed, database });
    const empty = await ours.ask<Memory>('memory');
    await tables.ask('sit', { ...at, count: sessions, guests });
    const full = await ours.ask<Memory>('memory');
    await tables.ask('begin', { within: sessions * 6 });
    // What was due while garbage was collected is not late for any other reason.
    await other?.ask('begin');
    await pause(1);
    const before = await ours.ask<LoopWatch>('watchLoop');
    const disk: number[] = [];
    const watching = setInterval(() => disk.push(syncDisk()), 100);
    await pause(seconds);
    clearInterval(watching);
    const after = await ours.ask<LoopWatch>('loop');
    return {
      sessions,
      guests,
      busyDisk,
      lateP99: quantile(after.lateness, 0.99),
      loopP99: after.p99,
      diskP99: quantile(disk, 0.99),
      busy: (after.cpuMs - before.cpuMs) / (seconds * 1000),
      turned: await tables.ask<number>('turned'),
      bytesPerGuest: (full.rss - empty.rss) / (sessions * guests),
    };
  } finally {
    await Promise.all([ours.stop(), tables.stop(), other?.stop()]);
  }
}

export function sessionFigures(run: SessionsRun): Figure[] {
  const judged = run.sessions >= 500;
  const disk = run.busyDisk === true ? ', another process writing to the disk all the time' : '';
  const name = `${run.sessions} sessions of ${run.guests} guests at ${speed} times real speed${disk}`;
  return [
    {
      name: `alarm late, p99, ${name}`,
      value: run.lateP99,
      unit: 'ms',
      ...(judged ? { goal: 20 } : {}),
    },
    { name: `event loop, p99, ${name}`, value: run.loopP99, unit: 'ms', ...(judged ? { goal: 20 } : {}) },
    { name: `one page to disk meanwhile, p99, ${name}`, value: run.diskP99, unit: 'ms' },
    { name: `share of one processor, ${name}`, value: run.busy, unit: 'of 1' },
    { name: `cues that took effect meanwhile, ${name}`, value: run.turned, unit: 'cues' },
  ];
}
