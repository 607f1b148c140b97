import type { IncomingMessage } from 'node:http';
import type { RequestHandler } from 'express';
import helmet from 'helmet';
import { originAllowed } from '../access/origin.ts';
import { Refused } from './answers.ts';

/** Older phones do not count a WebSocket to the same address as 'self', so that it is named. */
const ownSockets = ({ headers: { host = '' } }: IncomingMessage): string =>
  /^[A-Za-z0-9.\-:[\]]+$/.test(host) ? `ws://${host} wss://${host}` : "'self'";

/**
 * Headers that keep pages to themselves. Nothing inline, nothing from elsewhere. What only makes sense over https would
 * break plain http on a local network, so it goes by mode.
 */
const headers = (secure: boolean, framedBy: "'none'" | "'self'"): RequestHandler =>
  helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        mediaSrc: ["'self'", 'data:', 'blob:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'", (request) => ownSockets(request)],
        manifestSrc: ["'self'"],
        workerSrc: ["'self'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameSrc: ["'self'"],
        frameAncestors: [framedBy],
        objectSrc: ["'none'"],
      },
    },
    // Only for this name: what else its owner runs is not ours to decide.
    strictTransportSecurity: secure && { maxAge: 31_536_000, includeSubDomains: false },
    crossOriginOpenerPolicy: secure,
    originAgentCluster: secure,
    crossOriginEmbedderPolicy: false,
    xFrameOptions: { action: framedBy === "'self'" ? 'sameorigin' : 'deny' },
  });

/**
 * The host's page shows the screen's as a small picture of what the room sees. A screen takes nothing from anybody, so there
 * is nothing to be tricked into; no other page may be framed, and none by another site.
 */
export function securityHeaders(secure: boolean): RequestHandler {
  const [alone, framed] = [headers(secure, "'none'"), headers(secure, "'self'")];
  return (request, response, next) =>
    (/^\/screen(\/|$)/.test(request.path) ? framed : alone)(request, response, next);
}

/** Nothing can be asked from a page of another site, although there is no cookie that opens anything. */
export const ownPagesOnly =
  (origins: readonly string[]): RequestHandler =>
  ({ headers }, _response, next) => {
    if (!originAllowed(headers.origin, headers.host, origins)) throw new Refused('foreign-origin');
    next();
  };
