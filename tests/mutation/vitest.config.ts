import { defineConfig } from 'vitest/config';

/**
 * The tests that must notice a mutant: those that need no socket and no browser, always with the same seed. The model of
 * the rules takes ten seconds for each mutant, and what only chance finds is found by chance.
 */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: [
      'tests/core/session/**/*.test.ts',
      'tests/server/{access,live,parts}/**/*.test.ts',
      'tests/server/store/{contract,file}.test.ts',
    ],
    exclude: ['tests/core/session/rules.model.test.ts'],
    testTimeout: 60_000,
    setupFiles: ['tests/mutation/fixed-seed.ts'],
  },
});
