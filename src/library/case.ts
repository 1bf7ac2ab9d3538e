/** From records to what the diagnosis engine computes with: one complaint on one layout. */
import { type CauseWeights, chancesWithCounts, weighedWithCounts } from '../diagnosis/counted.ts';
import { completeMatrix } from '../diagnosis/likelihood.ts';
import {
  type Finding,
  type Model,
  type ModelCause,
  type ModelTest,
  shareOfSomethingElse,
  USUAL_CHANGE_OVER,
} from '../diagnosis/model.ts';
import type { Tree } from '../diagnosis/tree.ts';
import { weightOf } from '../diagnosis/words.ts';
import type { Cause } from '../model/cause.ts';
import { type Counts, NO_COUNTS } from '../model/counts.ts';
import { type KnownLayout, layoutAllows } from '../model/layout.ts';
import { PROVEN, RECHECK_OUTCOMES, recheckId, recheckOf } from '../model/recheck.ts';
import type { Symptom } from '../model/symptom.ts';
import type { Test } from '../model/test.ts';
import { engineTree } from './engine-tree.ts';
import type { Records, Shelf } from './shelf.ts';
import { treesOf } from './tree-ways.ts';

/** A complaint on one layout, ready to be computed with. */
export interface Case {
  model: Model;
  /** The authored tree with every layout branch resolved and other trees joined on. */
  tree: Tree;
}

/**
 * The model and the authored tree of a complaint on one layout.
 * @param known the vehicle's layout; every feature its tree branches on must be in it
 * @throws when a record is missing or contradicts itself (the shelf check reports that first), or a branch is open
 */
export function caseOf(
  shelf: Pick<Shelf, 'records'> & Partial<Pick<Shelf, 'counts'>>,
  symptomId: string,
  known: KnownLayout,
): Case {
  const { records, counts } = shelf;
  const model = modelOf(records, symptomId, known, counts);
  const { tree } = need(records.symptom.get(symptomId), `symptom "${symptomId}"`).data;
  return { model, tree: engineTree(records, tree, known, new Set(model.causes.map((cause) => cause.id))) };
}

/**
 * The model of a complaint: the candidate causes this layout can have, and every test of the shelf that can be
 * done on it and tells them apart, or is asked by the complaint's tree.
 * @param known what is known of the vehicle's layout; {} keeps everything any vehicle can have
 * @param counts what finished jobs came to; the words of the records are weighed with them
 * @throws when a record is missing or contradicts itself: the shelf check reports that first
 */
export function modelOf(
  records: Records,
  symptomId: string,
  known: KnownLayout,
  counts: Counts = NO_COUNTS,
): Model {
  const symptom = need(records.symptom.get(symptomId), `symptom "${symptomId}"`).data;
  const weighed = weighedWithCounts(byWords(symptom), counts.causes[symptomId] ?? {});
  const causes = candidateCauses(records, symptomId, symptom, known, weighed.weights);
  const ids = causes.map((cause) => cause.id);
  const asked = testsOf(records, symptom.tree);
  const telling = new Set([...asked, ...causes.flatMap(({ proofs = [] }) => proofs.map(({ test }) => test))]);
  const about = testsByCause(records);
  for (const cause of ids) for (const test of about.get(cause) ?? []) telling.add(test);
  const usable = [...records.test.values()].filter(
    ({ id, data }) =>
      telling.has(id) && (asked.has(id) || isFor(data, symptomId)) && layoutAllows(data.layout, known),
  );
  const groups = groupsOf(usable);
  return {
    causes,
    somethingElse: shareOfSomethingElse(weighed.somethingElse),
    passOnMinutes: symptom['pass-on'],
    tests: [
      ...usable.map(({ id, data }) => modelTest(id, data, ids, groups.get(id), counts)),
      ...recheckTests(records, ids),
    ],
    changeOver: USUAL_CHANGE_OVER,
  };
}

function isFor(test: Test, symptomId: string): boolean {
  return test['only-for']?.includes(symptomId) ?? true;
}

/** Ids of the tests that a tree asks, those of the trees it goes on into included. */
export function testsOf(records: Records, treeId: string): Set<string> {
  const steps = treesOf(records, treeId).flatMap((tree) => Object.values(tree.data.steps));
  return new Set(steps.flatMap((step) => step.test ?? []));
}

const byCause = new WeakMap<Records, Map<string, string[]>>();

/** Ids of the tests with evidence about each cause, looked up once for a whole shelf. */
function testsByCause(records: Records): Map<string, string[]> {
  const known = byCause.get(records);
  if (known) return known;
  const tests = new Map<string, string[]>();
  for (const { id, data } of records.test.values())
    for (const cause of Object.keys(data.evidence)) tests.set(cause, [...(tests.get(cause) ?? []), id]);
  byCause.set(records, tests);
  return tests;
}

function candidateCauses(
  records: Records,
  symptomId: string,
  symptom: Symptom,
  known: KnownLayout,
  weights: ReadonlyMap<string, number>,
): ModelCause[] {
  return Object.keys(symptom.causes).flatMap((id) => {
    const { layout, confirm, 'goes-on': goesOn } = need(records.cause.get(id), `cause "${id}"`).data;
    if (!layoutAllows(layout, known)) return [];
    const test = confirm?.test === undefined ? undefined : records.test.get(confirm.test)?.data;
    const engine = test && test.engine !== 'any' ? test.engine : undefined;
    const minutes = need(confirm?.minutes ?? test?.minutes, `proof of cause "${id}"`);
    return [
      {
        id,
        weight: need(weights.get(id), `weight of cause "${id}"`),
        proveMinutes: minutes,
        ...(engine && { proveEngine: engine }),
        proofs: proofsOf(confirm),
        ...(confirm?.recheck !== undefined && { recheck: { test: recheckId(id), outcome: PROVEN } }),
        ...(goesOn !== undefined && goesOn === symptomId && { consequence: true }),
      },
    ];
  });
}

function proofsOf(confirm: Cause['confirm']): Finding[] {
  const { test, outcome, or = [] } = confirm ?? {};
  return test === undefined || outcome === undefined ? or : [{ test, outcome }, ...or];
}

function modelTest(
  id: string,
  test: Test,
  causes: readonly string[],
  group: string | undefined,
  counts: Counts,
): ModelTest {
  const outcomes = Object.keys(test.outcomes);
  const completed = completeMatrix(outcomes, causes, test.evidence, test.otherwise);
  if (!completed.ok) throw new Error(`The evidence of test "${id}" contradicts itself.`);
  return {
    id,
    minutes: test.minutes,
    outcomes,
    likelihood: withCounted(completed.likelihood, outcomes, causes, (cause) => counts.readings[cause]?.[id]),
    ...(test.engine !== 'any' && { engine: test.engine }),
    ...(test.leaves && { leaves: test.leaves }),
    ...(test.place !== 'bay' && { place: test.place }),
    ...(group !== undefined && { group }),
  };
}

/** Shares as the words of a complaint say. */
export function byWords({ causes, 'something-else': somethingElse }: Symptom): CauseWeights {
  return {
    weights: new Map(Object.entries(causes).map(([id, prior]) => [id, weightOf(prior)])),
    somethingElse: shareOfSomethingElse(somethingElse),
  };
}

/** The table with what was counted under some causes; an outcome that the test no longer has counts for nothing. */
function withCounted(
  likelihood: readonly (readonly number[])[],
  outcomes: readonly string[],
  causes: readonly string[],
  countsOf: (cause: string) => Readonly<Record<string, number>> | undefined,
): number[][] {
  const table = likelihood.map((row) => [...row]);
  for (const [column, cause] of causes.entries()) {
    const counts = countsOf(cause);
    if (counts === undefined) continue;
    const chances = chancesWithCounts(
      table.map((row) => row[column] ?? 0),
      outcomes.map((outcome) => counts[outcome] ?? 0),
    );
    for (const [at, row] of table.entries()) row[column] = chances[at] ?? 0;
  }
  return table;
}

/**
 * Tests that repeat each other, directly or through a third, share a group named after its first test.
 * @returns group by test id; tests that repeat nothing have none
 */
function groupsOf(tests: readonly { id: string; data: Test }[]): Map<string, string> {
  const parent = new Map<string, string>(tests.map(({ id }) => [id, id]));
  const rootOf = (id: string): string => {
    const above = parent.get(id) ?? id;
    return above === id ? id : rootOf(above);
  };
  for (const { id, data } of tests)
    for (const other of data.repeats) {
      if (!parent.has(other)) continue;
      const [first = id, second = other] = [rootOf(id), rootOf(other)].sort();
      parent.set(second, first);
    }
  const sizes = new Map<string, number>();
  for (const { id } of tests) sizes.set(rootOf(id), (sizes.get(rootOf(id)) ?? 0) + 1);
  return new Map(
    tests.map(({ id }) => [id, rootOf(id)] as const).filter(([, root]) => (sizes.get(root) ?? 0) > 1),
  );
}

function need<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`The shelf has no ${what}.`);
  return value;
}

/** The rechecks of the causes as tests of two outcomes. */
function recheckTests(records: Records, causes: readonly string[]): ModelTest[] {
  return causes.flatMap((id): ModelTest[] => {
    const recheck = recheckOf(need(records.cause.get(id), `cause "${id}"`).data);
    if (recheck === undefined) return [];
    const seen = [
      ...causes.map((other) =>
        other === id ? recheck.withIt : (recheck.withThese[other] ?? recheck.withAnother),
      ),
      recheck.withSomethingElse,
    ];
    return [
      {
        id: recheckId(id),
        minutes: recheck.minutes,
        outcomes: [...RECHECK_OUTCOMES],
        likelihood: [seen, seen.map((share) => 1 - share)],
        isRecheck: true,
      },
    ];
  });
}
