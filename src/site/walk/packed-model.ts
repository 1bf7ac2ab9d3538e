/**
 * A model as its page carries it. Most tests say the same of most causes, so that column is written once and the others
 * beside it: half the bytes of the whole table.
 */
import type { Model, ModelTest } from '../../diagnosis/model.ts';

/** Likelihoods are written as whole ten-thousandths; pageModel gives them no finer. */
const STEPS = 1e4;

export interface PackedTest extends Omit<ModelTest, 'likelihood'> {
  /** The commonest column: of each outcome, how likely. */
  usual: number[];
  /** The causes that have another: place of the cause in the model, then its column. */
  apart: [number, ...number[]][];
}

export interface PackedModel extends Omit<Model, 'tests'> {
  tests: PackedTest[];
}

export function packModel(model: Model): PackedModel {
  return { ...model, tests: model.tests.map(packTest) };
}

export function unpackModel(packed: PackedModel): Model {
  return { ...packed, tests: packed.tests.map((test) => unpackTest(test, packed.causes.length + 1)) };
}

function packTest({ likelihood, ...test }: ModelTest): PackedTest {
  const columns = (likelihood[0] ?? []).map((_, cause) =>
    likelihood.map((row) => Math.round((row[cause] ?? 0) * STEPS)),
  );
  const counts = new Map<string, number>();
  for (const column of columns) counts.set(column.join(), (counts.get(column.join()) ?? 0) + 1);
  const [usual = ''] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return {
    ...test,
    usual: columns.find((column) => column.join() === usual) ?? [],
    apart: columns.flatMap((column, cause): PackedTest['apart'] =>
      column.join() === usual ? [] : [[cause, ...column]],
    ),
  };
}

/** @param columns causes of the model, and something else */
function unpackTest({ usual, apart, ...test }: PackedTest, columns: number): ModelTest {
  const likelihood = usual.map((value) => new Array<number>(columns).fill(value / STEPS));
  for (const [cause, ...column] of apart) {
    for (const [outcome, value] of column.entries()) {
      const row = likelihood[outcome];
      if (row) row[cause] = value / STEPS;
    }
  }
  return { ...test, likelihood };
}
