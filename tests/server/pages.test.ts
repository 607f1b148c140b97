import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { House } from './support/house.ts';
import { temporaryFolder } from './support/process.ts';

let house: House;
let folder: ReturnType<typeof temporaryFolder>;
beforeAll(async () => {
  folder = temporaryFolder();
  for (const app of ['guest', 'host']) {
    mkdirSync(join(folder.path, app, 'assets'), { recursive: true });
    writeFileSync(join(folder.path, app, 'index.html'), `<title>${app}</title>`);
    writeFileSync(join(folder.path, app, 'assets', 'page-1a2b3c.js'), `// ${app}`);
  }
  for (const page of ['survey', 'style', 'screen']) {
    writeFileSync(join(folder.path, 'guest', `${page}.html`), `<title>${page}</title>`);
  }
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

  it('give nothing else, and say so', async () => {
    for (const path of [
      '/assets/gone.js',
      '/host/assets/gone.js',
      '/..%2fsecret.txt',
      '/assets/..%2f..%2f..%2fsecret.txt',
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
