import { defineConfig } from 'vitest/config';
import { oneLanguage } from '../shared/build/one-language.ts';
import { drawMoment } from './support/moment.ts';
import { patience } from './support/until.ts';

const root = new URL('..', import.meta.url).pathname;

/** Two files at once, also on two cores: what servers and browsers do is mostly waiting. */
const maxWorkers = 2;

/** Everything takes as long as a busy machine makes it; a time-out, in ms, is for what never ends. */
const longest = 600_000;
const expect = { poll: { timeout: patience } };

/** The clock, zone and locale of this run. */
const moment = drawMoment();
const setupFiles = ['tests/support/set-the-clock.ts'];

/** Three projects by what they need: nothing (unit), a server of their own (server), a browser too (e2e). */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          root,
          maxWorkers,
          // Nothing here leaves anything behind, and to load each module once takes less than half the time.
          isolate: false,
          setupFiles,
          testTimeout: longest,
          include: ['tests/{core,shared,house,outside}/**/*.test.{ts,tsx}'],
        },
      },
      {
        test: {
          name: 'server',
          root,
          maxWorkers,
          setupFiles,
          globalSetup: ['tests/support/bundle-server.ts'],
          include: ['tests/server/**/*.test.ts'],
          testTimeout: longest,
          hookTimeout: longest,
          expect,
        },
      },
      {
        // Browser tests name what they look for as the pages do, and so in the language of the pages.
        plugins: [oneLanguage(moment.locale.split('-')[0] ?? 'en')],
        test: {
          name: 'e2e',
          root,
          maxWorkers,
          // Files share what is loaded, and a browser; each opens its own pages and servers, and closes them.
          isolate: false,
          setupFiles,
          globalSetup: ['tests/engines/install.ts'],
          include: ['tests/e2e/**/*.test.ts'],
          testTimeout: longest,
          hookTimeout: longest,
          expect,
        },
      },
    ],
  },
});
