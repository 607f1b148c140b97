import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** Modules of libraries that our pages need another way, by the end of their path. */
const instead: readonly (readonly [RegExp, string])[] = [
  // Without polling, which is fetched after failures (shared/follower/polling.ts), and WebTransport, which needs HTTP/3.
  [
    /engine\.io-client\/build\/esm\/transports\/index\.js$/,
    "import { WS } from './websocket.node.js'; export const transports = { websocket: WS };",
  ],
  [
    /engine\.io-client\/build\/esm\/index\.js$/,
    `export { Socket } from './socket.js'; export { installTimerFunctions } from './util.js';
    export { parse } from './contrib/parseuri.js'; export { nextTick } from './globals.node.js';
    const elsewhere = undefined;
    export { ${['Fetch', 'NodeXHR', 'XHR', 'NodeWebSocket', 'WebSocket', 'WebTransport'].map((name) => `elsewhere as ${name}`).join()} };`,
  ],
  // Lines are mended by us (shared/follower/healing.ts), and the library never waits for another attempt.
  [
    /socket\.io-client\/build\/esm\/contrib\/backo2\.js$/,
    'export class Backoff { attempts = 0; reset() {} setMin() {} setMax() {} setJitter() {} duration() { return 1000; } }',
  ],
  // A browser takes addresses apart by itself. Always a whole origin (shared/follower/line.ts).
  [
    /engine\.io-client\/build\/esm\/contrib\/parseuri\.js$/,
    `export function parse(uri) {
      const { protocol, hostname, port, pathname, search, searchParams } = new URL(uri);
      return {
        source: uri, protocol: protocol.slice(0, -1), host: hostname.replace(/^\\[|\\]$/g, ''), port, path: pathname,
        query: search.slice(1), queryKey: Object.fromEntries(searchParams),
      };
    }`,
  ],
  // Neither side ever sends anything but text.
  [
    /socket\.io-parser\/build\/esm\/is-binary\.js$/,
    'export const isBinary = () => false; export const hasBinary = () => false;',
  ],
];

/** Modules of which nothing is ever called: binary messages, and schemas written as JSON Schema. */
const uncalled = [
  /socket\.io-parser\/build\/esm\/binary\.js$/,
  /engine\.io-parser\/build\/esm\/contrib\/base64-arraybuffer\.js$/,
  /zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/,
];

/** The names that a module offers, each with nothing behind it. */
function hollow(path: string): string {
  const names = [...readFileSync(path, 'utf8').matchAll(/^export (?:const|function) (\w+)/gm)];
  // Zod asks some of them for a method when a schema is made; the method is what nobody calls.
  return `const none = () => () => { throw new Error('Left out of this page.'); };
    export { ${names.map(([, name]) => `none as ${name}`).join()} };`;
}

/**
 * Leaves out of libraries what our pages never use, and parts polling from what a page begins with. Of a guest's first
 * script that is 3.5 kB, of a host's page 6 (gzip). The libraries on disk, and what the server runs, stay as they are.
 */
export const lightLibraries: Plugin = {
  name: 'light-libraries',
  enforce: 'pre',
  async load(id) {
    if (/shared\/follower\/polling\.ts$/.test(id)) {
      const client = await this.resolve('socket.io-client', id);
      const engine = await this.resolve('engine.io-client', client?.id);
      const transport = (name: string) =>
        JSON.stringify(engine?.id.replace(/index\.js$/, `transports/${name}.js`));
      return `import { WS } from ${transport('websocket')}; import { XHR } from ${transport('polling-xhr')};
        export const waysWithPolling = [WS, XHR];`;
    }
    if (uncalled.some((path) => path.test(id))) return hollow(id);
    return instead.find(([path]) => path.test(id))?.[1] ?? null;
  },
};
