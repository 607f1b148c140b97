import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { expect, it } from 'vitest';

const words = new URL('../../../shared/words/', import.meta.url).pathname;

/** What a phone fetches for one drink: board, text, swatches, search and the closing words, minified and gzipped. */
async function weightOf(drink: 'spirit' | 'wine' | 'beer'): Promise<number> {
  const files = [
    `${drink}.ts`,
    `en/${drink}.ts`,
    'search.ts',
    'word-sheet.ts',
    'closing.ts',
    'en/closing.ts',
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

it.each(['spirit', 'wine', 'beer'] as const)(
  'all words for %s weigh well below 4 kB on a phone',
  async (drink) => {
    const weight = await weightOf(drink);
    expect(weight).toBeLessThan(3500);
  },
);
