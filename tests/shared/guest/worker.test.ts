import { describe, expect, it } from 'vitest';
import { forgetOthers, type Surroundings, takeIn } from '../../../guest/worker/page-cache.ts';
import { kindOf } from '../../../guest/worker/request-kind.ts';
import { answerAsset, answerPage, patience } from '../../../guest/worker/responses.ts';
import { storeName, type Version } from '../../../guest/worker/version.ts';

const origin = 'https://room.test';
const version: Version = {
  build: 'b2',
  language: 'en',
  page: '/en/index.html',
  files: ['/assets/first-1.js', '/assets/board-2.js', '/assets/style-3.css'],
};
const older: Version = { ...version, build: 'b1', files: ['/assets/first-0.js'] };

const pathOf = (asked: RequestInfo | URL): string =>
  new URL(asked instanceof Request ? asked.url : String(asked), origin).pathname;

/** As much of the browser's stores as the worker uses, by the standard's words: added all together or not at all. */
class Stores {
  readonly all = new Map<string, Map<string, Response>>();
  full = false;
  readonly #fetch: (path: string) => Promise<Response>;
  constructor(fetch: (path: string) => Promise<Response>) {
    this.#fetch = fetch;
  }
  async open(name: string) {
    const store = this.all.get(name) ?? new Map<string, Response>();
    this.all.set(name, store);
    const put = async (asked: RequestInfo | URL, answer: Response) => {
      if (this.full) throw new DOMException('There is no room.', 'QuotaExceededError');
      store.set(pathOf(asked), answer);
    };
    return {
      match: async (asked: RequestInfo | URL) => store.get(pathOf(asked))?.clone(),
      put,
      addAll: async (paths: readonly string[]) => {
        const answers = await Promise.all(paths.map(this.#fetch));
        if (answers.some(({ ok }) => !ok)) throw new TypeError('Request failed');
        for (const [index, answer] of answers.entries()) await put(paths[index] ?? '', answer);
      },
    };
  }
  async keys() {
    return [...this.all.keys()];
  }
  async delete(name: string) {
    return this.all.delete(name);
  }
  async match(asked: RequestInfo | URL) {
    for (const store of this.all.values()) {
      const found = store.get(pathOf(asked));
      if (found !== undefined) return found.clone();
    }
    return undefined;
  }
}

/** A server with these files, which can be out of reach. */
function browser(files: Readonly<Record<string, string>>) {
  const asked: string[] = [];
  const network = { answers: async (): Promise<Response | undefined> => undefined };
  const fetch = async (input: RequestInfo | URL): Promise<Response> => {
    const path = pathOf(input);
    asked.push(path);
    const special = await network.answers();
    if (special !== undefined) return special;
    const text = files[path];
    return text === undefined ? new Response('', { status: 404 }) : new Response(text);
  };
  const stores = new Stores(fetch);
  const around = { caches: stores as unknown as CacheStorage, fetch } satisfies Surroundings;
  return { stores, around, asked, network };
}

const built = {
  '/en/index.html': '<script src="/assets/first-1.js"></script>',
  '/seat': 'the page as the server has it',
  ...Object.fromEntries(version.files.map((path) => [path, `content of ${path}`])),
};
const silence = new Promise<Response>(() => undefined);
const atOnce = async (): Promise<void> => undefined;
const never = () => new Promise<void>(() => undefined);
const request = (path: string) => new Request(origin + path);

describe('what the worker looks after', () => {
  const kind = (path: string, more: Partial<Pick<Request, 'method' | 'mode'>> = {}) =>
    kindOf({ method: 'GET', mode: 'navigate', url: new URL(path, origin).href, ...more }, origin);

  it('is the guests’ page at its own addresses, and what it is made of', () => {
    for (const path of ['/', '/?language=de', '/j/ABC123', '/seat', '/seat#t.key'])
      expect(kind(path)).toBe('page');
    expect(kind('/assets/first-1.js', { mode: 'cors' })).toBe('asset');
  });

  it('is never the host’s app, another page, an answer of the server or another site', () => {
    for (const path of [
      '/host',
      '/host/assets/x.js',
      '/survey/ABC123',
      '/screen',
      '/style',
      '/healthz',
      '/jungle',
      '/seats',
    ])
      expect({ path, kind: kind(path) }).toEqual({ path, kind: 'not-ours' });
    expect(kind('/api/keepsake/x', { mode: 'cors' })).toBe('not-ours');
    expect(kind('/photos/x', { mode: 'no-cors' })).toBe('not-ours');
    expect(kind('/socket.io/', { mode: 'cors' })).toBe('not-ours');
    expect(kind('/', { mode: 'cors' })).toBe('not-ours');
    expect(kind('/seat', { method: 'POST' })).toBe('not-ours');
    expect(kind('https://elsewhere.test/assets/first-1.js')).toBe('not-ours');
  });
});

describe('taking a version in', () => {
  it('keeps the page and all its files under the name of build and language', async () => {
    const { around, stores } = browser(built);
    await takeIn(version, around);
    expect([...stores.all.keys()]).toEqual([storeName(version)]);
    expect(new Set(stores.all.get(storeName(version))?.keys())).toEqual(
      new Set([version.page, ...version.files]),
    );
    expect(storeName({ ...version, language: 'de' })).not.toBe(storeName(version));
  });

  it('fails as a whole when a file is missing, or the server has another version by now', async () => {
    const board = '/assets/board-2.js';
    const lacking = browser(Object.fromEntries(Object.entries(built).filter(([path]) => path !== board)));
    await expect(takeIn(version, lacking.around)).rejects.toThrow();
    expect(lacking.stores.all.get(storeName(version))?.has(version.page) ?? false).toBe(false);
    const moved = browser({ ...built, '/en/index.html': '<script src="/assets/first-9.js"></script>' });
    await expect(takeIn(version, moved.around)).rejects.toThrow('another version');
    expect(moved.stores.all.size).toBe(0);
  });

  it('lets go of other versions and languages, and of nobody else’s stores', async () => {
    const { around, stores } = browser(built);
    for (const name of [storeName(older), storeName({ ...version, language: 'de' }), 'of somebody else'])
      await stores.open(name);
    await takeIn(version, around);
    await forgetOthers(version, around);
    expect(new Set(stores.all.keys())).toEqual(new Set(['of somebody else', storeName(version)]));
  });
});

describe('a file named after its content', () => {
  it('is never asked for again, whichever version has kept it', async () => {
    const { around, stores, asked } = browser(built);
    const store = await stores.open(storeName(older));
    await store.put('/assets/first-0.js', new Response('of before'));
    const answer = await answerAsset(request('/assets/first-0.js'), version, around);
    expect([await answer.text(), asked]).toEqual(['of before', []]);
  });

  it('is kept once it has been fetched, but not a failure', async () => {
    const { around, asked } = browser(built);
    for (let turn = 0; turn < 2; turn += 1) {
      const answer = await answerAsset(request('/assets/board-2.js'), version, around);
      expect(await answer.text()).toBe('content of /assets/board-2.js');
      expect((await answerAsset(request('/assets/gone.js'), version, around)).status).toBe(404);
    }
    expect(asked.filter((path) => path.endsWith('board-2.js'))).toHaveLength(1);
    expect(asked.filter((path) => path.endsWith('gone.js'))).toHaveLength(2);
  });

  it('is answered by a device that has no room to keep it', async () => {
    const { around, stores } = browser(built);
    stores.full = true;
    const answer = await answerAsset(request('/assets/board-2.js'), version, around);
    expect(await answer.text()).toBe('content of /assets/board-2.js');
  });
});

describe('the page', () => {
  async function kept() {
    const made = browser(built);
    await takeIn(version, made.around);
    return made;
  }
  const open = async ({ around }: { readonly around: Surroundings }, wait: (ms: number) => Promise<void>) =>
    (await answerPage(request('/seat'), version, around, wait)).text();

  it('is the server’s own while it answers, and is not kept in place of this version’s', async () => {
    const made = await kept();
    expect(await open(made, never)).toBe(built['/seat']);
    made.network.answers = () => Promise.reject(new TypeError('Failed to fetch'));
    expect(await open(made, never)).toBe(built['/en/index.html']);
  });

  it('is the kept one when the server says nothing for too long, or is broken', async () => {
    const made = await kept();
    made.network.answers = () => silence;
    const waited: number[] = [];
    expect(await open(made, async (ms) => void waited.push(ms))).toBe(built['/en/index.html']);
    expect(waited).toEqual([patience]);
    made.network.answers = async () => new Response('', { status: 503 });
    expect(await open(made, never)).toBe(built['/en/index.html']);
  });

  it('is the server’s refusal where it refuses on purpose', async () => {
    const made = await kept();
    made.network.answers = async () => new Response('not here', { status: 404 });
    expect(await open(made, never)).toBe('not here');
  });

  it('waits for the network where nothing was kept', async () => {
    const made = browser(built);
    expect(await open(made, atOnce)).toBe(built['/seat']);
    made.network.answers = () => Promise.reject(new TypeError('Failed to fetch'));
    await expect(open(made, atOnce)).rejects.toThrow('Failed to fetch');
  });
});
