import type { ErrorRequestHandler, Response } from 'express';
import type { RefusalCode } from '../../shared/wire/protocol.ts';
import type { Log } from '../log.ts';
import { refusal } from '../refusal.ts';
import { SetAside } from '../store/set-aside.ts';
import { StoreFailure } from '../store/store.ts';

const statuses: Partial<Record<RefusalCode, number>> = {
  malformed: 400,
  'plan-invalid': 422,
  'doubled-id': 422,
  'no-farewell': 422,
  'wrong-key': 401,
  'wrong-role': 403,
  'foreign-origin': 403,
  'doors-closed': 403,
  'not-seated': 403,
  'notes-closed': 403,
  'wrong-code': 404,
  'unknown-event': 404,
  'no-such-tasting': 404,
  'no-such-seat': 404,
  'too-large': 413,
  'not-a-photo': 415,
  'too-many-tries': 429,
  'too-fast': 429,
  'too-many-houses': 429,
  'not-stored': 503,
  'set-aside': 503,
};

/** A request that cannot be granted; becomes a `Refusal` with the status that fits it, 409 where none is named. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly code: RefusalCode;

  constructor(code: RefusalCode, sentence?: string) {
    super(sentence ?? refusal(code).message);
    this.code = code;
  }
}

/** Nothing was done, because another process has the evening or is about to: a page asks the same again by itself. */
export class ComeAgain extends Refused {
  constructor() {
    super('not-stored');
  }
}

/** In s: as long as it takes to find another process, whose name the next request learns. */
const comeAgainAfter = '1';

export function sendRefusal(response: Response, code: RefusalCode, sentence?: string): void {
  response.status(statuses[code] ?? 409).json(refusal(code, sentence));
}

/** Every error of every route ends here: one short sentence, and nothing of what was sent in the log. */
export const answerErrors =
  (log: Log): ErrorRequestHandler =>
  (error: unknown, request, response, _next) => {
    if (response.headersSent) {
      // Express's own last resort would print the error as it is.
      log.error({ method: request.method, reason: nameOf(error) }, 'an answer broke off');
      response.destroy();
      return;
    }
    if (error instanceof ComeAgain) response.set('Retry-After', comeAgainAfter);
    if (error instanceof Refused) return sendRefusal(response, error.code, error.message);
    if (error instanceof StoreFailure) {
      log.error({ reason: error.message }, 'not stored');
      return sendRefusal(response, error instanceof SetAside ? 'set-aside' : 'not-stored');
    }
    const status = statusOf(error);
    if (status === 413) return sendRefusal(response, 'too-large');
    if (status !== undefined && status >= 400 && status < 500) return sendRefusal(response, 'malformed');
    log.error({ method: request.method, reason: nameOf(error) }, 'a request could not be answered');
    return sendRefusal(response, 'not-stored');
  };

/** Express and its parsers put the status on their errors. */
function statusOf(error: unknown): number | undefined {
  const status = typeof error === 'object' && error !== null && 'status' in error ? error.status : undefined;
  return typeof status === 'number' ? status : undefined;
}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : 'unknown');
