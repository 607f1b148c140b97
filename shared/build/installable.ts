import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { build, type Plugin } from 'vite';
import { languageWords } from './one-language.ts';

const root = join(import.meta.dirname, '../..');

export interface InstallableApp {
  /** Folder of the app, with its `icon.svg`. */
  readonly app: 'guest' | 'host';
  readonly language: string;
  /** The page's base, such as `/host/`. */
  readonly base: string;
  /** File of the worker that keeps the page; absent for a page that is nothing without its server. */
  readonly worker?: string;
}

/** Pictures for a home screen, in px. A maskable one is cut to a shape by the system, so that its edge is bare. */
const icons = [
  { size: 192, maskable: false },
  { size: 512, maskable: false },
  { size: 512, maskable: true },
] as const;
const touchIcon = { size: 180, maskable: true } as const;

/**
 * Makes a page one that can be put on a home screen: its manifest in its language, icons drawn from the app's own SVG,
 * the colour of the bar around it from the tokens, and where there is one, the worker that keeps it.
 */
export function installable({ app, language, base, worker }: InstallableApp): Plugin {
  const manifest = `${language}/manifest.webmanifest`;
  const iconNames = new Map<string, string>();
  return {
    name: 'installable',

    async buildStart() {
      const svg = readFileSync(join(root, app, 'icon.svg'), 'utf8');
      for (const icon of [...icons, touchIcon]) {
        const source = await png(svg, icon);
        const hash = createHash('sha256').update(source).digest('base64url').slice(0, 8);
        const fileName = `assets/${keyOf(icon)}-${hash}.png`;
        iconNames.set(keyOf(icon), fileName);
        this.emitFile({ type: 'asset', fileName, source });
      }
    },

    transformIndexHtml: () => {
      const bar = (ground: string, scheme: string) => ({
        tag: 'meta',
        attrs: { name: 'theme-color', content: ground, media: `(prefers-color-scheme: ${scheme})` },
        injectTo: 'head' as const,
      });
      const link = (rel: string, path: string) => ({
        tag: 'link',
        attrs: { rel, href: `${base}${path}` },
        injectTo: 'head' as const,
      });
      return [
        bar(groundOf('linen'), 'light'),
        bar(groundOf('cellar'), 'dark'),
        link('manifest', manifest),
        link('apple-touch-icon', iconNames.get(keyOf(touchIcon)) ?? ''),
      ];
    },

    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const words = await languageWords(language);
        const name = app === 'host' ? words.hostTitle : 'Quietpour';
        const source = JSON.stringify({
          id: base,
          name,
          short_name: 'Quietpour',
          lang: language,
          dir: words.direction,
          start_url: base,
          scope: base,
          display: 'standalone',
          background_color: groundOf('linen'),
          theme_color: groundOf('linen'),
          icons: icons.map((icon) => ({
            src: `${base}${iconNames.get(keyOf(icon))}`,
            sizes: `${icon.size}x${icon.size}`,
            type: 'image/png',
            purpose: icon.maskable ? 'maskable' : 'any',
          })),
        });
        this.emitFile({ type: 'asset', fileName: manifest, source });
        if (worker === undefined) return;
        const version = versionOf(bundle, language, base);
        this.emitFile({
          type: 'asset',
          fileName: `worker.${language}.js`,
          source: await bundled(worker, version),
        });
      },
    },
  };
}

const keyOf = ({ size, maskable }: { readonly size: number; readonly maskable: boolean }): string =>
  `icon-${maskable ? 'full-' : ''}${size}`;

/** The ground of a theme, so that no other file holds a colour. */
function groundOf(theme: 'linen' | 'cellar'): string {
  const tokens = readFileSync(join(root, 'shared/ui/tokens.css'), 'utf8');
  const found = new RegExp(`data-theme="${theme}"\\][^}]*?--ground: (#[0-9a-f]{6})`).exec(tokens);
  if (found?.[1] === undefined) throw new Error(`shared/ui/tokens.css has no ground for ${theme}.`);
  return found[1];
}

function png(svg: string, { size, maskable }: { readonly size: number; readonly maskable: boolean }) {
  const edge = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  const drawn = maskable ? fullBleed(svg, edge) : svg;
  const density = (72 * size) / edge;
  return sharp(Buffer.from(drawn), { density }).resize(size, size).png({ compressionLevel: 9 }).toBuffer();
}

/** The ground reaches the edge, and the drawing stays within the middle four fifths that every shape leaves. */
function fullBleed(svg: string, edge: number): string {
  const inset = edge / 10;
  return svg
    .replace(/ rx="[\d.]+"/, '')
    .replace(
      /(<rect[^>]*\/>)([\s\S]*)<\/svg>/,
      `$1<g transform="translate(${inset} ${inset}) scale(.8)">$2</g></svg>`,
    );
}

type Bundle = Readonly<Record<string, { readonly type: 'asset' | 'chunk' }>>;
type File = { readonly source?: string | Uint8Array; readonly isEntry?: boolean; readonly type: string };

/** Everything that the page is made of, with the script that it names first. */
function versionOf(bundle: Bundle, language: string, base: string) {
  const entries = Object.entries(bundle as Readonly<Record<string, File>>);
  const [pageName, page] = entries.find(([name]) => name.endsWith('index.html')) ?? [];
  if (pageName === undefined || page?.source === undefined) throw new Error('There is no page to keep.');
  const html = String(page.source);
  const files = entries
    .map(([name]) => name)
    .filter((name) => name.startsWith('assets/') && !name.endsWith('.png'))
    .toSorted((one, other) => Number(first(other, html)) - Number(first(one, html)));
  const build = createHash('sha256')
    .update(JSON.stringify([html, files]))
    .digest('base64url')
    .slice(0, 12);
  return { build, language, page: `${base}${pageName}`, files: files.map((name) => `${base}${name}`) };
}

const first = (name: string, html: string): boolean => name.endsWith('.js') && html.includes(name);

/** One script without imports: that is what every browser with workers takes. */
async function bundled(entry: string, version: ReturnType<typeof versionOf>): Promise<string> {
  const built = await build({
    configFile: false,
    root,
    logLevel: 'error',
    define: { thisVersion: JSON.stringify(version) },
    build: {
      write: false,
      modulePreload: false,
      rollupOptions: { input: entry, output: { format: 'iife', entryFileNames: 'worker.js' } },
    },
  });
  const outputs = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  const [chunk] = outputs.filter((each) => each.type === 'chunk');
  if (chunk === undefined) throw new Error('The worker did not build.');
  return chunk.code;
}
