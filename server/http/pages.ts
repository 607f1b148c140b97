import { existsSync } from 'node:fs';
import { join } from 'node:path';
import express, { type RequestHandler, type Response, Router } from 'express';

const notBuilt =
  'The pages are not built yet: run "npm run build" where Quietpour is installed, then load this page again.\n';

/** The two apps. A path that is no file is a place within the app, so that its page answers. */
export function pageRoutes(folder: string): Router {
  const router = Router();
  router.use('/host', app(join(folder, 'host')));
  router.use('/', app(join(folder, 'guest')));
  return router;
}

function app(folder: string): Router {
  const router = Router();
  // The bundler puts a hash of the content into the names of these files.
  const forGood = { immutable: true, maxAge: '1y', index: false, redirect: false } as const;
  router.use('/assets', express.static(join(folder, 'assets'), forGood));
  router.use(express.static(folder, { index: false, redirect: false, setHeaders: askFirst }));
  router.get('/{*place}', page(folder));
  return router;
}

const askFirst = (response: Pick<Response, 'setHeader'>): void => {
  response.setHeader('Cache-Control', 'no-cache');
};

const page =
  (folder: string): RequestHandler =>
  (request, response, next) => {
    if (/\.[A-Za-z0-9]+$/.test(request.path)) return next();
    if (!existsSync(join(folder, 'index.html'))) {
      response.status(503).type('text').send(notBuilt);
      return;
    }
    askFirst(response);
    response.sendFile('index.html', { root: folder, cacheControl: false });
  };
