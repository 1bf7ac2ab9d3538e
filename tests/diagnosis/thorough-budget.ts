import type { Budget } from '../../src/diagnosis/budget.ts';

/** A few seconds a symptom: more than the check of the shelf spends, for what is held against published examples. */
export const THOROUGH_BUDGET: Budget = {
  exactStates: 300_000,
  policyStates: 2_000,
  boundStates: 1_000_000,
};
