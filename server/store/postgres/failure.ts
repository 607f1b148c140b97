import { StoreFailure } from '../store.ts';

/** Errors of the database as sentences that say what to do, by SQLSTATE or by the code of the network. */
const sentences: readonly (readonly [code: string, sentence: string])[] = [
  ['28P01', 'PostgreSQL refuses the password in QUIETPOUR_DATABASE_URL: correct it, then start again.'],
  ['28', 'PostgreSQL does not let this user in: check the user in QUIETPOUR_DATABASE_URL and pg_hba.conf.'],
  ['3D000', 'The database in QUIETPOUR_DATABASE_URL does not exist: create it, then start again.'],
  ['25006', 'This PostgreSQL is a copy that may only be read: name the primary in QUIETPOUR_DATABASE_URL.'],
  ['42501', 'This user may not write in the database: give it the right to create tables there.'],
  ['53100', 'The disk of the database is full: free some space, then try again.'],
  ['53300', 'PostgreSQL has no connection left: raise max_connections, or run fewer processes.'],
  ['57P03', 'PostgreSQL is starting up: it will answer in a moment.'],
  ['55P03', 'Another program holds a table of the database: end it, then start again.'],
  ['ECONNREFUSED', 'No PostgreSQL answers at QUIETPOUR_DATABASE_URL: start it, or correct the address.'],
  ['ENOTFOUND', 'The host in QUIETPOUR_DATABASE_URL is not known: correct its name.'],
  ['EAI_AGAIN', 'The host in QUIETPOUR_DATABASE_URL is not known: correct its name.'],
];

const codeOf = (error: unknown): string => {
  const code = typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
  return typeof code === 'string' ? code : 'no answer';
};

/** It never holds a value that was to be written. */
export function databaseFailure(error: unknown): StoreFailure {
  if (error instanceof StoreFailure) return error;
  const code = codeOf(error);
  const found = sentences.find(([prefix]) => code.startsWith(prefix));
  return new StoreFailure(`${found?.[1] ?? 'The database does not answer as it should.'} (${code})`, {
    cause: error,
  });
}

/**
 * Whether the database has surely refused: a statement that it reports as failed has changed nothing (PostgreSQL, "Error
 * codes"). Of classes 08, 53 and 57 and of what is no SQLSTATE nobody knows.
 */
export const isRefused = (error: unknown): boolean =>
  /^[0-9A-Z]{5}$/.test(codeOf(error)) && !/^(08|53|57|40003|25006|XX)/.test(codeOf(error));

/** For everybody: it is not there, or a copy that nobody may write yet. */
export const isDown = (error: unknown): boolean => /^(ECONNREFUSED|57P0[123]|25006)$/.test(codeOf(error));
