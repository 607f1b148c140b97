import { startChild, type Usage } from './child.ts';
import { type Figure, quantile } from './figures.ts';

export interface SessionsRun {
  readonly sessions: number;
  readonly guests: number;
  /** Ms by which an alarm of the server's clock rang late, p99. */
  readonly lateP99: number;
  readonly loopP99: number;
  /** Share of one processor. */
  readonly busy: number;
  /** Cues that took effect, over all tables. */
  readonly turned: number;
  readonly bytesPerGuest: number;
}

/** Many sessions in one process, all conducted by a clock that runs `speed` times as fast. */
export async function measureSessions(
  sessions: number,
  guests: number,
  seconds: number,
  speed = 20,
): Promise<SessionsRun> {
  const [ours, tables] = [startChild('our-server'), startChild('tables')];
  try {
    const at = await ours.ask<{ port: number; houseKey: string }>('listen', { speed });
    const empty = await ours.ask<Usage>('usage');
    await tables.ask('sit', { ...at, count: sessions, guests });
    await tables.ask('begin', { within: sessions * 6 });
    const before = await ours.ask<Usage>('usage');
    await ours.ask('watchLoop');
    await new Promise((done) => setTimeout(done, seconds * 1000));
    const loop = await ours.ask<{ p99: number; lateness: number[] }>('loop');
    const after = await ours.ask<Usage>('usage');
    return {
      sessions,
      guests,
      lateP99: quantile(loop.lateness, 0.99),
      loopP99: loop.p99,
      busy: (after.cpuMs - before.cpuMs) / (seconds * 1000),
      turned: await tables.ask<number>('turned'),
      bytesPerGuest: (before.rss - empty.rss) / (sessions * guests),
    };
  } finally {
    await Promise.all([ours.stop(), tables.stop()]);
  }
}

export function sessionFigures(run: SessionsRun): Figure[] {
  const judged = run.sessions >= 500;
  const name = `${run.sessions} sessions of ${run.guests} guests at 20 times real speed`;
  return [
    {
      name: `alarm late, p99, ${name}`,
      value: run.lateP99,
      unit: 'ms',
      ...(judged ? { goal: 50 } : {}),
    },
    { name: 'event loop, p99', value: run.loopP99, unit: 'ms', ...(judged ? { goal: 20 } : {}) },
    { name: 'share of one processor', value: run.busy, unit: 'of 1' },
    { name: 'cues that took effect meanwhile', value: run.turned, unit: 'cues' },
  ];
}
