import { completeRow } from '../../diagnosis/likelihood.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** Rounding of frequency words; a difference under it is none. */
const ALIKE = 1e-9;

/**
 * The outcome that is said to prove a cause speaks less for it than another outcome of the same test, one that no other cause
 * shows as often: a finding for the cause would be read as one against it.
 */
export const proofSpeaksLess: ShelfRule = {
  id: 'proof-speaks-less',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.cause.values()].flatMap(({ id, file, data }): Fault[] => {
      const { test, outcome, or = [] } = data.confirm ?? {};
      const asked = test === undefined ? undefined : records.test.get(test)?.data;
      const row = asked?.evidence[id];
      if (!asked || !row || outcome === undefined) return [];
      const outcomes = Object.keys(asked.outcomes);
      const own = completeRow(outcomes, row);
      const others = completeRow(outcomes, asked.otherwise);
      const at = outcomes.indexOf(outcome);
      // A row that contradicts itself, or an outcome that is not there, is another rule's.
      if (!own.ok || !others.ok || at < 0) return [];
      const seen = ({ distribution }: typeof own, number: number) => distribution[number] ?? 0;
      const rest = Object.entries(asked.evidence).flatMap(([cause, each]) => {
        const filled = cause === id ? undefined : completeRow(outcomes, each);
        return filled?.ok ? [filled] : [];
      });
      const stronger = outcomes.find(
        (other, number) =>
          rest.every((each) => seen(each, number) < seen(own, number)) &&
          !or.some((proof) => proof.test === test && proof.outcome === other) &&
          seen(own, number) * seen(others, at) > seen(own, at) * seen(others, number) + ALIKE,
      );
      if (stronger === undefined) return [];
      return [
        {
          at: { file, path: ['confirm', 'outcome'] },
          found: `By the evidence of "${test}", "${stronger}" speaks more for this cause than "${outcome}", beside how often each is seen otherwise.`,
          byHand: `confirm by "${stronger}", list it under "or", or mend the evidence of "${test}"`,
        },
      ];
    }),
};
