/** Every surface 100,000 times from a new seed, or as often and from the seed that the environment says: `npm run fuzz`. */
import { spawnSync } from 'node:child_process';

const RUNS = process.env.HEADERTANK_FUZZ_RUNS ?? '100000';
const SEED = process.env.HEADERTANK_FUZZ_SEED ?? String(Date.now() % 2 ** 31);
/** One surface after the other, so that the slow one does not hold up the rest: words behind the command choose them. */
const chosen = process.argv.slice(2);

process.stdout.write(`${RUNS} cases a surface, seed ${SEED}\n`);
const { status } = spawnSync(
  process.execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    '.vitest.config.ts',
    '--project',
    'unit',
    ...(chosen.length > 0 ? chosen : ['tests/fuzz']),
  ],
  { stdio: 'inherit', env: { ...process.env, HEADERTANK_FUZZ_RUNS: RUNS, HEADERTANK_FUZZ_SEED: SEED } },
);
process.exitCode = status ?? 1;
