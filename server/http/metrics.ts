import type { RequestHandler } from 'express';
import { Refused } from './answers.ts';
import { identityOf } from './asking.ts';
import type { HttpParts } from './parts.ts';

const format = 'text/plain; version=0.0.4; charset=utf-8';

/** Figures for programs on this machine, and elsewhere for who holds the house key. */
export const metricsRoute =
  ({ keyring, metrics, standing }: HttpParts): RequestHandler =>
  (request, response) => {
    if (!isLoopback(request.ip)) {
      const identity = identityOf(request, keyring);
      if (identity.role !== 'house') throw new Refused('wrong-role');
      // The figures are of the whole server, which other houses are told nothing of.
      if (identity.house !== undefined) throw new Refused('wrong-key');
    }
    response.set('Cache-Control', 'no-store').set('Content-Type', format).send(metrics.read(standing()));
  };

/** As a proxy on this machine reports it, when there is one. */
const isLoopback = (address: string | undefined): boolean =>
  address !== undefined && /^(::1|(::ffff:)?127\.\d+\.\d+\.\d+)$/.test(address);

/** Counts every answer once it has gone out. */
export const countAnswers =
  ({ metrics }: HttpParts): RequestHandler =>
  (request, response, next) => {
    const { path } = request;
    const place = path.startsWith('/api/')
      ? 'api'
      : /^\/(healthz|metrics|ready)$/.test(path)
        ? 'health'
        : 'page';
    response.once('finish', () => metrics.answered(place, response.statusCode));
    next();
  };
