import { createHash } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import { firstTables } from './first-tables.ts';

export interface Migration {
  /** What it does, in a few words, for whoever looks into a file's history. */
  readonly name: string;
  /** Runs inside a transaction of its own, with foreign keys off and checked at its end. Throws to change nothing. */
  readonly run: (db: Database) => void;
}

/**
 * Every change of the tables there ever was, oldest first: `user_version` counts those that a file has behind it.
 *
 * To change what is stored, add one at the end, in plain SQL that calls nothing of today's code (it must mean the same in
 * years); never change, remove or reorder one that has been released. Then make a fixture of the new release and read on
 * in DEVELOPERS.md, "A stored shape".
 */
export const migrations: readonly Migration[] = [
  { name: 'the tables of the first release', run: (db) => void db.exec(firstTables) },
  { name: 'what early files of version 1 lack', run: completeFirstTables },
  { name: 'sealed notes, and the devices and words of a seat', run: (db) => void db.exec(sealedNotes) },
  { name: 'a digest for each event, over the one before it', run: chainEvents },
  { name: 'a summary of each tasting', run: (db) => void db.exec(summaries) },
  { name: 'consents in place of shares', run: (db) => void db.exec(consents) },
  {
    name: 'a digest for each plan, document, survey and key',
    run: digestRows(['tastings', 'documents', 'surveys', 'keys']),
  },
  { name: 'keys by their seat', run: (db) => void db.exec(keysOfSeat) },
  { name: 'houses', run: (db) => void db.exec(houses) },
  {
    name: 'a digest for each answer, note, guest’s words, photo and summary',
    run: digestRows(['answers', 'sealed_notes', 'seat_words', 'photos', 'summaries']),
  },
];

/** Three changes of the first tables kept the number 1, so that a file of that number may be any of four. */
function completeFirstTables(db: Database): void {
  if (!columnsOf(db, 'shares').includes('sharing')) {
    // Whoever stood in the table then had shared the page with their name.
    db.exec(`
      CREATE TABLE shares_now (
        tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
        seat TEXT NOT NULL,
        pour TEXT NOT NULL,
        sharing TEXT NOT NULL,
        PRIMARY KEY (tasting, pour, seat)
      ) STRICT, WITHOUT ROWID;
      INSERT INTO shares_now SELECT tasting, seat, pour, 'shared' FROM shares;
      DROP TABLE shares;
      ALTER TABLE shares_now RENAME TO shares;
    `);
  }
  db.exec(firstTables.replaceAll(/CREATE (TABLE|INDEX) /g, 'CREATE $1 IF NOT EXISTS '));
}

/**
 * The plain notes stay where they are until the store is opened with its key: see `sealPlainNotes`. Whoever held a seat's
 * key had its notes, and keeps them. An answer to a note was the note again, and is now its revision only.
 */
const sealedNotes = `
  ALTER TABLE keys ADD COLUMN device TEXT;
  ALTER TABLE keys ADD COLUMN came TEXT;
  ALTER TABLE keys ADD COLUMN came_at INTEGER;
  ALTER TABLE keys ADD COLUMN opens INTEGER;
  ALTER TABLE keys ADD COLUMN own INTEGER;
  UPDATE keys SET device = substr(hash, 1, 12), came = iif(expires_at IS NULL, 'door', 'host'), came_at = 0,
    opens = 1, own = 1 WHERE role = 'seat';

  CREATE TABLE sealed_notes (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    notebook TEXT NOT NULL,
    pour TEXT NOT NULL,
    field TEXT NOT NULL,
    value BLOB NOT NULL,
    sealed_value BLOB,
    revision INTEGER NOT NULL,
    saved_at INTEGER NOT NULL,
    PRIMARY KEY (tasting, notebook, pour, field)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE seat_words (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    seat TEXT NOT NULL,
    salt BLOB NOT NULL,
    hash BLOB NOT NULL,
    wrong TEXT NOT NULL,
    PRIMARY KEY (tasting, seat)
  ) STRICT, WITHOUT ROWID;

  UPDATE answers SET answer = json_extract(answer, '$.revision')
    WHERE scope <> '' AND json_type(answer, '$.revision') = 'integer';
`;

/** A crowd that comes back asks for the devices of each seat: not through all keys of the evening. */
const keysOfSeat = `
  CREATE INDEX keys_of_seat ON keys (tasting, seat);
  DROP INDEX keys_of_tasting;
`;

/** Empty at first: whichever are missing are written when the store is opened, see `addMissing`. */
const summaries = `
  CREATE TABLE summaries (
    tasting TEXT PRIMARY KEY REFERENCES tastings ON DELETE CASCADE,
    created_at INTEGER NOT NULL,
    code TEXT NOT NULL,
    title TEXT NOT NULL,
    starts_at TEXT,
    pours INTEGER NOT NULL,
    guests INTEGER NOT NULL,
    stage TEXT NOT NULL,
    finished_at INTEGER,
    words TEXT NOT NULL
  ) STRICT;
  CREATE INDEX summaries_newest ON summaries (created_at DESC, tasting);
`;

/**
 * Who shared a page with their name had it on the board and counted; who let it count had its marks counted. They stand
 * here in plain words only until the store is opened with its key: see `sealPlainShares`.
 */
const consents = `
  CREATE TABLE plain_shares (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    seat TEXT NOT NULL,
    pour TEXT NOT NULL,
    consents TEXT NOT NULL,
    PRIMARY KEY (tasting, pour, seat)
  ) STRICT, WITHOUT ROWID;
  INSERT INTO plain_shares SELECT tasting, seat, pour, CASE sharing
    WHEN 'shared' THEN '{"page":{"sharing":"named","parts":["look","nose","palate","finish","thoughts","verdict"]},"order":"counts","liking":"counts","odd-one-out":"counts"}'
    ELSE '{"page":{"sharing":"private","parts":[]},"order":"counts","liking":"counts","odd-one-out":"counts","marks":"counts"}'
    END FROM shares WHERE sharing IN ('shared', 'counted');
  DROP TABLE shares;
`;

/** What names no house is the first one's, as all that was there before. */
const houses = `
  CREATE TABLE houses (
    house TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    key_hash TEXT NOT NULL UNIQUE,
    created_at INTEGER NOT NULL,
    open INTEGER NOT NULL,
    language TEXT,
    volume_unit TEXT,
    most_evenings INTEGER,
    most_seats INTEGER,
    most_bytes INTEGER
  ) STRICT, WITHOUT ROWID;
  ALTER TABLE tastings ADD COLUMN house TEXT;
  ALTER TABLE summaries ADD COLUMN house TEXT;
  CREATE INDEX tastings_of_house ON tastings (house, created_at DESC, tasting);
  CREATE INDEX summaries_of_house ON summaries (house, created_at DESC, tasting);
  DROP INDEX summaries_newest;
`;

const columnsOf = (db: Database, table: string): string[] =>
  db.prepare<[string], string>('SELECT name FROM pragma_table_info(?)').pluck().all(table);

/** What lies there now is taken as it is: from here on a change shows. */
function chainEvents(db: Database): void {
  db.exec(`
    CREATE TABLE events_now (
      tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
      seq INTEGER NOT NULL,
      event TEXT NOT NULL,
      digest TEXT NOT NULL,
      PRIMARY KEY (tasting, seq)
    ) STRICT, WITHOUT ROWID;
  `);
  const read = db.prepare<[string], { seq: number; event: string }>(
    'SELECT seq, event FROM events WHERE tasting = ? ORDER BY seq',
  );
  const write = db.prepare('INSERT INTO events_now VALUES (?, ?, ?, ?)');
  for (const tasting of db.prepare<[], string>('SELECT DISTINCT tasting FROM events').pluck().all()) {
    let digest = tasting;
    for (const { seq, event } of read.all(tasting)) {
      digest = createHash('sha256').update(`${digest}\n${seq}\n${event}`).digest('hex').slice(0, 32);
      write.run(tasting, seq, event, digest);
    }
  }
  db.exec('DROP TABLE events; ALTER TABLE events_now RENAME TO events');
}

/** What lies there now is taken as it is: from here on a change shows. One row after the other, for photos are large. */
function digestRows(tables: readonly string[]): (db: Database) => void {
  return (db) => {
    for (const table of tables) {
      db.exec(`ALTER TABLE ${table} ADD COLUMN digest TEXT`);
      const keys = db
        .prepare<[string], string>('SELECT name FROM pragma_table_info(?) WHERE pk > 0')
        .pluck()
        .all(table);
      const where = keys.map((key) => `${key} = @${key}`).join(' AND ');
      const read = db.prepare<[object], Record<string, unknown>>(`SELECT * FROM ${table} WHERE ${where}`);
      const write = db.prepare(`UPDATE ${table} SET digest = @digest WHERE ${where}`);
      for (const key of db.prepare<[], object>(`SELECT ${keys.join(', ')} FROM ${table}`).all()) {
        const said = Object.entries(read.get(key) ?? {})
          .filter(([column, value]) => column !== 'digest' && value !== null)
          .map(([column, value]) => [column, Buffer.isBuffer(value) ? value.toString('base64') : value])
          .sort(([one], [other]) => (String(one) < String(other) ? -1 : 1));
        const digest = createHash('sha256').update(JSON.stringify(said)).digest('hex').slice(0, 32);
        write.run({ ...key, digest });
      }
    }
  };
}
