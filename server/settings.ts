import { readFileSync } from 'node:fs';
import { isAbsolute, resolve } from 'node:path';
import { createSecureContext } from 'node:tls';
import { type CallSettings, callSettingsFrom } from './access/call-servers.ts';

/** What the environment says about how to run, as plain values. */
export interface Settings {
  readonly port: number;
  readonly host: string | undefined;
  /** Folder for everything that is kept. */
  readonly data: string;
  readonly origins: readonly string[];
  /** Of PostgreSQL, for more than one process; undefined: a file in the data folder. */
  readonly databaseUrl: string | undefined;
  /** Where other processes reach this one, as host:port; undefined: this machine's first address. */
  readonly ownAddress: string | undefined;
  readonly tls: { readonly key: Buffer; readonly cert: Buffer } | undefined;
  readonly logLevel: string;
  /** What a call from afar needs beside this server. */
  readonly call: CallSettings;
  /** How many may sit at one table. */
  readonly seatLimit: number;
  /** Whether a stranger may make a house of their own. */
  readonly openHouses: boolean;
  /** Days after which a tasting that nobody touches is deleted; undefined: never. */
  readonly keepDays: number | undefined;
}

const levels = ['trace', 'debug', 'info', 'warn', 'error', 'fatal', 'silent'];

/** Throws an error with a sentence that says which setting to mend and how. */
export function settingsFrom(environment: NodeJS.ProcessEnv): Settings {
  const { PORT = '4680', HOST, QUIETPOUR_DATA = 'data', QUIETPOUR_ORIGINS = '' } = environment;
  const port = Number(PORT);
  if (!/^\d{1,5}$/.test(PORT) || port > 65_535) {
    throw new Error('PORT must be a number from 0 to 65535; 0 takes any port that is free.');
  }
  const { QUIETPOUR_DATABASE_URL, QUIETPOUR_ADDRESS } = environment;
  if (QUIETPOUR_ADDRESS && !/^[A-Za-z0-9.-]+:\d{1,5}$/.test(QUIETPOUR_ADDRESS))
    throw new Error(
      'QUIETPOUR_ADDRESS must say where other processes reach this one, such as 10.0.0.5:4680.',
    );
  const tls = tlsFrom(environment.QUIETPOUR_TLS_KEY, environment.QUIETPOUR_TLS_CERT);
  if (QUIETPOUR_DATABASE_URL && tls !== undefined)
    throw new Error(
      'Beside QUIETPOUR_DATABASE_URL leave QUIETPOUR_TLS_KEY out: the proxy in front speaks https.',
    );
  const logLevel = environment.LOG_LEVEL ?? 'warn';
  if (!levels.includes(logLevel)) throw new Error(`LOG_LEVEL must be one of ${levels.join(', ')}.`);
  const { QUIETPOUR_SEATS = '200' } = environment;
  const seatLimit = Number(QUIETPOUR_SEATS);
  if (!/^\d{1,4}$/.test(QUIETPOUR_SEATS) || seatLimit < 1 || seatLimit > 1000) {
    throw new Error('QUIETPOUR_SEATS must be a number from 1 to 1000: how many may sit at one table.');
  }
  const { QUIETPOUR_KEEP_DAYS } = environment;
  if (QUIETPOUR_KEEP_DAYS && !/^[1-9]\d{0,3}$/.test(QUIETPOUR_KEEP_DAYS)) {
    throw new Error('QUIETPOUR_KEEP_DAYS must be a number from 1 to 9999; leave it out to keep everything.');
  }
  const { QUIETPOUR_OPEN_HOUSE } = environment;
  if (QUIETPOUR_OPEN_HOUSE && !/^[01]$/.test(QUIETPOUR_OPEN_HOUSE)) {
    throw new Error(
      'QUIETPOUR_OPEN_HOUSE must be 1, so that whoever opens the page can make a house of their own; leave it out so that nobody can.',
    );
  }
  return {
    port,
    seatLimit,
    openHouses: QUIETPOUR_OPEN_HOUSE === '1',
    keepDays: QUIETPOUR_KEEP_DAYS ? Number(QUIETPOUR_KEEP_DAYS) : undefined,
    host: HOST === '' ? undefined : HOST,
    data: isAbsolute(QUIETPOUR_DATA) ? QUIETPOUR_DATA : resolve(QUIETPOUR_DATA),
    origins: QUIETPOUR_ORIGINS.split(/[\s,]+/).flatMap((origin) => (origin === '' ? [] : [checked(origin)])),
    tls,
    databaseUrl: QUIETPOUR_DATABASE_URL || undefined,
    ownAddress: QUIETPOUR_ADDRESS || undefined,
    logLevel,
    call: callSettingsFrom(environment),
  };
}

function checked(origin: string): string {
  if (URL.canParse(origin) && /^https?:\/\//.test(origin)) return new URL(origin).origin;
  throw new Error('QUIETPOUR_ORIGINS must list addresses such as https://tasting.example, parted by commas.');
}

function tlsFrom(key: string | undefined, cert: string | undefined): Settings['tls'] {
  if (!key && !cert) return undefined;
  if (!key || !cert) {
    throw new Error('For https give both files: QUIETPOUR_TLS_KEY and QUIETPOUR_TLS_CERT.');
  }
  const files = readBoth(key, cert);
  try {
    // What the server would only find out when it starts to listen, in words of a library.
    createSecureContext(files);
  } catch (error) {
    throw new Error(
      'QUIETPOUR_TLS_KEY and QUIETPOUR_TLS_CERT do not fit together: they must name a private key and its certificate, both in PEM.',
      { cause: error },
    );
  }
  return files;
}

function readBoth(key: string, cert: string): { readonly key: Buffer; readonly cert: Buffer } {
  try {
    return { key: readFileSync(key), cert: readFileSync(cert) };
  } catch (error) {
    throw new Error(
      'The files of QUIETPOUR_TLS_KEY and QUIETPOUR_TLS_CERT cannot be read; check the paths.',
      {
        cause: error,
      },
    );
  }
}
