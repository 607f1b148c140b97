import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import express, { type RequestHandler, type Response, Router } from 'express';
import { languageCookie, languageOf } from './language-of.ts';
import { packed } from './packed.ts';

const notBuilt =
  'The pages are not built yet: run "npm run build" where Quietpour is installed, then load this page again.\n';

/** What stands beside the guests' app, each a page of its own so that none weighs on another; by where its address begins. */
const besideTheGuests: ReadonlyMap<string, string> = new Map([
  ['survey', 'survey.html'],
  ['kit', 'device-check.html'],
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

/** In its folder, `assets` is for all languages, and each language has a folder with its pages. */
function app(folder: string, beside: ReadonlyMap<string, string>): Router {
  const router = Router();
  // The bundler puts a hash of the content into the names of these files.
  const forGood = { immutable: true, maxAge: '1y', index: false, redirect: false } as const;
  const assets = join(folder, 'assets');
  router.use('/assets', packed(assets), express.static(assets, forGood));
  router.use(express.static(folder, { index: false, redirect: false, setHeaders: askFirst }));
  router.get('/{*place}', page(folder, beside));
  return router;
}

const askFirst = (response: Pick<Response, 'setHeader'>): void => {
  response.setHeader('Cache-Control', 'no-cache');
};

const aYear = 365 * 24 * 60 * 60 * 1000;

function page(folder: string, beside: ReadonlyMap<string, string>): RequestHandler {
  return (request, response, next) => {
    if (/\.[A-Za-z0-9]+$/.test(request.path)) return next();
    const file = beside.get(request.path.split('/')[1] ?? '') ?? 'index.html';
    const languages = languagesWith(folder, file);
    if (languages.length === 0) {
      response.status(503).type('text').send(notBuilt);
      return;
    }
    const { language, chosen } = languageOf(request, languages);
    if (chosen) {
      const kept = { path: '/', sameSite: 'lax', secure: request.secure, maxAge: aYear } as const;
      response.cookie(languageCookie, language, kept);
    }
    askFirst(response);
    response.vary('Accept-Language').vary('Cookie').set('Content-Language', language);
    // One address has a page for each language: by its size and age alone a browser could take one for another.
    const { size, mtimeMs } = statSync(join(folder, language, file));
    response.set('ETag', `"${language}-${size.toString(36)}-${Math.round(mtimeMs).toString(36)}"`);
    response.sendFile(file, { root: join(folder, language), cacheControl: false, etag: false });
  };
}

/** The languages in which this page stands there. */
function languagesWith(folder: string, file: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder).filter((name) => existsSync(join(folder, name, file)));
}
