import { completeRow } from '../../diagnosis/likelihood.ts';
import { layoutAllows } from '../../model/layout.ts';
import type { Test } from '../../model/test.ts';
import type { Fault } from '../finding.ts';
import { layoutsToldApart } from '../layouts-told-apart.ts';
import type { ShelfRule } from '../rule.ts';
import type { Entry, Records } from '../shelf.ts';
import { branchFeatures, placesReached } from '../tree-ways.ts';

/** A listed cause speaks from an outcome when it shows it this often, and this many times as often as it is seen otherwise; our own choice, no source. */
const SEEN_ENOUGH = 0.05;
const TIMES_OTHERWISE = 3;

/**
 * A tree asks a test that can come out as the proof of a cause which its symptom does not list, and no cause it lists shows that
 * outcome: who sees it is told nothing. A consequence is let off, the walk looks for what made it; a step that proves one cause
 * may show others by the way.
 */
export const proofWithoutItsCause: ShelfRule = {
  id: 'proof-without-its-cause',
  level: 'error',
  on: 'shelf',
  check: ({ records, faulty }) =>
    [...records.symptom.values()].flatMap((symptom): Fault[] => {
      const tree = records.tree.get(symptom.data.tree);
      if (!tree || faulty.has(tree.file) || faulty.has(symptom.file)) return [];
      return Object.entries(tree.data.steps).flatMap(([step, { test: id }]) => {
        const test = id === undefined ? undefined : records.test.get(id);
        if (!test) return [];
        return proofsBy(records, test.id)
          .filter(({ cause }) => !Object.hasOwn(symptom.data.causes, cause.id))
          .filter(({ outcome }) => !isShownByOneOf(Object.keys(symptom.data.causes), test.data, outcome))
          .filter(({ cause }) => isAskedWhere(records, symptom, { tree: tree.id, step }, test, cause))
          .map(
            ({ cause, outcome }): Fault => ({
              at: { file: tree.file, path: ['steps', step, 'test'] },
              found: `This step asks "${test.id}", whose outcome "${outcome}" proves "${cause.id}". The symptom "${symptom.id}" does not list that cause, nor one that shows it.`,
              byHand: `add "${cause.id}" to the causes in ${symptom.file}, or ask another test here`,
            }),
          );
      });
    }),
};

interface ProofOf {
  cause: Entry<'cause'>;
  outcome: string;
}

/** Causes that an outcome of this test proves, without those that something else makes. */
function proofsBy(records: Records, test: string): ProofOf[] {
  return [...records.cause.values()].flatMap((cause) => {
    const { confirm, 'goes-on': goesOn } = cause.data;
    if (goesOn !== undefined || confirm === undefined) return [];
    return [{ test: confirm.test, outcome: confirm.outcome }, ...(confirm.or ?? [])].flatMap((proof) =>
      proof.test === test && proof.outcome !== undefined ? [{ cause, outcome: proof.outcome }] : [],
    );
  });
}

function isShownByOneOf(causes: readonly string[], test: Test, outcome: string): boolean {
  const outcomes = Object.keys(test.outcomes);
  const seen = (row: Test['otherwise']): number => {
    const filled = completeRow(outcomes, row);
    return (filled.ok ? filled.distribution[outcomes.indexOf(outcome)] : undefined) ?? 0;
  };
  const otherwise = seen(test.otherwise);
  return causes.some((cause) => {
    const row = test.evidence[cause];
    return row !== undefined && seen(row) >= Math.max(SEEN_ENOUGH, TIMES_OTHERWISE * otherwise);
  });
}

/** Whether a vehicle that can have the cause comes to the step. */
function isAskedWhere(
  records: Records,
  symptom: Entry<'symptom'>,
  at: { tree: string; step: string },
  test: Entry<'test'>,
  cause: Entry<'cause'>,
): boolean {
  const conditions = [cause.data.layout, test.data.layout, symptom.data.layout];
  return layoutsToldApart(branchFeatures(records, at.tree), conditions).some(
    (known) =>
      conditions.every((each) => layoutAllows(each, known)) &&
      placesReached(records, at.tree, known).some(({ tree, id }) => tree.id === at.tree && id === at.step),
  );
}
