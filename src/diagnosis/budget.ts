/**
 * How much work may go into judging one symptom, as counts and not as time, so that the result is the same
 * on every machine.
 */
export interface Budget {
  /** States of the exact search; above it the two-step policy is costed instead. */
  exactStates: number;
  /** States in which the policy looks ahead, likeliest first; beyond them it goes on by proofs alone. */
  policyStates: number;
  /** States of the relaxed search under the lower bound; beyond them weaker bounds stand in. */
  boundStates: number;
}

/** About a tenth of a second a symptom: for checking the whole shelf while writing. */
export const QUICK_BUDGET: Budget = { exactStates: 3_000, policyStates: 100, boundStates: 15_000 };
