import { defineConfig } from 'vitest/config';

const root = new URL('..', import.meta.url).pathname;

/** Two files at once, also on two cores: what servers and browsers do is mostly waiting. */
const maxWorkers = 2;

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
          // A property takes as long as a busy machine makes it; a time-out is for what never ends.
          testTimeout: 60_000,
          include: ['tests/{core,shared,house,outside}/**/*.test.{ts,tsx}'],
        },
      },
      {
        test: {
          name: 'server',
          root,
          maxWorkers,
          include: ['tests/server/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'e2e',
          root,
          maxWorkers,
          include: ['tests/e2e/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
