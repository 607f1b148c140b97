import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { House } from './support/house.ts';
import { temporaryFolder } from './support/process.ts';

let house: House;
let folder: ReturnType<typeof temporaryFolder>;
beforeAll(async () => {
  folder = temporaryFolder();
  for (const app of ['guest', 'host']) {
    for (const inside of ['assets', 'en', 'de'])
      mkdirSync(join(folder.path, app, inside), { recursive: true });
    writeFileSync(join(folder.path, app, 'en', 'index.html'), `<title>${app}</title>`);
    writeFileSync(join(folder.path, app, 'de', 'index.html'), `<title>${app}, deutsch</title>`);
    writeFileSync(join(folder.path, app, 'assets', 'page-1a2b3c.js'), `// ${app}`);
  }
  for (const page of ['survey', 'device-check', 'style', 'screen']) {
    writeFileSync(join(folder.path, 'guest', 'en', `${page}.html`), `<title>${page}</title>`);
  }
  const packed = join(folder.path, 'guest', 'assets', 'packed-4d5e6f.js');
  writeFileSync(packed, '// packed');
  writeFileSync(`${packed}.gz`, gzipSync('// packed'));
  writeFileSync(join(folder.path, 'guest', 'worker.en.js'), '// worker');
  writeFileSync(join(folder.path, 'guest', 'en', 'manifest.webmanifest'), '{}');
  writeFileSync(join(folder.path, 'secret.txt'), 'beside the pages');
  house = await House.open({ pages: folder.path });
});
afterAll(async () => {
  await house.close();
  folder.remove();
});

const get = async (path: string) => {
  const answer = await fetch(house.url + path);
  return { status: answer.status, cache: answer.headers.get('cache-control'), text: await answer.text() };
};

describe('pages', () => {
  it('answer every place within an app with its page, asked for anew each time', async () => {
    for (const path of ['/', '/j/ABC123', '/seat/anything']) {
      expect(await get(path)).toEqual({ status: 200, cache: 'no-cache', text: '<title>guest</title>' });
    }
    for (const path of ['/host', '/host/', '/host/plan/x']) {
      expect(await get(path)).toEqual({ status: 200, cache: 'no-cache', text: '<title>host</title>' });
    }
  });

  it('beside the apps answer under addresses of their own, and under no others', async () => {
    for (const [path, title] of [
      ['/survey/ABC123', 'survey'],
      ['/survey', 'survey'],
      ['/kit/ABC123', 'device-check'],
      ['/style', 'style'],
      ['/screen', 'screen'],
      ['/screen/ABC123', 'screen'],
      ['/surveys', 'guest'],
      ['/j/survey', 'guest'],
      ['/host/survey', 'host'],
    ]) {
      expect(await get(path ?? '')).toEqual({
        status: 200,
        cache: 'no-cache',
        text: `<title>${title}</title>`,
      });
    }
  });

  it('have a worker that may look after every address, is asked for anew each time, and runs nothing from elsewhere', async () => {
    const { headers, status } = await fetch(`${house.url}/worker.en.js`);
    expect(status).toBe(200);
    expect(headers.get('content-type')).toMatch(/^text\/javascript\b/);
    expect(headers.get('cache-control')).toBe('no-cache');
    expect(headers.get('content-security-policy')).toMatch(/worker-src 'self'(;|$)/);
    // Its scope is the folder it lies in, the top, without the server widening it.
    expect(headers.get('service-worker-allowed')).toBeNull();
    const unknown = await fetch(`${house.url}/worker.xx.js`);
    expect(unknown.status).toBe(404);
  });

  it('have a manifest that browsers take for one', async () => {
    const { headers } = await fetch(`${house.url}/en/manifest.webmanifest`);
    expect(headers.get('content-type')).toMatch(/^application\/manifest\+json\b/);
    expect(headers.get('cache-control')).toBe('no-cache');
  });

  it('keep what is named after its content for good', async () => {
    for (const app of ['guest', 'host']) {
      const path = `${app === 'host' ? '/host' : ''}/assets/page-1a2b3c.js`;
      expect(await get(path)).toEqual({
        status: 200,
        cache: 'public, max-age=31536000, immutable',
        text: `// ${app}`,
      });
    }
  });

  it('are packed for whoever takes that, and as they are for who does not', async () => {
    const asked = async (accepted: string, path: string) => {
      const { headers, status } = await fetch(house.url + path, { headers: { 'accept-encoding': accepted } });
      return {
        status,
        packed: headers.get('content-encoding'),
        type: headers.get('content-type')?.split(';')[0],
        cache: headers.get('cache-control'),
        vary: headers.get('vary'),
      };
    };
    const path = '/assets/packed-4d5e6f.js';
    const same = { status: 200, type: 'text/javascript', cache: 'public, max-age=31536000, immutable' };
    const vary = 'Accept-Encoding';
    expect(await asked('gzip, br', path)).toEqual({ ...same, packed: 'gzip', vary });
    expect(await asked('identity', path)).toEqual({ ...same, packed: null, vary });
    expect(await asked('br, gzip;q=0', path)).toEqual({ ...same, packed: null, vary });
    expect(await asked('gzip', '/assets/page-1a2b3c.js')).toMatchObject({ status: 200, packed: null });
    for (const accepted of ['gzip', 'identity']) {
      const answer = await fetch(house.url + path, { headers: { 'accept-encoding': accepted } });
      expect(await answer.text()).toBe('// packed');
    }
  });

  it('give nothing else, and say so', async () => {
    for (const path of [
      '/assets/gone.js',
      '/host/assets/gone.js',
      '/..%2fsecret.txt',
      '/assets/..%2f..%2f..%2fsecret.txt',
      '/..%2fsecret.txt?language=..',
    ]) {
      const { status, text } = await get(path);
      expect({
        path,
        ok: status === 200 && !text.includes('<title>'),
        secret: text.includes('beside'),
      }).toEqual({
        path,
        ok: false,
        secret: false,
      });
    }
    expect((await get('/assets/gone.js')).status).toBe(404);
  });
});

describe('the language of a page', () => {
  const ask = async (path: string, headers: Record<string, string> = {}) => {
    const answer = await fetch(house.url + path, { headers });
    const { headers: told } = answer;
    return {
      status: answer.status,
      language: told.get('content-language'),
      cookie: told.get('set-cookie'),
      vary: told.get('vary'),
      etag: told.get('etag'),
      text: await answer.text(),
    };
  };
  const languageFor = async (path: string, headers?: Record<string, string>) =>
    (await ask(path, headers)).language;

  it('is the best of what the browser accepts, by its weights', async () => {
    for (const [accepts, language] of [
      ['de', 'de'],
      ['de-AT, en;q=0.9', 'de'],
      ['en;q=0.5, de;q=0.8', 'de'],
      ['fr, de;q=0.2, en;q=0.6', 'en'],
      ['de;q=0, en', 'en'],
      ['fr', 'en'],
      ['*', 'en'],
      ['', 'en'],
      ['../../secret;q=1', 'en'],
    ] as const) {
      expect([accepts, await languageFor('/j/ABC123', { 'accept-language': accepts })]).toEqual([
        accepts,
        language,
      ]);
    }
    const german = await ask('/host', { 'accept-language': 'de' });
    expect(german).toMatchObject({ text: '<title>host, deutsch</title>', vary: expect.any(String) });
    expect(german.vary?.split(', ')).toEqual(expect.arrayContaining(['Accept-Language', 'Cookie']));
    expect(german.cookie).toBeNull();
  });

  it('is what was chosen, at once and from then on', async () => {
    const chosen = await ask('/j/ABC123?language=de', { cookie: 'language=en', 'accept-language': 'en' });
    expect(chosen).toMatchObject({ language: 'de', text: '<title>guest, deutsch</title>' });
    expect(chosen.cookie).toMatch(/^language=de; Max-Age=\d+; Path=\/; Expires=[^;]+; SameSite=Lax$/);
    const later = { cookie: 'other=1; language=de', 'accept-language': 'en' };
    expect(await ask('/host', later)).toMatchObject({ language: 'de', cookie: null });
    expect(await languageFor('/', { cookie: 'language=en', 'accept-language': 'de' })).toBe('en');
  });

  it('is never anything that is not there', async () => {
    for (const wish of ['fr', '..', '..%2f..', 'assets', 'de%2f..%2f..', 'DE', '', 'en&language=de']) {
      expect(await ask(`/?language=${wish}`), wish).toMatchObject({
        status: 200,
        language: 'en',
        cookie: null,
      });
    }
    expect(await languageFor('/', { cookie: 'language=../..', 'accept-language': 'de' })).toBe('de');
    expect(await ask('/style', { cookie: 'language=de' })).toMatchObject({
      language: 'en',
      text: '<title>style</title>',
    });
  });

  it('is not taken for another one by what a browser keeps', async () => {
    // Of one size and one age, as two pages that were built together can be.
    for (const [language, title] of [
      ['en', 'survey'],
      ['de', 'fragen'],
    ] as const) {
      const file = join(folder.path, 'guest', language, 'survey.html');
      writeFileSync(file, `<title>${title}</title>`);
      utimesSync(file, 1_700_000_000, 1_700_000_000);
    }
    const english = await ask('/survey', { cookie: 'language=en' });
    // Without the last one this client of HTTP would ask for an answer from nobody's store.
    const same = {
      cookie: 'language=en',
      'if-none-match': english.etag ?? '',
      'cache-control': 'max-age=0',
    };
    expect((await ask('/survey', same)).status).toBe(304);
    const german = await ask('/survey', { ...same, cookie: 'language=de' });
    expect(german).toMatchObject({ status: 200, language: 'de', text: '<title>fragen</title>' });
  });
});
