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
const LEAST_LED = 0.9;

test.each([...shelf.records.symptom.keys()])('%s', (symptom) => {
  const short: string[] = [];
  for (const { made, vehicles } of layoutsOf(symptom)) {
    const compiled = compile(made.model);
    const all = walkFigures(compiled, made.tree, resolve(compiled, { evidence: [] }), LEAST_CHANCE);
    const sum = all.proven + all.first + all.named + all.missed + all.wronglyProven;
    expect(sum).toBeCloseTo(1, 9);
    const says = (what: string, share: number) =>
      short.push(`${vehicles.join(', ')}: ${what} ${(share * 100).toFixed(2)} %`);
    if (all.wronglyProven > MOST_WRONG) says('wrongly proven', all.wronglyProven);
    if (all.missed > MOST_MISSED) says('missed', all.missed);
    if (all.proven + all.first < LEAST_LED) says('proven or first', all.proven + all.first);
  }
  expect(short).toEqual([]);
});
