import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { beforeAll, describe, expect, it, vi } from 'vitest';

/** What a host's tablet loads before a page of the app stands: built as it is shipped, and weighed as it travels. */
const root = new URL('../..', import.meta.url).pathname;

/** Bytes of script after gzip, of the first script and all that one page needs with it. */
const budget = 118_500;

interface Chunk {
  readonly imports: readonly string[];
  readonly bytes: number;
  /** The module that this chunk was fetched for, if it was. */
  readonly begins: string;
}

const chunks = new Map<string, Chunk>();
let page = '';
let styles: readonly string[] = [];

beforeAll(async () => {
  vi.stubEnv('NODE_ENV', 'production');
  const built = await build({
    configFile: join(root, 'host/vite.config.ts'),
    logLevel: 'silent',
    build: { write: false },
  });
  vi.unstubAllEnvs();
  const outputs = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  for (const each of outputs) {
    if (each.type === 'asset') continue;
    const begins = each.facadeModuleId?.replace(root, '') ?? '';
    chunks.set(each.fileName, { imports: each.imports, bytes: gzipSync(each.code).length, begins });
  }
  const html = outputs.find(({ fileName }) => fileName.endsWith('index.html'));
  page = html?.type === 'asset' ? String(html.source) : '';
  styles = outputs.map(({ fileName }) => fileName).filter((name) => name.endsWith('.css'));
}, 30_000);

/** A chunk and all that it cannot run without. */
function needed(from: readonly string[], known = new Set<string>()): ReadonlySet<string> {
  for (const name of from) {
    if (known.has(name)) continue;
    known.add(name);
    needed(chunks.get(name)?.imports ?? [], known);
  }
  return known;
}
const weight = (names: Iterable<string>): number =>
  [...names].reduce((sum, name) => sum + (chunks.get(name)?.bytes ?? 0), 0);
const first = () => [...chunks.keys()].filter((name) => page.includes(name));

describe('what a host’s tablet loads', () => {
  it('is one script and one style before the first page stands', () => {
    expect(first()).toHaveLength(1);
    expect(styles).toHaveLength(1);
    expect(weight(needed(first()))).toBeLessThan(budget / 3);
  });

  it('can be put on a home screen under its own address', () => {
    expect(page).toContain('rel="manifest" href="/host/en/manifest.webmanifest"');
  });

  it('is within its budget for every page of the app', () => {
    const follows = 'host/evening-pages.tsx';
    const pages = {
      'host/plan/plan-page.tsx': [],
      'host/pre-tasting/pre-tasting-page.tsx': [],
      'host/recap/recap-loader.tsx': [],
      'host/set-up/doors-page.tsx': [follows],
      'host/conduct/room-page.tsx': [follows],
      'host/invite/invite-page.tsx': [follows],
      'host/pouring/pouring-page.tsx': [follows],
      'host/print/paper-page.tsx': [follows],
    };
    const chunkOf = (module: string): string => {
      const [name] = [...chunks].find(([, { begins }]) => begins === module) ?? [];
      if (name === undefined) throw new Error(`${module} is not fetched apart.`);
      return name;
    };
    for (const [module, before] of Object.entries(pages)) {
      const asked = [...first(), ...[module, ...before].map(chunkOf)];
      const bytes = weight(needed(asked));
      expect({ module, bytes, within: bytes < budget }).toEqual({ module, bytes, within: true });
    }
  });
});
