import { destination, type Logger, pino } from 'pino';

/**
 * What went wrong, for whoever runs the server: JSON on stderr. Never what people wrote, their names, or keys; only
 * which tasting, which kind of thing, and the reason.
 */
export type Log = Pick<Logger, 'error' | 'warn' | 'info' | 'debug'>;

export const stderrLog = (level: string): Log => pino({ level, base: null }, destination(2));
