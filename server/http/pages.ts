import { existsSync } from 'node:fs';
import { join } from 'node:path';
import express, { type RequestHandler, type Response, Router } from 'express';

const notBuilt =
  'The pages are not built yet: run "npm run build" where Quietpour is installed, then load this page again.\n';

/** What stands beside the guests' app, each a page of its own so that none weighs on another; by where its address begins. */
const besideTheGuests: ReadonlyMap<string, string> = new Map([
  ['survey', 'survey.html'],
  ['screen', 'screen.html'],
  ['style', 'style.html'],
]);

/** The two apps. A path that is no file is a place within the app, so that its page answers. */
export function pageRoutes(folder: string): Router {
  const router = Router();
  router.use('/host', app(join(folder, 'host'), new Map()));
  router.use('/', app(join(folder, 'guest'), besideTheGuests));
  return router;
}

function app(folder: string, beside: ReadonlyMap<string, string>): Router {
  const router = Router();
  // The bundler puts a hash of the content into the names of these files.
  const forGood = { immutable: true, maxAge: '1y', index: false, redirect: false } as const;
  router.use('/assets', express.static(join(folder, 'assets'), forGood));
  router.use(express.static(folder, { index: false, redirect: false, setHeaders: askFirst }));
  router.get('/{*place}', page(folder, beside));
  return router;
}

const askFirst = (response: Pick<Response, 'setHeader'>): void => {
  response.setHeader('Cache-Control', 'no-cache');
};

const page =
  (folder: string, beside: ReadonlyMap<string, string>): RequestHandler =>
  (request, response, next) => {
    if (/\.[A-Za-z0-9]+$/.test(request.path)) return next();
    const file = beside.get(request.path.split('/')[1] ?? '') ?? 'index.html';
    if (!existsSync(join(folder, file))) {
      response.status(503).type('text').send(notBuilt);
      return;
    }
    askFirst(response);
    response.sendFile(file, { root: folder, cacheControl: false });
  };
