import { type Request, Router } from 'express';
import { hostedTasting } from '../asking.ts';
import type { HttpParts } from '../parts.ts';
import type { RecapDesk } from './recap-desk.ts';
import { recapMaterial } from './recap-material.ts';
import type { RecapMaterial } from './recap-text.ts';
import { RecapReleases } from './release.ts';

/** What a host takes home; nothing of a page that its guest keeps private. */
export function recapRoutes(parts: HttpParts, desk: RecapDesk): Router {
  const router = Router();
  const releases = new RecapReleases(parts.store.releases, desk);
  const made = async (request: Request, form: RecapMaterial['form']): Promise<string> => {
    const tasting = hostedTasting(request, parts.keyring);
    return releases.make(tasting, () => recapMaterial(parts, tasting, form));
  };
  router.get('/tastings/:tasting/recap', async (request, response) => {
    response.type('json').send(await made(request, 'recap'));
  });
  router.get('/tastings/:tasting/recap.json', async (request, response) => {
    // Made before anything is said of a file: a refusal is no attachment.
    const json = await made(request, 'json');
    response.attachment('recap.json').type('json').send(json);
  });
  router.get('/tastings/:tasting/recap.csv', async (request, response) => {
    const csv = await made(request, 'csv');
    response.attachment('recap.csv').type('text/csv').send(csv);
  });
  return router;
}
