/** Two sets of tests: those that need nothing but the source, and those that open the built site in a browser. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const SITE = 'tests/browser/*.test.ts';
/** The browser's tests drive vehicles of the demonstration; a shop's own shelf has none of them. */
const isDemonstration = /^invented: true$/m.test(readFileSync('content/shop.yaml', 'utf8'));
/** Short files with long work: begun last, one of them would be waited for alone. */
const LONG = /\/(accessibility|security|offline)\.test\.ts$/;

/** A command that a test starts keeps what Node compiles, as `npm run check` does; whatever folder it starts in. */
const COMMANDS = { NODE_COMPILE_CACHE: resolve('node_modules/.cache/headertank/compiled') };

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return [
      ...sorted.filter(({ moduleId }) => LONG.test(moduleId)),
      ...sorted.filter(({ moduleId }) => !LONG.test(moduleId)),
    ];
  }
}

export default defineConfig({
  test: {
    passWithNoTests: !isDemonstration,
    sequence: { sequencer: LongFirst },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: [SITE, 'tests/bench/**'],
          // What one file has read of the shelf the next need not read again: a third of the time.
          isolate: false,
          // On two cores vitest would take one.
          maxWorkers: 2,
          // No test fails for its time: a busy machine is no fault of the code.
          testTimeout: 120_000,
          env: COMMANDS,
          hookTimeout: 120_000,
          unstubGlobals: true,
        },
      },
      {
        test: {
          name: 'site',
          include: isDemonstration ? [SITE] : [],
          env: COMMANDS,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
          // Each file opens a browser of its own; what Node reads for it is read once.
          isolate: false,
          // Once more on a machine that has more to do than this: the list of tests says which needed it. A fault fails twice.
          retry: 1,
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
