import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { commandId, photoId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import { openPostgresStore, type PostgresStore } from '../../../server/store/postgres/postgres.ts';
import { planOf } from '../../support/plans.ts';
import { type PostgresServer, startPostgres } from '../../support/postgres-server.ts';

export const tasting = tastingId('harvest');
export const robin = seatId('robin');
const sam = seatId('sam');
const pour = pourId('pour-1');
export const row = { tasting, code: 'ABC234', plan: planOf(3), revision: 1, createdAt: epochMs(1000) };
export const held: SessionEvent = { type: 'ReminderCleared' };
export const secrets = { notesKey: Buffer.alloc(32, 7), houseKey: 'house' };
const answered = (id: string) => ({ command: commandId(id), answer: { ok: true, version: 1 } as const });
const note = (value: string) => ({ pour, field: 'nose', value, revision: 1, savedAt: epochMs(5) }) as const;

interface Told {
  readonly lost: string[];
  readonly taken: string[];
  readonly conducted: Set<string>;
}
export interface PostgresForTests {
  readonly server: PostgresServer;
  /** A database of this test. */
  readonly url: string;
  /** A process among others, as they are to each other; closed after the test. */
  joined(address: string, at?: string, idleFor?: number): Promise<PostgresStore & { readonly told: Told }>;
}

/** A server for a file of tests, and a database for each. */
export function postgresForTests(): PostgresForTests {
  let server: PostgresServer | undefined;
  let url = '';
  let open: PostgresStore[] = [];
  const running = (): PostgresServer => {
    if (server === undefined) throw new Error('It has not been started.');
    return server;
  };
  beforeAll(async () => {
    server = await startPostgres();
  });
  afterAll(() => server?.stop());
  beforeEach(async () => {
    url = await running().database();
  });
  afterEach(async () => {
    await Promise.all(open.map((store) => store.close()));
    open = [];
  });
  return {
    get server() {
      return running();
    },
    get url() {
      return url;
    },
    async joined(address, at = url, idleFor = 60_000) {
      const store = await openPostgresStore({ url: at, idleFor, ...secrets });
      let closed: Promise<void> | undefined;
      const close = () => {
        closed ??= store.close();
        return closed;
      };
      open.push({ ...store, close });
      const told: Told = { lost: [], taken: [], conducted: new Set() };
      await store.cluster.join(address, {
        lost: (each) => void told.lost.push(each),
        taken: (each) => void told.taken.push(each),
        expired: () => undefined,
        conducted: (each) => told.conducted.has(each),
      });
      return { ...store, close, told };
    },
  };
}

export const append = (store: PostgresStore, expected: number, id?: string) =>
  store.sessions.append({
    tasting,
    expected,
    events: [held],
    ...(id === undefined ? {} : { answered: answered(id) }),
  });
export const everything = (store: PostgresStore) => ({
  row: store.tastings.find(tasting),
  summary: store.tastings.summary(tasting),
  events: store.sessions.read(tasting),
  answer: store.sessions.answerTo(tasting, commandId('one')),
  notes: store.notebooks.read(tasting, robin),
  others: store.notebooks.read(tasting, sam),
  noted: store.notebooks.answerTo(tasting, robin, commandId('two')),
  key: store.keys.find('aa'),
  document: store.documents.read(tasting, 'pouring'),
  words: store.devices.words(tasting, robin),
  surveys: store.surveys.read(tasting),
  lies: store.asItLies(tasting),
});
export async function written(store: PostgresStore): Promise<void> {
  await store.tastings.create(row);
  await append(store, 0, 'one');
  const entry = note('wet slate 🌾');
  const { value, revision, savedAt } = entry;
  await store.notebooks.save({
    tasting,
    seat: robin,
    entry,
    answered: { command: commandId('two'), answer: { ok: true, revision, value, savedAt } },
  });
  await store.keys.add({ hash: 'aa', tasting, role: 'host', expiresAt: epochMs(9) });
  await store.documents.save(tasting, 'pouring', { glasses: [1] }, 0);
  await store.devices.keepWords(tasting, robin, {
    salt: Buffer.from([0, 1]),
    hash: Buffer.from([2]),
    wrong: [],
  });
  await store.surveys.answer(tasting, 'somebody', {}, 10);
  await store.photos.add(tasting, photoId('label-photo-of-the-first'), Buffer.from([255, 0, 1]));
}
/** The name of a process is told to whoever asks where a session is. */
export async function ownerSeenBy(store: PostgresStore): Promise<string> {
  const where = await store.cluster.claim(tasting);
  if (where.at !== 'elsewhere') throw new Error(`It is ${where.at}.`);
  return where.process;
}
