import { readFileSync } from 'node:fs';
import { isAbsolute, resolve } from 'node:path';
import { createSecureContext } from 'node:tls';

/** What the environment says about how to run, as plain values. */
export interface Settings {
  readonly port: number;
  readonly host: string | undefined;
  /** Folder for everything that is kept. */
  readonly data: string;
  readonly origins: readonly string[];
  readonly tls: { readonly key: Buffer; readonly cert: Buffer } | undefined;
  readonly logLevel: string;
  /** How many may sit at one table. */
  readonly seatLimit: number;
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
  return {
    port,
    seatLimit,
    keepDays: QUIETPOUR_KEEP_DAYS ? Number(QUIETPOUR_KEEP_DAYS) : undefined,
    host: HOST === '' ? undefined : HOST,
    data: isAbsolute(QUIETPOUR_DATA) ? QUIETPOUR_DATA : resolve(QUIETPOUR_DATA),
    origins: QUIETPOUR_ORIGINS.split(/[\s,]+/).flatMap((origin) => (origin === '' ? [] : [checked(origin)])),
    tls: tlsFrom(environment.QUIETPOUR_TLS_KEY, environment.QUIETPOUR_TLS_CERT),
    logLevel,
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
