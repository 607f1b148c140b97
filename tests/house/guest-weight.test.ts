import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { languages } from '../../shared/build/one-language.ts';

/** What a guest's phone loads before the first word: built as it is shipped, and weighed as it travels. */
const root = new URL('../..', import.meta.url).pathname;

/**
 * Bytes after gzip. A drawer of words or pictures more should be a decision, not an accident. A quarter of the first
 * script is the Socket.IO client, which knows poor networks better than one of our own would. The screen that is locked
 * to the room comes while the line opens and weighs in what comes later; polling comes only where no WebSocket gets through. The room's
 * results and guesses, which go home on every page and file of the keepsake, cost 0.7 of later; to hold the choices of a talk
 * in place costs 0.4.
 * The call is for phones at home, which fetch it beside; its styles, 0.7, come with all others, for a part never comes without,
 * and what it shares with the table, 0.4, weighs in what comes later. That a device may be the call alone costs 0.1 of each. The host's words, to be read at home, are a part too.
 * The strokes of icons, 1.3, come with the room and not before it.
 */
const budget = { script: 42_200, style: 8_500, later: 49_000, guesses: 6_900, call: 10_000, captions: 5_500 };

interface Shipped {
  readonly name: string;
  readonly text: string;
  readonly bytes: number;
}

interface Manifest {
  readonly icons: readonly Readonly<Record<'src' | 'sizes' | 'type' | 'purpose', string>>[];
}

let shipped: readonly Shipped[] = [];
const pictures = new Map<string, Buffer>();
let modules: readonly string[] = [];

beforeAll(async () => {
  vi.stubEnv('NODE_ENV', 'production');
  const built = await build({
    configFile: join(root, 'guest/vite.config.ts'),
    logLevel: 'silent',
    build: { write: false },
  });
  vi.unstubAllEnvs();
  const outputs = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  shipped = outputs.map((each) => {
    if (each.type === 'asset' && each.fileName.endsWith('.png'))
      pictures.set(each.fileName, Buffer.from(each.source));
    const text = each.type === 'chunk' ? each.code : Buffer.from(each.source).toString('utf8');
    return { name: each.fileName, text, bytes: gzipSync(text).length };
  });
  modules = outputs.flatMap((each) => (each.type === 'chunk' ? Object.keys(each.modules) : []));
}, 30_000);

async function builtIn(language: string) {
  vi.stubEnv('NODE_ENV', 'production');
  const built = await build({
    configFile: join(root, 'guest/vite.config.ts'),
    mode: `guest.${language}`,
    logLevel: 'silent',
    build: { write: false },
  });
  vi.unstubAllEnvs();
  const outputs = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  const page = outputs.find(({ fileName }) => fileName.endsWith('index.html'));
  return {
    html: page?.type === 'asset' ? String(page.source) : '',
    chunks: outputs.flatMap((each) =>
      each.type === 'chunk' ? [{ name: each.fileName, code: each.code }] : [],
    ),
  };
}

const named = (ending: string): readonly Shipped[] => shipped.filter(({ name }) => name.endsWith(ending));

describe('what a guest’s phone loads', () => {
  const page = () => named('index.html')[0]?.text ?? '';
  const first = (ending: string) => named(ending).filter(({ name }) => page().includes(name));
  const weight = (files: readonly Shipped[]) => files.reduce((sum, { bytes }) => sum + bytes, 0);

  it('is within its budgets before somebody sits down', () => {
    expect(weight(first('.js'))).toBeLessThan(budget.script);
    expect(first('.css')).toHaveLength(1);
    expect(weight(first('.css'))).toBeLessThan(budget.style);
  });

  it('is no heavier in another language', async () => {
    for (const language of languages.filter((each) => each !== 'en')) {
      const { html, chunks } = await builtIn(language);
      const bytes = chunks.filter(({ name }) => html.includes(name)).map(({ code }) => gzipSync(code).length);
      expect({ language, scripts: bytes.length }).toEqual({ language, scripts: 1 });
      expect(bytes[0]).toBeLessThan(budget.script);
    }
  });

  it('leaves the word boards, the table and the way home for later, and carries one drink of them', () => {
    const early = first('.js')
      .map(({ text }) => text)
      .join();
    for (const word of ['toffee-apple', 'Who speaks when', 'my-tasting-notes']) {
      expect(early).not.toContain(word);
      expect(named('.js').some(({ text }) => text.includes(word))).toBe(true);
    }
    const others = named('.js').filter(
      ({ name }) => !/\/(wine|beer|guess|call-part|host-says|polling)-|^worker/.test(name),
    );
    expect(weight(others) - weight(first('.js'))).toBeLessThan(budget.later);
    for (const [part, most] of [
      ['guess', budget.guesses],
      ['call-part', budget.call],
      ['host-says', budget.captions],
    ] as const)
      expect(weight(named('.js').filter(({ name }) => name.includes(`/${part}-`)))).toBeLessThan(most);
  });

  it('carries no polling, no binary messages and no screen of the room in the first script', () => {
    const early = first('.js')
      .map(({ text }) => text)
      .join();
    for (const word of ['xhr poll error', '_placeholder', 'room-main']) {
      expect({ word, early: early.includes(word) }).toEqual({ word, early: false });
    }
    const polling = named('.js').filter(({ text }) => text.includes('xhr poll error'));
    expect(polling).toHaveLength(1);
    expect(weight(polling)).toBeLessThan(2000);
  });

  it('has no font, and nothing from another address', () => {
    expect(shipped.map(({ name }) => name).filter((name) => /\.(woff2?|ttf|otf)$/.test(name))).toEqual([]);
    for (const { name, text } of named('.css')) expect(text, name).not.toMatch(/@font-face|https?:/);
    for (const { name, text } of named('.html')) expect(text, name).not.toMatch(/(src|href)="https?:/);
  });

  it('carries no schema library, no plan, no session, and the host’s words in a part for who is at home only', () => {
    const core = modules
      .filter((id) => id.startsWith(join(root, 'core/')))
      .map((id) => id.slice(root.length));
    expect(core.toSorted()).toEqual([
      'core/call/call-gates.ts',
      'core/formula-guard.ts',
      'core/ids.ts',
      'core/panel/guess/brier.ts',
      'core/panel/guess/guess.ts',
      'core/panel/guess/nearness.ts',
      'core/panel/guess/trend.ts',
      // In the part with the host's words for who is at home.
      'core/running-order/cue.ts',
      'core/text.ts',
      'core/time-of-day.ts',
      'core/units.ts',
    ]);
    const script = named('.js').filter(({ text }) => text.includes('Move it around your whole mouth'));
    expect(script.map(({ name }) => /\/host-says-/.test(name))).toEqual([true]);
    // Where the checkout lies says nothing: its own folder may be called host.
    const within = modules.map((id) => id.replace(root, '/'));
    expect(
      within.filter((id) => /node_modules\/zod|^\/host\/|language\/en\/(host(?!-script)|say)/.test(id)),
    ).toEqual([]);
  });

  it('needs no script or style inside the page, so that a strict policy can refuse them', () => {
    expect(page()).not.toMatch(/<script(?![^>]*\ssrc=)[^>]*>|<style|\sstyle=|\son[a-z]+=/i);
    expect(page()).toMatch(/<noscript>/);
  });

  it('can be put on a home screen: a manifest with pictures of the sizes it names', () => {
    const [path] = /rel="manifest" href="\/([^"]+)"/.exec(page())?.slice(1) ?? [];
    const manifest = JSON.parse(named(path ?? 'no manifest')[0]?.text ?? '{}') as Manifest;
    expect(manifest).toMatchObject({
      id: '/',
      start_url: '/',
      scope: '/',
      display: 'standalone',
      lang: 'en',
    });
    expect(manifest.icons.map(({ purpose }) => purpose)).toEqual(['any', 'any', 'maskable']);
    for (const { src, sizes, type } of manifest.icons) {
      const picture = pictures.get(src.slice(1));
      // The first chunk of a PNG holds width and height (PNG specification, 11.2.1).
      const drawn = picture && `${picture.readUInt32BE(16)}x${picture.readUInt32BE(20)}`;
      expect({ src, drawn, type }).toEqual({ src, drawn: sizes, type: 'image/png' });
    }
    expect(page()).toMatch(
      /name="theme-color" content="#[0-9a-f]{6}" media="\(prefers-color-scheme: dark\)"/,
    );
  });

  it('has a worker, in one piece, that keeps everything the page may fetch, and the page of its own language', () => {
    const worker = named('worker.en.js')[0]?.text ?? '';
    expect(worker).not.toMatch(/\bimport\b|\bexport\b/);
    expect(worker).toContain('/en/index.html');
    const files = shipped.map(({ name }) => name).filter((name) => /^assets\/.*\.(js|css)$/.test(name));
    expect(files.length).toBeGreaterThan(5);
    for (const name of files) expect(worker).toContain(`/${name}`);
    // The script comes first. The list may have been written as one text, to be split.
    expect(/files:\s*\[?[`"']([^`"',]+)/.exec(worker)?.[1]).toBe(`/${first('.js')[0]?.name}`);
  });
});
