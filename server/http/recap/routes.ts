import { Router } from 'express';
import { hostedTasting } from '../asking.ts';
import type { HttpParts } from '../parts.ts';
import { recapCsv } from './recap-csv.ts';
import { exportOf, recapOf } from './recap-of.ts';

/** What a host takes home; nothing of a page that its guest keeps private. */
export function recapRoutes(parts: HttpParts): Router {
  const router = Router();
  router.get('/tastings/:tasting/recap', (request, response) => {
    response.json(recapOf(parts, hostedTasting(request, parts.keyring)));
  });
  router.get('/tastings/:tasting/recap.json', (request, response) => {
    const file = exportOf(parts, hostedTasting(request, parts.keyring));
    response.attachment('recap.json').json(file);
  });
  router.get('/tastings/:tasting/recap.csv', (request, response) => {
    const file = exportOf(parts, hostedTasting(request, parts.keyring));
    response.attachment('recap.csv').type('text/csv').send(recapCsv(file));
  });
  return router;
}
