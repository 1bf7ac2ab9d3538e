/**
 * How walks end by the evidence, on every layout that a complaint's records tell apart among the shelf's vehicles. Shares of the
 * ways that are followed: ways that fewer than three cars in ten thousand take are cut, which makes the walk look a point or two better
 * than it is; tests/bench/walks.ts follows further.
 */
import { expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { resolve } from '../../src/diagnosis/state.ts';
import { walkFigures } from '../../src/diagnosis/walk-figures.ts';
import { layoutsOf } from './layouts.ts';
import { shelf } from './shelf.ts';

const LEAST_CHANCE = 3e-4;
/** Shares; the aims of proven means proven. */
const MOST_WRONG = 0.01;
const MOST_MISSED = 0.01;
/** The aim is 0.90; the trees are being brought there. */
const LEAST_LED = 0.855;
/** Complaints that miss more, at what they have: none may get worse, and each line goes when its tree holds the rule. */
const MISSES_MORE: Record<string, number> = {
  'pushed-out-after-parking': 0.013,
};

test.each([...shelf.records.symptom.keys()])('%s', (symptom) => {
  const missed = MISSES_MORE[symptom] ?? MOST_MISSED;
  const short: string[] = [];
  for (const { made, vehicles } of layoutsOf(symptom)) {
    const compiled = compile(made.model);
    const all = walkFigures(compiled, made.tree, resolve(compiled, { evidence: [] }), LEAST_CHANCE);
    const sum = all.proven + all.first + all.named + all.missed + all.wronglyProven;
    expect(sum).toBeCloseTo(1, 9);
    const says = (what: string, share: number) =>
      short.push(`${vehicles.join(', ')}: ${what} ${(share * 100).toFixed(2)} %`);
    if (all.wronglyProven > MOST_WRONG) says('wrongly proven', all.wronglyProven);
    if (all.missed > missed) says('missed', all.missed);
    if (all.proven + all.first < LEAST_LED) says('proven or first', all.proven + all.first);
  }
  expect(short).toEqual([]);
});
