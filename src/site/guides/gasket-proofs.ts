/** How often each proof of a gasket is seen with each fault that is taken for one: the evidence of this shelf. */
import { completeRow } from '../../diagnosis/likelihood.ts';
import { entryOf } from '../shelf/record-pages.ts';
import type { ProofRow } from './proof-grid.ts';

/** Columns: the word over it, and the cause; none for an engine without any of them. */
const FAULTS = [
  ['gas', 'head-gasket-combustion-leak'],
  ['into bore', 'head-gasket-coolant-to-cylinder'],
  ['into oil', 'head-gasket-coolant-to-oil'],
  ['crack', 'cracked-head'],
  ['EGR cooler', 'egr-cooler-leak'],
  ['none', undefined],
] as const;

const PROOFS: readonly { name: string; test: string; outcomes: readonly string[] }[] = [
  { name: 'Gas test turns at once', test: 'combustion-gas-test', outcomes: ['changes-quickly'] },
  { name: 'Pressure before heat', test: 'pressure-rise-from-cold', outcomes: ['at-once'] },
  { name: 'Bubbles at leak-down', test: 'leak-down', outcomes: ['bubbles-in-coolant'] },
  { name: 'One bore wet after a night', test: 'borescope-cylinders', outcomes: ['wet-one'] },
  { name: 'Sweet white cloud', test: 'exhaust-look', outcomes: ['cloud-then-clear', 'white-stays'] },
  { name: 'Milk on the dipstick', test: 'oil-inspection', outcomes: ['milky'] },
];

export const gasketFaults: readonly string[] = FAULTS.map(([word]) => word);

/** @throws Error when a test, an outcome or a row of evidence is not as the guide takes it */
export function gasketProofs(): ProofRow[] {
  return PROOFS.map(({ name, test, outcomes }) => {
    const { data } = entryOf('test', test);
    const ids = Object.keys(data.outcomes);
    return {
      name,
      seen: FAULTS.map(([, cause]) => {
        const row = (cause === undefined ? undefined : data.evidence[cause]) ?? data.otherwise;
        const completed = completeRow(ids, row);
        if (!completed.ok) throw new Error(`The evidence of ${test} contradicts itself.`);
        return outcomes.reduce((sum, outcome) => {
          const share = completed.distribution[ids.indexOf(outcome)];
          if (share === undefined) throw new Error(`The test ${test} has no outcome ${outcome}.`);
          return sum + share;
        }, 0);
      }),
    };
  });
}
