import { join } from 'node:path';
import { nanoid } from 'nanoid';
import type { SeatId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import { createTasting, takeSeat } from '../../rehearsal/ask-server.ts';
import { planOf } from '../../support/plans.ts';
import {
  bundleServer,
  forgetFolder,
  type SpawnedServer,
  spawnServer,
  temporaryFolder,
} from '../../support/server.ts';
import { until } from '../../support/until.ts';
import { Chances } from '../chances.ts';
import { compare, type Found, type Ledger } from './ledger.ts';
import { CrashGuest, CrashHost, type Door } from './people.ts';

export interface CrashOptions {
  readonly kills: number;
  readonly seed: number;
  readonly guests?: number;
  readonly onKill?: (kills: number) => void;
}

export interface Crashed {
  readonly kills: number;
  readonly steps: number;
  readonly notes: number;
  readonly seconds: number;
  /** Empty when nothing was lost or doubled. */
  readonly faults: readonly string[];
}

const plan = planOf(3, { level: 'newcomers' });

/**
 * Guests write and the host walks on over real sockets, while the server is killed at random moments and started again
 * on the same file; then everything that was acknowledged is compared with the file. Ends only the servers it started.
 */
export async function crash({ kills, seed, guests = 4, onKill }: CrashOptions): Promise<Crashed> {
  const begun = performance.now();
  const chances = new Chances(seed);
  const folder = await temporaryFolder();
  const ledger: Ledger = { steps: [], pages: [] };
  const bundle = await bundleServer('attacked');
  let server = await spawnServer({ folder, bundle });
  const { port } = server;
  const closing: (() => void)[] = [];
  try {
    const made = await createTasting(server.origin, server.houseKey, plan);
    const door: Door = { origin: server.origin, tasting: made.tasting };
    const host = new CrashHost(door, made.hostKey, ledger);
    closing.push(() => host.connection.close());
    await host.ask({ type: 'OpenDoors' });
    const cues = compile(plan);
    const pours = plan.pours.map((pour) => pour.id);
    for (const pour of pours) {
      const first = cues.find((cue) => cue.kind === 'step' && cue.pour === pour);
      if (first !== undefined) await host.goTo(first);
    }
    const writers: CrashGuest[] = [];
    const seats: SeatId[] = [];
    for (let guest = 0; guest < guests; guest += 1) {
      const who = {
        code: made.code,
        key: nanoid(32),
        name: `Guest ${guest + 1}`,
        leftHanded: false,
        remote: false,
      };
      const { seat } = await takeSeat(server.origin, who);
      const writer = new CrashGuest(door, who.key, seat, ledger);
      closing.push(() => writer.connection.close());
      writers.push(writer);
      seats.push(seat);
    }

    let goesOn = true;
    const devices = [host, ...writers].map((each) => each.connection);
    const busy = Promise.all([
      host.walk(cues, chances, () => goesOn),
      ...writers.map((writer) => writer.write(pours, chances, () => goesOn)),
    ]);
    let failed: unknown;
    busy.catch((error: unknown) => {
      failed = error;
    });
    for (let kill = 1; kill <= kills && failed === undefined; kill += 1) {
      const before = ledger.steps.length;
      await until(
        'everybody is back and the host goes on',
        () => {
          const live = devices.every((each) => each.link.peek().status === 'live');
          return failed !== undefined || (live && ledger.steps.length > before);
        },
        30_000,
      );
      await new Promise((resolve) => setTimeout(resolve, chances.between(0, 200)));
      await server.kill();
      onKill?.(kill);
      server = await spawnServer({ folder, bundle, port });
    }
    goesOn = false;
    await busy;
    const dones = { steps: ledger.steps.length, notes: notesIn(ledger) };
    await stopAll(server, closing);
    const faults = compare(ledger, stored(folder, made.tasting, seats));
    return { kills, ...dones, faults, seconds: Math.round((performance.now() - begun) / 1000) };
  } finally {
    await stopAll(server, closing);
    await forgetFolder(folder);
  }
}

const notesIn = ({ pages }: Ledger): number => pages.reduce((sum, page) => sum + page.acknowledged.length, 0);

async function stopAll(server: SpawnedServer, closing: readonly (() => void)[]): Promise<void> {
  for (const close of closing) close();
  await server.stop();
}

function stored(folder: string, tasting: Door['tasting'], seats: readonly SeatId[]): Found {
  const store = openSqliteStore(join(folder, 'quietpour.db'));
  const events = store.sessions.read(tasting);
  const entries = seats.flatMap((seat) =>
    store.notebooks.read(tasting, seat).entries.map((entry) => ({ ...entry, seat })),
  );
  return { events, entries, answerTo: (id) => store.sessions.answerTo(tasting, id) };
}
