/** Two sets of tests: those that need nothing but the source, and those that open the built site in a browser. */
import { defineConfig } from 'vitest/config';

const SITE = 'tests/site/*.test.ts';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: [SITE, 'tests/bench/**'],
          // What one file has read of the shelf the next need not read again: a third of the time.
          isolate: false,
          unstubGlobals: true,
        },
      },
      {
        test: {
          name: 'site',
          include: [SITE],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          maxWorkers: 2,
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
