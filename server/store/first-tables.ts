/**
 * The tables of the first release, as they were. Never changed: files have been laid with them. What comes after is a
 * migration of its own.
 */
export const firstTables = `
  CREATE TABLE tastings (
    tasting TEXT PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    plan TEXT NOT NULL,
    revision INTEGER NOT NULL,
    created_at INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE events (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    seq INTEGER NOT NULL,
    event TEXT NOT NULL,
    PRIMARY KEY (tasting, seq)
  ) STRICT, WITHOUT ROWID;

  -- What each command was answered. Scope is the seat for notes and empty for the session's own commands.
  CREATE TABLE answers (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    scope TEXT NOT NULL,
    command TEXT NOT NULL,
    answer TEXT NOT NULL,
    PRIMARY KEY (tasting, scope, command)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE notes (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    seat TEXT NOT NULL,
    pour TEXT NOT NULL,
    field TEXT NOT NULL,
    value TEXT NOT NULL,
    sealed_value TEXT,
    revision INTEGER NOT NULL,
    saved_at INTEGER NOT NULL,
    PRIMARY KEY (tasting, seat, pour, field)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE shares (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    seat TEXT NOT NULL,
    pour TEXT NOT NULL,
    sharing TEXT NOT NULL,
    PRIMARY KEY (tasting, pour, seat)
  ) STRICT, WITHOUT ROWID;

  -- Small documents of a tasting that are neither its plan nor its log, such as the pour run.
  CREATE TABLE documents (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    name TEXT NOT NULL,
    body TEXT NOT NULL,
    revision INTEGER NOT NULL,
    PRIMARY KEY (tasting, name)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE keys (
    hash TEXT PRIMARY KEY,
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    role TEXT NOT NULL,
    seat TEXT,
    expires_at INTEGER
  ) STRICT, WITHOUT ROWID;
  CREATE TABLE photos (
    photo TEXT PRIMARY KEY,
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    jpeg BLOB NOT NULL
  ) STRICT;
  CREATE INDEX photos_of_tasting ON photos (tasting);

  -- One row a respondent, without a name: the id is made on their device, so that answering again replaces.
  CREATE TABLE surveys (
    tasting TEXT NOT NULL REFERENCES tastings ON DELETE CASCADE,
    respondent TEXT NOT NULL,
    answers TEXT NOT NULL,
    PRIMARY KEY (tasting, respondent)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX keys_of_tasting ON keys (tasting);
`;
