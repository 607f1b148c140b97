import express, { type Express } from 'express';
import { answerErrors, sendRefusal } from './answers.ts';
import { learnKey } from './asking.ts';
import { deviceReportRoutes } from './device-reports.ts';
import { deviceRoutes } from './devices.ts';
import { keepsakeRoutes } from './keepsake.ts';
import { keyRoutes } from './keys.ts';
import { countAnswers, metricsRoute } from './metrics.ts';
import { openHouseRoutes } from './open-houses.ts';
import { pageRoutes } from './pages.ts';
import type { HttpParts } from './parts.ts';
import { photoPages, photoRoutes } from './photos.ts';
import type { RecapDesk } from './recap/recap-desk.ts';
import { recapRoutes } from './recap/routes.ts';
import { rowForCode } from './row-for-code.ts';
import { screenRoutes } from './screens.ts';
import { seatRoutes } from './seats.ts';
import { ownPagesOnly, securityHeaders } from './security.ts';
import { surveyRoutes } from './surveys.ts';
import { tastingRoutes } from './tastings.ts';

const largestBody = '256kb';

/** Everything that is asked over HTTP. */
export function createSite(parts: HttpParts, recaps: RecapDesk): Express {
  const site = express();
  site.disable('x-powered-by');
  // A reverse proxy on this machine says whom it speaks for; nobody else is believed.
  site.set('trust proxy', 'loopback');
  site.use(countAnswers(parts));
  site.use(securityHeaders(parts.secure));
  site.get('/healthz', (_request, response) => {
    response.set('Cache-Control', 'no-store').json({ ok: true, server: 'quietpour' });
  });
  site.get('/ready', (_request, response) => {
    const ready = parts.ready();
    response
      .status({ yes: 200, no: 503, ending: 404 }[ready])
      .set('Cache-Control', 'no-store')
      .json({ ready: ready === 'yes' });
  });
  site.get('/metrics', metricsRoute(parts));
  site.use('/api', (_request, response, next) => {
    response.set('Cache-Control', 'no-store');
    next();
  });
  site.use('/api', ownPagesOnly(parts.origins), express.json({ limit: largestBody }));
  if (parts.passOn !== undefined) site.use('/api', ...parts.passOn);
  site.use('/api', learnKey(parts.keyring));
  const rowFor = rowForCode(parts);
  site.use('/api', tastingRoutes(parts), keyRoutes(parts), deviceRoutes(parts));
  site.use('/api', seatRoutes(parts, rowFor), keepsakeRoutes(parts));
  site.use(
    '/api',
    openHouseRoutes(parts),
    photoRoutes(parts),
    surveyRoutes(parts, rowFor),
    deviceReportRoutes(parts, rowFor),
    screenRoutes(parts, rowFor),
    recapRoutes(parts, recaps),
  );
  site.use('/api', (_request, response) => sendRefusal(response, 'unknown-event'));
  if (parts.wentMeanwhile !== undefined) site.use('/api', parts.wentMeanwhile);
  site.use(photoPages(parts), pageRoutes(parts.pages));
  site.use((_request, response) => {
    response.status(404).type('text').send('There is nothing at this address; check it with your host.\n');
  });
  site.use(answerErrors(parts.log));
  return site;
}
