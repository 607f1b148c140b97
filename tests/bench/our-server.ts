import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { epochMs } from '../../core/units.ts';
import { type RunningServer, startServer } from '../../server/app.ts';
import { type Clock, wallClock } from '../../server/clock.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { answerParent, usage } from './child.ts';

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
  return {
    now,
    at: (when, run) => {
      const due = Date.now() + (when - now()) / speed;
      const timer = setTimeout(
        () => {
          lateness.push(Date.now() - due);
          run();
        },
        Math.max(0, due - Date.now()),
      );
      return () => clearTimeout(timer);
    },
  };
}

answerParent(
  {
    listen: async ({ speed = 1 }: { speed?: number }) => {
      server = await startServer({
        store: openSqliteStore(file),
        host: '127.0.0.1',
        houseKey,
        seatLimit: 100_000,
        clock: speed === 1 ? wallClock : fastClock(speed),
      });
      return { port: server.port, houseKey };
    },
    restart: async () => {
      await server?.stop();
      server = await startServer({
        store: openSqliteStore(file),
        host: '127.0.0.1',
        houseKey,
        seatLimit: 100_000,
        port: server?.port ?? 0,
      });
      return {};
    },
    watchLoop: () => {
      lateness = [];
      delay.enable();
      delay.reset();
    },
    loop: () => {
      delay.disable();
      return { p99: delay.percentile(99) / 1e6, lateness };
    },
    usage,
  },
  () => rmSync(folder, { recursive: true, force: true }),
);
