import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import { connectTo } from '../../../server/store/postgres/connections.ts';
import { databaseFailure } from '../../../server/store/postgres/failure.ts';
import { migratePostgres } from '../../../server/store/postgres/migrate.ts';
import { postgresMigrations } from '../../../server/store/postgres/migrations.ts';
import { openPostgresStore } from '../../../server/store/postgres/postgres.ts';
import { mirroredTables } from '../../../server/store/postgres/tables.ts';
import { Diverged } from '../../../server/store/store.ts';
import { type LossyLine, lossyLineTo } from '../../support/lossy-line.ts';
import { append, held, postgresForTests, row, secrets, tasting } from '../support/postgres-processes.ts';

const database = postgresForTests();
const { joined } = database;

describe('when the line to the database fails', () => {
  let line: LossyLine;
  beforeEach(async () => {
    line = await lossyLineTo(database.server.port);
  });
  afterEach(() => line.close());
  const through = () => database.url.replace(`:${database.server.port}/`, `:${line.port}/`);

  it('a commit whose answer was lost is known to be done, and is done once', async () => {
    const one = await joined('one:1', through());
    await one.tastings.create(row);
    for (let round = 0; round < 3; round += 1) {
      line.loseNextAnswer();
      await append(one, round, `command-${round}`);
    }
    expect(one.cluster.figures().readAgain).toBeGreaterThan(0);
    expect(await one.sessions.readAnywhere(tasting)).toEqual([held, held, held]);
    expect(await database.server.query(database.url, 'SELECT version FROM heads')).toEqual([
      { version: '4' },
    ]);
  });

  it('says nothing once its lease may have ended, and goes on where nobody else has taken over', async () => {
    const one = await joined('one:1', through());
    await one.tastings.create(row);
    line.silence();
    await expect.poll(() => one.cluster.holds(), { timeout: 5000 }).toBe(false);
    await expect(one.cluster.claim(tasting)).rejects.toThrow('no lease');
    const waiting = append(one, 0, 'one');
    line.mend();
    await waiting;
    expect(one.told.lost).toEqual([]);
    expect(await one.sessions.readAnywhere(tasting)).toEqual([held]);
  });

  it('what another took meanwhile is lost before anything more is said of it', async () => {
    const [one, other] = [await joined('one:1', through()), await joined('other:2')];
    await one.tastings.create(row);
    await append(one, 0, 'one');
    line.silence();
    await expect.poll(() => other.cluster.claim(tasting), { timeout: 20_000 }).toEqual({ at: 'here' });
    expect(one.cluster.holds()).toBe(false);
    const late = append(one, 1, 'late');
    const refused = expect(late).rejects.toThrow(Diverged);
    await append(other, 1, 'theirs');
    line.mend();
    await refused;
    expect(one.told.lost).toEqual([tasting]);
    expect(await other.sessions.readAnywhere(tasting)).toEqual([held, held]);
  });
});

describe('a database that was away for every process', () => {
  it('is back for one before the others: it waits for them with what is theirs, and not for ever', async () => {
    const lines = [await lossyLineTo(database.server.port), await lossyLineTo(database.server.port)] as const;
    const through = (line: LossyLine) => database.url.replace(`:${database.server.port}/`, `:${line.port}/`);
    const [one, other] = [
      await joined('one:1', through(lines[0])),
      await joined('other:2', through(lines[1])),
    ];
    await one.tastings.create(row);
    for (const line of lines) line.silence();
    const held = () => other.cluster.holds();
    await expect.poll(held, { interval: 10, timeout: 20_000 }).toBe(false);
    await new Promise((done) => setTimeout(done, 1000));
    lines[1].mend();
    await expect.poll(held, { interval: 10, timeout: 20_000 }).toBe(true);
    const back = performance.now();
    const claimed = () =>
      other.cluster.claim(tasting).then(
        ({ at }) => at,
        () => 'nobody at the moment',
      );
    const first = await claimed();
    // Where the machine itself stood still for longer, the wait is over.
    if (performance.now() - back < 1000) expect(first).not.toBe('here');
    await expect.poll(claimed, { interval: 100, timeout: 20_000 }).toBe('here');
    expect(performance.now() - back).toBeGreaterThan(1000);
    for (const line of lines) line.mend();
    await expect.poll(() => one.told.lost, { timeout: 20_000 }).toEqual([tasting]);
    for (const line of lines) await line.close();
  });
});

describe('a database that is restarted', () => {
  it('takes no evening from anybody, and what waited is done', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await one.tastings.create(row);
    const doors = { type: 'DoorsOpened', at: epochMs(5) } as unknown as SessionEvent;
    await one.sessions.append({ tasting, expected: 0, events: [doors] });
    await database.server.kill();
    const waiting = append(one, 1, 'one');
    // Longer than any lease.
    await new Promise((done) => setTimeout(done, 2500));
    await database.server.start();
    await waiting;
    await expect.poll(() => one.cluster.holds()).toBe(true);
    await new Promise((done) => setTimeout(done, 1200));
    expect([one.told.lost, other.told.taken]).toEqual([[], []]);
  });
});

describe('the tables', () => {
  it('are those of SQLite, column by column', async () => {
    await joined('one:1');
    const found = await database.server.query(
      database.url,
      "SELECT table_name || '.' || column_name AS column, data_type AS type FROM information_schema.columns WHERE table_schema = 'public'",
    );
    const types = new Map(found.map(({ column, type }) => [String(column), String(type)]));
    for (const { name, columns } of mirroredTables)
      for (const [column, type] of columns)
        expect(types.get(`${name}.${column}`), `${name}.${column}`).toBe(type);
  });

  it('are changed once, also by processes that start at the same moment, and a change that fails leaves nothing', async () => {
    const some = [connectTo(database.url), connectTo(database.url), connectTo(database.url)];
    await Promise.all(some.map((each) => migratePostgres(each)));
    const broken = { name: 'broken', needs: 1, sql: 'CREATE TABLE half (a int); SELECT 1 / 0' };
    const [first] = some;
    if (first === undefined) throw new Error('No connection.');
    await expect(migratePostgres(first, [...postgresMigrations, broken])).rejects.toThrow();
    expect(await database.server.query(database.url, 'SELECT number FROM migrations')).toHaveLength(
      postgresMigrations.length,
    );
    expect(
      await database.server.query(database.url, "SELECT 1 FROM pg_tables WHERE tablename = 'half'"),
    ).toEqual([]);
    await migratePostgres(first, [
      ...postgresMigrations,
      { ...broken, sql: 'CREATE TABLE half (a int)', needs: postgresMigrations.length + 1 },
    ]);
    await Promise.all(some.map((each) => each.close()));
    await expect(openPostgresStore({ url: database.url, ...secrets })).rejects.toThrow('newer Quietpour');
  });
});

describe('what cannot be', () => {
  it.each([
    ['28P01', 'refuses the password'],
    ['28000', 'does not let this user in'],
    ['53100', 'disk of the database is full'],
    ['53300', 'no connection left'],
    ['42501', 'may not write'],
    ['55P03', 'Another program holds a table'],
    ['XX000', 'does not answer as it should'],
  ])('%s of the database is a sentence without what was written', (code, sentence) => {
    const said = databaseFailure(Object.assign(new Error('value "wet slate"'), { code })).message;
    expect(said).toMatch(new RegExp(`${sentence}.*\\(${code}\\)$`));
    expect(said).not.toContain('wet slate');
  });

  it.each([
    ['mysql://somewhere/db', 'must be an address such as'],
    ['postgresql://postgres@127.0.0.1:1/quietpour', 'No PostgreSQL answers'],
    ['postgresql://postgres@no-such-host.invalid/quietpour', 'is not known'],
  ])('%s is a sentence', async (at, sentence) => {
    await expect(openPostgresStore({ url: at, ...secrets })).rejects.toThrow(sentence);
  });

  it('a database that is not there, may only be read, or is another cluster’s is a sentence', async () => {
    const nowhere = database.url.replace(/quietpour_\d+$/, 'no_such_database');
    await expect(openPostgresStore({ url: nowhere, ...secrets })).rejects.toThrow('does not exist');
    await joined('one:1');
    await expect(openPostgresStore({ url: database.url, ...secrets, houseKey: 'other' })).rejects.toThrow(
      'copy both files',
    );
    const readonly = await database.server.database();
    await database.server.query(
      readonly,
      `ALTER DATABASE ${readonly.split('/').at(-1)} SET default_transaction_read_only = on`,
    );
    await expect(openPostgresStore({ url: readonly, ...secrets })).rejects.toThrow('may only be read');
  });
});
