import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { seconds } from '../../core/units.ts';
import { type RunningServer, startServer } from '../../server/app.ts';
import { steadyClock } from '../../server/clock.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { Store } from '../../server/store/store.ts';
import { type Rehearsal, rehearse } from '../rehearsal/rehearse.ts';
import { faultsOf, type RehearsalReport } from '../rehearsal/report.ts';
import { givenBefore } from '../support/permitted.ts';
import { planOf } from '../support/plans.ts';
import { forgetFolder, temporaryFolder } from '../support/server.ts';

const root = new URL('../..', import.meta.url).pathname;

function played(words: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const command = ['--import', 'tsx', join(root, 'tests/rehearsal/main.ts'), ...words];
  return new Promise((resolve) => {
    const child = execFile(process.execPath, command, { cwd: root }, (_, out, err) =>
      resolve({ code: child.exitCode ?? -1, out, err }),
    );
  });
}

describe('the whole evening over sockets', () => {
  it('leads six restless guests through six pours without losing, leaking or breaking anything', async () => {
    const { code, out, err } = await played(['--guests', '6', '--speed', '1000', '--seed', '4', '--json']);
    const report = JSON.parse(out.trim().split('\n').at(-1) ?? '') as RehearsalReport;
    expect({ err, violations: report.violations }).toEqual({ err: '', violations: [] });
    expect(report).toMatchObject({ guests: 6, notesLeakedBeforeDiscussion: 0, ruleViolations: 0, seed: 4 });
    expect(report.cuesSeenByAll).toBe(report.cues);
    expect(report.notesStored).toBe(report.notesAcknowledged);
    expect(report.notesAcknowledged).toBeGreaterThan(6 * 6 * 4);
    expect(report.reconnects).toBeGreaterThan(3);
    // Four of six stand-ins share, and four let count what they put in order.
    expect(report.talksWithoutWords).toBe(0);
    expect(report.pagesWritten).toBeGreaterThan(6 * 5);
    expect(report.pagesShared / report.pagesWritten).toBeGreaterThan(0.4);
    expect(report.pagesShared / report.pagesWritten).toBeLessThan(0.8);
    expect(report.ordersGiven).toBeGreaterThan(3);
    expect(report.ordersCounted / report.ordersGiven).toBeGreaterThan(0.4);
    expect(report.ordersCounted).toBeLessThan(report.ordersGiven);
    expect(report.guessesGiven).toBeGreaterThan(6 * 2);
    expect(report.guessesCounted / report.guessesGiven).toBeGreaterThan(0.4);
    expect(report.guessesCounted).toBeLessThan(report.guessesGiven);
    expect(report.fanoutMs.p99).toBeGreaterThanOrEqual(report.fanoutMs.p50);
    expect(code).toBe(0);
  }, 180_000);

  it('says what to write when it is asked for something that cannot be', async () => {
    const { code, err } = await played(['--guests', '501']);
    expect(code).toBe(2);
    expect(err).toContain('--guests takes a whole number from 1 to 500');
  });
});

describe('a rehearsal notices', () => {
  const cleanUps: Array<() => Promise<void>> = [];
  afterEach(async () => {
    for (const cleanUp of cleanUps.splice(0).reverse()) await cleanUp();
  });

  async function serverWith(tamper: (store: Store) => Store): Promise<RunningServer> {
    const folder = await temporaryFolder();
    cleanUps.push(() => forgetFolder(folder));
    const store = tamper(openSqliteStore(join(folder, 'quietpour.db')));
    const server = await startServer({ store, clock: steadyClock(), host: '127.0.0.1' });
    cleanUps.push(() => server.stop());
    return server;
  }

  async function shortEvening(
    tamper: (store: Store) => Store,
    more: Partial<Rehearsal> = {},
  ): Promise<RehearsalReport> {
    const { port, houseKey } = await serverWith(tamper);
    const origin = `http://127.0.0.1:${port}`;
    const plan = planOf(1, { blind: true, practice: false });
    return rehearse({ origin, houseKey, plan, guests: 3, speed: 1000, seed: 9, ...more });
  }
  const honest = (store: Store): Store => store;

  it('nothing when nothing is wrong', async () => {
    expect(faultsOf(await shortEvening(honest))).toEqual([]);
  });

  it('a note that was acknowledged and not kept', async () => {
    let lost = 0;
    const forgetful = (store: Store): Store => ({
      ...store,
      close: () => store.close(),
      notebooks: {
        read: (...which) => store.notebooks.read(...which),
        find: (...which) => store.notebooks.find(...which),
        readPermitted: (...which) => store.notebooks.readPermitted(...which),
        consents: (...whose) => store.notebooks.consents(...whose),
        consent: (write) => store.notebooks.consent(write),
        answerTo: (...which) => store.notebooks.answerTo(...which),
        forget: (...which) => store.notebooks.forget(...which),
        drop: (...which) => store.notebooks.drop(...which),
        save: async (write) => {
          if (write.entry.field === 'finish' && lost < 1) lost += 1;
          else await store.notebooks.save(write);
        },
      },
    });
    // Two phones of one guest would heal the loss: whoever writes on sends the whole field again.
    const report = await shortEvening(forgetful, { guests: 1, patience: 8000 });
    expect(lost).toBe(1);
    expect(report.notesStored).toBeLessThan(report.notesAcknowledged);
    expect(faultsOf(report).join()).toContain('lost');
  });

  it('[Q1] a note that reaches other devices before the discussion', async () => {
    let told = false;
    const report = await shortEvening(honest, {
      trick: async (host, cue, ledger) => {
        const [note] = ledger.notes;
        if (told || note === undefined) return;
        told = true;
        await host.mustDo({ type: 'EditCue', cue: cue.id, say: `Somebody wrote ${note.token}.` });
      },
    });
    expect(told).toBe(true);
    expect(report.notesLeakedBeforeDiscussion).toBe(1);
    expect(report.violations.some((line) => line.startsWith('[Q1]'))).toBe(true);
    expect(faultsOf(report).join()).toContain('leaked');
  });

  it('[Q2] a board with notes that nobody shared', async () => {
    const report = await shortEvening(
      (store) => ({
        ...store,
        close: () => store.close(),
        notebooks: Object.assign(Object.create(store.notebooks), {
          readPermitted: (...[tasting, pours]: Parameters<Store['notebooks']['readPermitted']>) => {
            const [last] = store.sessions
              .read(tasting)
              .flatMap((event) => (event.type === 'SeatTaken' ? [event.seat.id] : []));
            if (last === undefined) return [];
            return pours.map((pour) => ({
              seat: last,
              ...givenBefore('shared'),
              pour,
              entries: store.notebooks.read(tasting, last).entries.filter((entry) => entry.pour === pour),
            }));
          },
        }),
      }),
      { patience: 1000 },
    );
    expect(report.violations.some((line) => line.startsWith('[Q2]'))).toBe(true);
  });

  it('[Q4] a name that is said before the reveal', async () => {
    const report = await shortEvening(honest, {
      trick: (host, cue) =>
        host.mustDo({ type: 'EditCue', cue: cue.id, say: 'Next: The ash cask.', seconds: seconds(30) }),
    });
    expect(report.violations.some((line) => line.startsWith('[Q4]'))).toBe(true);
  });
});
