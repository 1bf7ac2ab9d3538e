/** The ways through an authored tree. */
import type { KnownLayout, LayoutFeature } from '../model/layout.ts';
import type { Tree, TreeStep } from '../model/tree.ts';
import type { Path } from './finding.ts';
import type { Entry, Records } from './shelf.ts';

/** One way on from a step. */
export interface StepWay {
  /** Step or end it leads to. */
  to: string;
  /** Where it is written in the record. */
  path: Path;
}

/** Every way on from a step, with the place in the record that names it. */
export function waysOf(stepId: string, step: TreeStep): StepWay[] {
  const ways = Object.entries(step.on ?? {}).map(
    ([answer, to]): StepWay => ({ to, path: ['steps', stepId, 'on', answer] }),
  );
  if (step.otherwise !== undefined) ways.push({ to: step.otherwise, path: ['steps', stepId, 'otherwise'] });
  return ways;
}

/** Steps and ends that can be come to from the start. */
export function reachedFrom(tree: Tree): Set<string> {
  const reached = new Set<string>();
  const open = [tree.start];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (reached.has(id)) continue;
    reached.add(id);
    const step = tree.steps[id];
    if (step) open.push(...waysOf(id, step).map((way) => way.to));
  }
  return reached;
}

/** A tree and those it goes on to. */
export function treesOf(records: Records, treeId: string): Entry<'tree'>[] {
  const trees = new Map<string, Entry<'tree'>>();
  const open = [treeId];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const tree = records.tree.get(id);
    if (!tree || trees.has(id)) continue;
    trees.set(id, tree);
    for (const step of Object.values(tree.data.steps)) if (step.tree !== undefined) open.push(step.tree);
  }
  return [...trees.values()];
}

/** Layout features that a tree, or a tree it goes on to, branches on. */
export function branchFeatures(records: Records, treeId: string): LayoutFeature[] {
  const steps = treesOf(records, treeId).flatMap((tree) => Object.values(tree.data.steps));
  return [...new Set(steps.flatMap((step) => step.layout ?? []))];
}

/** A step or end of a tree. */
export interface TreePlace {
  tree: Entry<'tree'>;
  id: string;
}

/**
 * Steps and ends a walk can come to on a vehicle of this layout, those of trees it goes on to included.
 * A layout branch whose feature is not known is followed every way.
 */
export function placesReached(records: Records, treeId: string, known: KnownLayout): TreePlace[] {
  const places = new Map<string, TreePlace>();
  const open: { treeId: string; id: string }[] = [];
  const enter = (id: string) => {
    const tree = records.tree.get(id);
    if (tree) open.push({ treeId: id, id: tree.data.start });
  };
  enter(treeId);
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    const key = `${at.treeId}\n${at.id}`;
    const tree = records.tree.get(at.treeId);
    if (!tree || places.has(key)) continue;
    places.set(key, { tree, id: at.id });
    const step = tree.data.steps[at.id];
    if (!step) continue;
    if (step.tree !== undefined) enter(step.tree);
    const value = step.layout === undefined ? undefined : known[step.layout];
    const targets = value === undefined ? waysOf(at.id, step).map((way) => way.to) : [step.on?.[value]];
    for (const to of targets) if (to !== undefined) open.push({ treeId: at.treeId, id: to });
  }
  return [...places.values()];
}

/** Causes that a walk can end at or prove on the way, on a vehicle of this layout. */
export function causesReached(records: Records, treeId: string, known: KnownLayout): Set<string> {
  return new Set(
    placesReached(records, treeId, known).flatMap(({ tree, id }) => [
      ...(tree.data.ends[id]?.causes ?? []),
      ...(tree.data.steps[id]?.prove === undefined ? [] : [tree.data.steps[id].prove]),
    ]),
  );
}

/**
 * Answers that some way to a place of a tree gives: per test its outcomes. Ways through trees that go on to this one count. A
 * test that no step on the way asks may still be asked out of turn, as the proof of a cause, and come out as it may.
 */
export function answersOnTheWayTo(records: Records, treeId: string, place: string): Map<string, Set<string>> {
  const answers = new Map<string, Set<string>>();
  const add = (test: string, outcomes: readonly string[]) =>
    answers.set(test, new Set([...(answers.get(test) ?? []), ...outcomes]));
  const passed = new Set<string>();
  const open = [{ treeId, id: place }];
  const trees = new Set<string>();
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    const key = `${at.treeId}\n${at.id}`;
    const tree = records.tree.get(at.treeId)?.data;
    if (!tree || passed.has(key)) continue;
    passed.add(key);
    trees.add(at.treeId);
    for (const [id, step] of Object.entries(tree.steps)) {
      const ways = waysOf(id, step).filter(({ to }) => to === at.id);
      if (ways.length === 0) continue;
      open.push({ treeId: at.treeId, id });
      if (step.test !== undefined)
        add(
          step.test,
          ways.map(({ path }) => String(path.at(-1))),
        );
    }
    if (tree.start !== at.id) continue;
    for (const [other, { data }] of records.tree)
      for (const [id, step] of Object.entries(data.steps))
        if (step.tree === at.treeId) open.push({ treeId: other, id });
  }
  const onTheWay = new Set(answers.keys());
  for (const id of trees)
    for (const cause of Object.keys(
      records.symptom.get(records.tree.get(id)?.data.symptom ?? '')?.data.causes ?? {},
    )) {
      const { test, or = [] } = records.cause.get(cause)?.data.confirm ?? {};
      for (const proof of [...(test === undefined ? [] : [test]), ...or.map((each) => each.test)])
        if (!onTheWay.has(proof)) add(proof, Object.keys(records.test.get(proof)?.data.outcomes ?? {}));
    }
  return answers;
}
