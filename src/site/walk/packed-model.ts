/**
 * A model as its page carries it. Most tests say the same of most causes, so that column is written once and the others
 * beside it: half the bytes of the whole table.
 */
import type { Model, ModelTest } from '../../diagnosis/model.ts';
import { RECHECK_OUTCOMES } from '../../model/recheck.ts';

/** Likelihoods are written as whole ten-thousandths; pageModel gives them no finer. */
const STEPS = 1e4;

export interface PackedTest extends Omit<ModelTest, 'likelihood' | 'outcomes'> {
  /** None on a recheck: all rechecks have the same two. */
  outcomes?: string[];
  /** The commonest column: of each outcome but the first, how likely; the first has the rest. */
  usual: number[];
  /** The causes that have another: place of the cause in the model, then its column, without the first. */
  apart: [number, ...number[]][];
}

export interface PackedModel extends Omit<Model, 'tests'> {
  tests: PackedTest[];
}

/** The model in the form the page carries; `unpackModel` is the way back. */
export function packModel(model: Model): PackedModel {
  return { ...model, tests: model.tests.map(packTest) };
}

/** The model that was packed. */
export function unpackModel(packed: PackedModel): Model {
  return {
    ...packed,
    tests: packed.tests.map((test) => unpackTest(test, packed.causes.length + 1)),
  };
}

function packTest({ likelihood, outcomes, ...test }: ModelTest): PackedTest {
  const columns = (likelihood[0] ?? []).map((_, cause) =>
    likelihood.slice(1).map((row) => Math.round((row[cause] ?? 0) * STEPS)),
  );
  const counts = new Map<string, number>();
  for (const column of columns) counts.set(column.join(), (counts.get(column.join()) ?? 0) + 1);
  const [usual = ''] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return {
    ...test,
    ...(!test.isRecheck && { outcomes }),
    usual: columns.find((column) => column.join() === usual) ?? [],
    apart: columns.flatMap((column, cause): PackedTest['apart'] =>
      column.join() === usual ? [] : [[cause, ...column]],
    ),
  };
}

/** @param columns causes of the model, and something else */
function unpackTest(
  { usual, apart, outcomes = [...RECHECK_OUTCOMES], ...test }: PackedTest,
  columns: number,
): ModelTest {
  const likelihood = outcomes.map(() => new Array<number>(columns).fill(0));
  const write = (column: number, values: readonly number[]) => {
    const first = values.reduce((rest, value) => rest - value, STEPS);
    for (const [outcome, value] of [first, ...values].entries()) {
      const row = likelihood[outcome];
      if (row) row[column] = value / STEPS;
    }
  };
  for (let column = 0; column < columns; column++) write(column, usual);
  for (const [cause, ...column] of apart) write(cause, column);
  return { ...test, outcomes, likelihood };
}
