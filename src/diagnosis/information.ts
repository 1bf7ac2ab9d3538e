import { item, real } from './arrays.ts';
import type { CompiledModel, CompiledTest } from './compiled.ts';
import { type State, sumOf } from './state.ts';

/** Entropy in bits of weights that need not sum to 1. */
export function entropy(weights: Float64Array): number {
  const sum = sumOf(weights);
  if (sum === 0) return 0;
  let bits = 0;
  for (const weight of weights) if (weight > 0) bits -= (weight / sum) * Math.log2(weight / sum);
  return bits;
}

/**
 * The most a test can tell, in bits: its capacity as a channel from cause to outcome (Shannon 1948).
 *
 * By the iteration of Arimoto and of Blahut, both 1972, IEEE Trans. Inf. Theory 18; the value handed back is
 * their upper limit, so that a bound built on it stays a bound however early the iteration ends.
 * @param rows likelihoods, `rows[outcome][column]`
 */
export function capacity(rows: readonly Float64Array[]): number {
  const columns = item(rows, 0).length;
  const share = new Float64Array(columns).fill(1 / columns);
  let upper = Math.log2(Math.min(rows.length, columns));
  for (let round = 0; round < ROUNDS; round++) {
    const told = divergences(rows, share);
    let lower = 0;
    let most = 0;
    for (let column = 0; column < columns; column++) {
      lower += real(share, column) * real(told, column);
      most = Math.max(most, real(told, column));
    }
    upper = Math.min(upper, most);
    if (upper - lower < CLOSE) break;
    let sum = 0;
    for (let column = 0; column < columns; column++) {
      const next = real(share, column) * 2 ** real(told, column);
      share[column] = next;
      sum += next;
    }
    for (let column = 0; column < columns; column++) share[column] = real(share, column) / sum;
  }
  return upper;
}

const ROUNDS = 200;
const CLOSE = 1e-12;

/** Bits by which each column's outcomes stand out from the mixture of all columns. */
function divergences(rows: readonly Float64Array[], share: Float64Array): Float64Array {
  const told = new Float64Array(share.length);
  for (const row of rows) {
    let mixed = 0;
    for (let column = 0; column < share.length; column++) mixed += real(share, column) * real(row, column);
    for (let column = 0; column < share.length; column++) {
      const likelihood = real(row, column);
      if (likelihood > 0) told[column] = real(told, column) + likelihood * Math.log2(likelihood / mixed);
    }
  }
  return told;
}

/** Bits a test is expected to tell now: entropy before less expected entropy after. */
export function informationGain(weights: Float64Array, test: CompiledTest): number {
  const sum = sumOf(weights);
  if (sum === 0) return 0;
  let after = 0;
  for (const row of test.rows) {
    const branch = weights.map((weight, column) => weight * real(row, column));
    after += (sumOf(branch) / sum) * entropy(branch);
  }
  return entropy(weights) - after;
}

/**
 * Least minutes by information: at the end the cause is known, and no act tells more bits a minute than the
 * best of them. A proof answers yes or no, so 1 bit at most; passing on tells all, log2 of the possible causes.
 * Adding known-cause minutes on top would not be a bound, because a failed proof informs as well
 * (worked example `bounds-do-not-add`).
 */
export function informationBound(compiled: CompiledModel, state: State): number {
  const possible = state.weights.filter((weight) => weight > 0).length;
  if (possible < 2) return 0;
  let best = rate(Math.log2(possible), compiled.passOn);
  for (let cause = 0; cause < compiled.rest; cause++)
    if (real(state.weights, cause) > 0) best = Math.max(best, rate(1, real(compiled.bareProof, cause)));
  for (const number of state.open) {
    const test = item(compiled.tests, number);
    best = Math.max(best, rate(capacity(test.rows), item(compiled.model.tests, number).minutes));
  }
  return entropy(state.weights) / best;
}

function rate(bits: number, minutes: number): number {
  return bits === 0 ? 0 : bits / minutes;
}
