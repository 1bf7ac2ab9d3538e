import { item, real } from './arrays.ts';
import type { CompiledModel } from './compiled.ts';
import { type Finding, type Situation, SOMETHING_ELSE } from './model.ts';
import { resolve, sumOf, weigh } from './state.ts';

/** A cause, or `something-else`, with its share of the cars that look like this one. */
export interface CauseShare {
  cause: string;
  share: number;
}

export interface Posterior {
  /** All causes and something else, most likely first; equal shares in the order of the model. Shares sum to 1. */
  ranked: CauseShare[];
  /** Chance of these findings before any was known; with pooled findings a measure of fit only. */
  probability: number;
  /** No cause can show all these findings, not even something else: a finding or a ruling-out is wrong. */
  impossible: boolean;
  /** Findings this model does not know, left out. */
  ignored: readonly Finding[];
}

/**
 * Ranks the causes by Bayes' rule: prior × product of likelihoods, normalised. The order of the findings does not matter.
 * When nothing is possible, everything is put on something else and `impossible` is set.
 */
export function posterior(compiled: CompiledModel, situation: Situation): Posterior {
  const resolved = resolve(compiled, situation);
  const weights = weigh(compiled, resolved.findings, resolved.ruledOut, resolved.fitted);
  const probability = sumOf(weights);
  return {
    ranked: rank(compiled, weights),
    probability,
    impossible: probability === 0,
    ignored: resolved.ignored,
  };
}

/** Weights as shares, most likely first. */
export function rank(compiled: CompiledModel, weights: Float64Array): CauseShare[] {
  const sum = sumOf(weights);
  const ranked: CauseShare[] = [];
  for (let column = 0; column < compiled.columns; column++) {
    const share = sum > 0 ? real(weights, column) / sum : column === compiled.rest ? 1 : 0;
    ranked.push({ cause: nameOf(compiled, column), share });
  }
  return ranked.sort((a, b) => b.share - a.share);
}

/** Id of a column's cause. */
export function nameOf(compiled: CompiledModel, column: number): string {
  return column === compiled.rest ? SOMETHING_ELSE : item(compiled.model.causes, column).id;
}
