/** The model of a complaint as its page carries it: the tests worth asking, and numbers no finer than they are known. */
import { compile } from '../../../diagnosis/compiled.ts';
import { informationGain } from '../../../diagnosis/information.ts';
import type { Model, ModelTest } from '../../../diagnosis/model.ts';
import { posterior } from '../../../diagnosis/posterior.ts';
import { causeOfRecheck } from '../../../model/recheck.ts';

/** Tests beside those of the tree and the proofs: the rest of the shelf can be done, but would be noise on this page. */
const EXTRA_TESTS = 8;
const DECIMALS = 1e4;

/**
 * @param model every test of the shelf that speaks for or against a candidate
 * @param kept tests that stay whatever they tell: those of the tree and of the proofs
 */
export function pageModel(model: Model, kept: ReadonlySet<string>): Model {
  const compiled = compile(model);
  const shares = new Map(
    posterior(compiled, { evidence: [] }).ranked.map(({ cause, share }) => [cause, share]),
  );
  const weights = Float64Array.from([
    ...model.causes.map(({ id }) => shares.get(id) ?? 0),
    model.somethingElse,
  ]);
  const tellingMost = compiled.tests
    .map((test, at) => ({
      id: model.tests[at]?.id ?? '',
      rate: informationGain(weights, test) / ((model.tests[at]?.minutes ?? 1) + 2),
    }))
    .filter(({ id }) => !kept.has(id) && causeOfRecheck(id) === undefined)
    .sort((a, b) => b.rate - a.rate)
    .slice(0, EXTRA_TESTS)
    .map(({ id }) => id);
  const wanted = new Set([...kept, ...tellingMost]);
  const isWanted = ({ id, isRecheck }: ModelTest) => isRecheck || wanted.has(id);
  return { ...model, tests: model.tests.filter(isWanted).map(rounded) };
}

/** Likelihoods to four decimals; the largest of a column takes up what rounding leaves, so that it still sums to 1. */
function rounded(test: ModelTest): ModelTest {
  const likelihood = test.likelihood.map((row) =>
    row.map((value) => Math.round(value * DECIMALS) / DECIMALS),
  );
  const columns = likelihood[0]?.length ?? 0;
  for (let column = 0; column < columns; column++) {
    const values = likelihood.map((row) => row[column] ?? 0);
    const largest = values.indexOf(Math.max(...values));
    const rest = values.reduce((sum, value, at) => (at === largest ? sum : sum + value), 0);
    const row = likelihood[largest];
    if (row) row[column] = Math.round((1 - rest) * DECIMALS) / DECIMALS;
  }
  return { ...test, likelihood };
}
