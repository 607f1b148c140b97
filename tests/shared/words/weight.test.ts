import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { languagesOf } from '../../support/languages.ts';

const words = new URL('../../../shared/words/', import.meta.url).pathname;

/** What a phone fetches for one drink: board, text, swatches, search and the closing words, minified and gzipped. */
async function weightOf(language: string, drink: string): Promise<number> {
  const files = [
    `${drink}.ts`,
    `${language}/${drink}.ts`,
    'search.ts',
    'word-sheet.ts',
    'closing.ts',
    `${language}/closing.ts`,
  ];
  const entry = files.map((file) => `export * from '${words}${file}';`).join('\n');
  const built = await build({
    configFile: false,
    logLevel: 'error',
    plugins: [
      {
        name: 'entry',
        resolveId: (id) => (id === 'virtual:entry' ? id : null),
        load: (id) => (id === 'virtual:entry' ? entry : null),
      },
    ],
    build: {
      write: false,
      rollupOptions: { input: 'virtual:entry', preserveEntrySignatures: 'strict' },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (first === undefined || !('output' in first)) throw new Error('nothing was built');
  const code = first.output.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')).join('');
  expect(code).toContain('fades-gently');
  return gzipSync(code, { level: 9 }).length;
}

describe.each(languagesOf('shared/words'))('all words in %s', (language) => {
  it.each(['spirit', 'wine', 'beer'])('for %s stay within their weight on a phone', async (drink) => {
    // English words are their own codes; every other language travels beside them. The trade's marks cost 0.2 kB.
    expect(await weightOf(language, drink)).toBeLessThan(language === 'en' ? 3700 : 5000);
  });
});
