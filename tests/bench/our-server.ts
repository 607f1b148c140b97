import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { epochMs } from '../../core/units.ts';
import { type RunningServer, startServer } from '../../server/app.ts';
import { type Clock, steadyClock } from '../../server/clock.ts';
import { openPostgresStore } from '../../server/store/postgres/postgres.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { clockAhead } from '../support/clock-ahead.ts';
import { answerParent, memory, worked } from './child.ts';
import { appendRate, commitRates } from './commit-rates.ts';
import { fillStore, firstUses } from './stored-sessions.ts';

/** The whole server over a store in a file, as it runs in an evening; only the clock may run faster. */
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const file = join(folder, 'store.sqlite');
const houseKey = 'house-key-of-the-bench-0123456789';
const delay = monitorEventLoopDelay({ resolution: 1 });
let lateness: number[] = [];
let server: RunningServer | undefined;

/** A clock at `speed` times the real one that notes how late in real ms each alarm rang. */
function fastClock(speed: number): Clock {
  const began = Date.now();
  const now = () => epochMs(began + (Date.now() - began) * speed);
  const clock: Clock = {
    now,
    notBefore: (moment) => clockAhead(clock, moment),
    at(when, run) {
      // One that is set after its moment, by what was on its way to disk until then, cannot ring earlier than now.
      const due = Date.now() + Math.max(0, (when - now()) / speed);
      let timer: NodeJS.Timeout | undefined;
      const wait = () => {
        timer = setTimeout(
          () => {
            // Never earlier: what is asked too soon is asked in vain.
            if (now() < when) return wait();
            lateness.push(Date.now() - due);
            run();
          },
          Math.max(0, Math.ceil((when - now()) / speed)),
        );
      };
      wait();
      return () => clearTimeout(timer);
    },
  };
  return clock;
}

/** As one of several on a PostgreSQL, where one is named. */
async function storeAt(database: string | undefined) {
  if (database === undefined) return { store: openSqliteStore(file, { inThread: true }) };
  const store = await openPostgresStore({ url: database, notesKey: Buffer.alloc(32, 7), houseKey });
  const cluster = { others: store.cluster, address: (port: number) => `127.0.0.1:${port}` };
  return { store, cluster };
}

const start = async (clock: Clock, port: number, database?: string) =>
  startServer({
    ...(await storeAt(database)),
    host: '127.0.0.1',
    houseKey,
    seatLimit: 100_000,
    clock,
    port,
    // The parent starts its children where package.json stands.
    pages: join(process.cwd(), 'dist'),
  });

function watched() {
  return { p99: delay.percentile(99) / 1e6, lateness, cpuMs: worked() };
}

answerParent(
  {
    async listen({ speed = 1, database }: { speed?: number; database?: string }) {
      server = await start(speed === 1 ? steadyClock() : fastClock(speed), 0, database);
      return { port: server.port, houseKey };
    },
    /** Stops and starts again at the same address; the ms from opening the store until it listens. */
    async restart() {
      await server?.stop();
      const began = performance.now();
      server = await start(steadyClock(), server?.port ?? 0);
      return { ms: performance.now() - began };
    },
    fill: (wanted: { sessions: number; events: number }) => fillStore(openSqliteStore(file), wanted),
    firstUses: () => firstUses(openSqliteStore(file)),
    commitRates: ({ rounds, together }: { rounds: number; together: number }) =>
      commitRates(openSqliteStore(join(folder, 'commits.sqlite'), { inThread: true }), rounds, together),
    async appends({ evenings, seconds, database }: { evenings: number; seconds: number; database?: string }) {
      return appendRate((await storeAt(database)).store, evenings, seconds);
    },
    watchLoop() {
      lateness = [];
      delay.enable();
      delay.reset();
      return watched();
    },
    loop() {
      delay.disable();
      return watched();
    },
    memory,
    worked,
  },
  () => rmSync(folder, { recursive: true, force: true }),
);
