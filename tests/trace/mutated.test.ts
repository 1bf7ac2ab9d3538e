/** The first of the 10,000 spoilt files that tests/bench/trace-mutated.ts reads: always a verdict or a message. */
import { expect, test } from 'vitest';
import { STAMP_87 } from './known-cars.ts';
import { isWellSaid, saidAbout } from './read-mutated.ts';

const COUNT = 600;

test(`${COUNT} spoilt files: a verdict or a message each, both kinds, none without words`, {
  timeout: 120_000,
}, () => {
  const kinds = new Set<string>();
  for (let seed = 0; seed < COUNT; seed++) {
    const said = saidAbout(seed, seed % 3 === 0 ? undefined : STAMP_87);
    kinds.add(said.kind);
    if (!isWellSaid(said)) expect.fail(`${seed}: ${said.words.join(' | ')}`);
  }
  expect([...kinds].sort()).toEqual(['message', 'verdict']);
});
