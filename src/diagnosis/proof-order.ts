import { real, whole } from './arrays.ts';
import { CARS, type CarState, COLD, type CompiledModel, WARM } from './compiled.ts';
import type { Situation } from './model.ts';
import { nameOf } from './posterior.ts';
import { resolve, sumOf, weigh } from './state.ts';

/**
 * Costs proofs without tests: prove the causes in falling chance per minute, then pass on at the cheapest cut.
 *
 * Kadane and Simon 1977, Cognitive Psychology; Kalagnanam and Henrion 1988 (order); Heckerman, Breese and
 * Rommelse 1995, Communications of the ACM 38(3) (passing on, "expected cost of repair").
 * Where proofs ask for an engine state the same order is also tried with all cold proofs before the warm ones
 * and the other way round, change-overs counted; the cheapest of the three is taken. Each of these orders
 * does not depend on the car's state, so that carrying one on after its first proof is never dearer.
 */
export class ProofCoster {
  private readonly compiled: CompiledModel;
  private readonly ratio: Float64Array;
  private readonly order: Int32Array;
  private readonly grouped: Int32Array;
  private count = 0;
  private cut = 0;

  constructor(compiled: CompiledModel) {
    this.compiled = compiled;
    this.ratio = new Float64Array(compiled.rest);
    this.order = new Int32Array(compiled.rest);
    this.grouped = new Int32Array(compiled.rest);
  }

  /**
   * Expected minutes × sum.
   * @param sum the sum of the weights, known to every caller
   */
  cost(weights: Float64Array, sum: number, car: CarState): number {
    this.choose(weights);
    this.sort();
    let best = this.walk(this.order, weights, sum, car);
    if (this.compiled.proofsCareForEngine)
      for (const late of [WARM, COLD]) best = Math.min(best, this.walk(this.group(late), weights, sum, car));
    return best;
  }

  /** The causes to prove in order before passing on. */
  sequence(weights: Float64Array, sum: number, car: CarState): number[] {
    this.choose(weights);
    this.sort();
    let best = this.walk(this.order, weights, sum, car);
    let sequence = Array.from(this.order.slice(0, this.cut));
    if (this.compiled.proofsCareForEngine)
      for (const late of [WARM, COLD]) {
        const cost = this.walk(this.group(late), weights, sum, car);
        if (cost >= best) continue;
        best = cost;
        sequence = Array.from(this.grouped.slice(0, this.cut));
      }
    return sequence;
  }

  /**
   * Collects the causes that can pay. Proving cause k last before passing on pays only if
   * minutes × chance left < chance of k × minutes of passing on, and the chance left holds at least k itself,
   * something else and every cause already found not to pay. Two rounds catch nearly all; the walk finds the rest.
   */
  private choose(weights: Float64Array): void {
    const { bareProof, passOn, rest } = this.compiled;
    const { order, ratio } = this;
    let never = real(weights, rest);
    let count = 0;
    for (let cause = 0; cause < rest; cause++) {
      const weight = real(weights, cause);
      if (weight === 0) continue;
      const minutes = real(bareProof, cause);
      if (weight * passOn <= minutes * (never + weight)) {
        never += weight;
      } else {
        ratio[cause] = weight / minutes;
        order[count++] = cause;
      }
    }
    let kept = 0;
    for (let at = 0; at < count; at++) {
      const cause = whole(order, at);
      const weight = real(weights, cause);
      if (weight * passOn <= real(bareProof, cause) * (never + weight)) never += weight;
      else order[kept++] = cause;
    }
    this.count = kept;
  }

  /** By falling chance per minute, equal ones in the order of the model. */
  private sort(): void {
    const { ratio, order, count } = this;
    for (let at = 1; at < count; at++) {
      const cause = whole(order, at);
      const own = real(ratio, cause);
      let to = at - 1;
      while (to >= 0 && real(ratio, whole(order, to)) < own) {
        order[to + 1] = whole(order, to);
        to--;
      }
      order[to + 1] = cause;
    }
  }

  /** The sorted order with the proofs of one engine state at the end. */
  private group(late: number): Int32Array {
    let to = 0;
    for (const isLate of [false, true])
      for (let at = 0; at < this.count; at++) {
        const cause = whole(this.order, at);
        if ((whole(this.compiled.proofEngine, cause) === late) === isLate) this.grouped[to++] = cause;
      }
    return this.grouped;
  }

  private walk(order: Int32Array, weights: Float64Array, sum: number, car: CarState): number {
    const { proof, afterProof, passOn } = this.compiled;
    let left = sum;
    let spent = 0;
    let best = sum * passOn;
    this.cut = 0;
    let now = car;
    for (let at = 0; at < this.count; at++) {
      const cause = whole(order, at);
      const entry = cause * CARS + now;
      spent += real(proof, entry) * left;
      now = whole(afterProof, entry);
      // The chance left is summed down; never below zero by rounding.
      left = Math.max(left - real(weights, cause), 0);
      const cost = spent + left * passOn;
      if (cost < best) {
        best = cost;
        this.cut = at + 1;
      }
    }
    return best;
  }
}

/** What proving without any further test comes to. */
export interface ProofOrder {
  /** Expected minutes to a proven cause. */
  minutes: number;
  /** Ids of the causes to prove in this order; then pass on. */
  order: string[];
}

/** Order of proofs and expected minutes when no more tests are done. */
export function proofOrder(compiled: CompiledModel, situation: Situation): ProofOrder {
  const resolved = resolve(compiled, situation);
  const weights = weigh(compiled, resolved.findings, resolved.ruledOut, resolved.fitted);
  const sum = sumOf(weights);
  if (sum === 0) return { minutes: compiled.passOn, order: [] };
  const coster = new ProofCoster(compiled);
  return {
    minutes: coster.cost(weights, sum, resolved.car) / sum,
    order: coster.sequence(weights, sum, resolved.car).map((cause) => nameOf(compiled, cause)),
  };
}
