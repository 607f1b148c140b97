/**
 * Every change of the tables in PostgreSQL there ever was, oldest first, each in a transaction of its own. One that was
 * released is never touched again. Machines of two versions run at the same time while a cluster is brought up to date: a
 * migration adds what the next version needs, and only a later one takes away what no running version reads any more.
 */
export interface PostgresMigration {
  readonly name: string;
  readonly sql: string;
  /** How many migrations a server must know at the least to run on these tables from here on. */
  readonly needs: number;
}

const child = 'tasting text NOT NULL REFERENCES tastings ON DELETE CASCADE';

export const postgresMigrations: readonly PostgresMigration[] = [
  {
    name: 'the tables of an evening, its head, and the processes',
    needs: 1,
    sql: `
      -- What all machines of a cluster have to have in common.
      CREATE TABLE cluster (
        one boolean PRIMARY KEY DEFAULT true CHECK (one),
        secrets text NOT NULL
      );
      -- A process holds every session that names it, for as long as it renews this row.
      CREATE TABLE processes (
        process text PRIMARY KEY,
        address text NOT NULL,
        valid_until timestamptz NOT NULL
      );
      CREATE TABLE tastings (
        tasting text PRIMARY KEY,
        code text NOT NULL UNIQUE,
        plan text NOT NULL,
        revision bigint NOT NULL,
        created_at bigint NOT NULL,
        digest text
      );
      CREATE INDEX tastings_newest ON tastings (created_at DESC, tasting COLLATE "C");
      -- The epoch counts the owners, the version what was committed; batch names the last commit.
      CREATE TABLE heads (
        tasting text PRIMARY KEY REFERENCES tastings ON DELETE CASCADE,
        epoch bigint NOT NULL,
        version bigint NOT NULL,
        batch text NOT NULL,
        owner text
      );
      CREATE INDEX heads_of_owner ON heads (owner);
      CREATE TABLE summaries (
        tasting text PRIMARY KEY REFERENCES tastings ON DELETE CASCADE,
        created_at bigint NOT NULL,
        code text NOT NULL,
        title text NOT NULL,
        starts_at text,
        pours bigint NOT NULL,
        guests bigint NOT NULL,
        stage text NOT NULL,
        finished_at bigint,
        words text NOT NULL
      );
      CREATE INDEX summaries_newest ON summaries (created_at DESC, tasting COLLATE "C");
      CREATE TABLE events (
        ${child}, seq bigint NOT NULL, event text NOT NULL, digest text NOT NULL,
        PRIMARY KEY (tasting, seq)
      );
      CREATE TABLE answers (
        ${child}, scope text NOT NULL, command text NOT NULL, answer text NOT NULL,
        PRIMARY KEY (tasting, scope, command)
      );
      CREATE TABLE documents (
        ${child}, name text NOT NULL, body text NOT NULL, revision bigint NOT NULL, digest text,
        PRIMARY KEY (tasting, name)
      );
      CREATE TABLE keys (
        hash text PRIMARY KEY, ${child}, role text NOT NULL, seat text, expires_at bigint,
        device text, came text, came_at bigint, opens bigint, own bigint, digest text
      );
      CREATE INDEX keys_of_seat ON keys (tasting, seat);
      CREATE TABLE surveys (
        ${child}, respondent text NOT NULL, answers text NOT NULL, digest text,
        PRIMARY KEY (tasting, respondent)
      );
      CREATE TABLE sealed_notes (
        ${child}, notebook text NOT NULL, pour text NOT NULL, field text NOT NULL, value bytea NOT NULL,
        sealed_value bytea, revision bigint NOT NULL, saved_at bigint NOT NULL,
        PRIMARY KEY (tasting, notebook, pour, field)
      );
      CREATE TABLE notebook_keys (
        ${child}, notebook text NOT NULL, slot bytea NOT NULL,
        PRIMARY KEY (tasting, notebook)
      );
      CREATE TABLE seat_words (
        ${child}, seat text NOT NULL, salt bytea NOT NULL, hash bytea NOT NULL, wrong text NOT NULL,
        PRIMARY KEY (tasting, seat)
      );
      CREATE TABLE photos (
        photo text PRIMARY KEY, ${child}, jpeg bytea NOT NULL
      );
      CREATE INDEX photos_of_tasting ON photos (tasting);
    `,
  },
  {
    name: 'houses',
    needs: 1,
    sql: `
      CREATE TABLE houses (
        house text PRIMARY KEY,
        name text NOT NULL,
        key_hash text NOT NULL UNIQUE,
        created_at bigint NOT NULL,
        open bigint NOT NULL,
        language text,
        volume_unit text,
        most_evenings bigint,
        most_seats bigint,
        most_bytes bigint
      );
      -- What names no house is the first one's, as all that was there before.
      ALTER TABLE tastings ADD COLUMN house text REFERENCES houses ON DELETE CASCADE;
      ALTER TABLE summaries ADD COLUMN house text;
      CREATE INDEX tastings_of_house ON tastings (house, created_at DESC, tasting COLLATE "C");
      CREATE INDEX summaries_of_house ON summaries (house, created_at DESC, tasting COLLATE "C");
    `,
  },
  {
    // Rows of before have none, and neither have those of a server that does not know them yet.
    name: 'a digest for each answer, note, guest’s words, photo and summary',
    needs: 1,
    sql: ['answers', 'sealed_notes', 'seat_words', 'photos', 'summaries']
      .map((table) => `ALTER TABLE ${table} ADD COLUMN digest text;`)
      .join('\n'),
  },
  {
    name: 'no digest of before for what a server has written that knows none',
    needs: 1,
    sql: `
      -- A server that does not know the column leaves it as it was: what is stored changes, and its digest does not.
      CREATE FUNCTION digest_of_before() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN
          IF NEW.digest = OLD.digest AND NEW IS DISTINCT FROM OLD THEN NEW.digest := NULL; END IF;
          RETURN NEW;
        END $$;
      ${['answers', 'sealed_notes', 'seat_words', 'photos', 'summaries']
        .map(
          (table) => `CREATE TRIGGER digest_of_before BEFORE UPDATE ON ${table}
            FOR EACH ROW EXECUTE FUNCTION digest_of_before();`,
        )
        .join('\n')}
    `,
  },
];
