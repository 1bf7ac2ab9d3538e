import type { CompiledModel } from './compiled.ts';

/** One step of an authored tree, layout branches already resolved for one layout. */
export type Step =
  | { kind: 'test'; test: string; on: Readonly<Record<string, string>> }
  /** Prove this cause now; when it is not that, go on. */
  | { kind: 'prove'; cause: string; otherwise: string }
  /** Prove these causes in this order, then pass on. */
  | { kind: 'end'; causes: readonly string[] };

/** An authored tree. Several ways may lead to one step; none may lead back. */
export interface Tree {
  start: string;
  steps: Readonly<Record<string, Step>>;
}

/** Why a tree cannot be walked. */
export type TreeFault =
  | { kind: 'unknown-step'; from: string; step: string }
  | { kind: 'unknown-test'; step: string; test: string }
  | { kind: 'unknown-cause'; step: string; cause: string }
  | { kind: 'outcome-without-way'; step: string; test: string; outcome: string }
  | { kind: 'unknown-outcome'; step: string; test: string; outcome: string }
  | { kind: 'goes-round'; steps: readonly string[] }
  | { kind: 'too-many-ways'; ways: number };

/** Steps shared again and again multiply the ways; no tree for a person comes near this. */
const MOST_WAYS = 100_000;

/** All faults that keep a tree from being walked with this model; only steps that can be reached are looked at. */
export function faultsOfTree(compiled: CompiledModel, tree: Tree): TreeFault[] {
  const faults: TreeFault[] = [];
  const done = new Set<string>();
  const way: string[] = [];
  const visit = (id: string, from: string): void => {
    const round = way.indexOf(id);
    if (round >= 0) {
      faults.push({ kind: 'goes-round', steps: way.slice(round) });
      return;
    }
    if (done.has(id)) return;
    done.add(id);
    const step = stepOf(tree, id);
    if (step === undefined) {
      faults.push({ kind: 'unknown-step', from, step: id });
      return;
    }
    faults.push(...faultsOfStep(compiled, id, step));
    way.push(id);
    for (const next of nextOf(step)) visit(next, id);
    way.pop();
  };
  visit(tree.start, 'start');
  if (faults.length > 0) return faults;
  const ways = waysFrom(tree, tree.start, new Map());
  return ways > MOST_WAYS ? [{ kind: 'too-many-ways', ways }] : [];
}

function waysFrom(tree: Tree, id: string, counted: Map<string, number>): number {
  const stored = counted.get(id);
  if (stored !== undefined) return stored;
  const step = stepOf(tree, id);
  const next = step === undefined ? [] : nextOf(step);
  const ways = next.length === 0 ? 1 : next.reduce((total, one) => total + waysFrom(tree, one, counted), 0);
  counted.set(id, ways);
  return ways;
}

function faultsOfStep(compiled: CompiledModel, id: string, step: Step): TreeFault[] {
  const named = step.kind === 'end' ? step.causes : step.kind === 'prove' ? [step.cause] : [];
  const faults: TreeFault[] = named
    .filter((cause) => !compiled.causeNumber.has(cause))
    .map((cause) => ({ kind: 'unknown-cause', step: id, cause }));
  if (step.kind !== 'test') return faults;
  const test = compiled.model.tests.find((one) => one.id === step.test);
  if (test === undefined) return [{ kind: 'unknown-test', step: id, test: step.test }];
  for (const outcome of test.outcomes)
    if (!Object.hasOwn(step.on, outcome))
      faults.push({ kind: 'outcome-without-way', step: id, test: step.test, outcome });
  for (const outcome of Object.keys(step.on))
    if (!test.outcomes.includes(outcome))
      faults.push({ kind: 'unknown-outcome', step: id, test: step.test, outcome });
  return faults;
}

/** The step of this id; undefined when the tree has none, whatever an object is born with. */
export function stepOf(tree: Tree, id: string): Step | undefined {
  return Object.hasOwn(tree.steps, id) ? tree.steps[id] : undefined;
}

/** Ids of the steps that may follow. */
export function nextOf(step: Step): string[] {
  if (step.kind === 'test') return Object.values(step.on);
  return step.kind === 'prove' ? [step.otherwise] : [];
}

/** Ids of the steps some way leads to, in the order they are met. Steps of another layout may lie aside. */
export function reachableSteps(tree: Tree): string[] {
  const found = new Set([tree.start]);
  for (const id of found) {
    const step = stepOf(tree, id);
    if (step !== undefined) for (const next of nextOf(step)) found.add(next);
  }
  return [...found];
}

/** A tree's fault as a sentence that says what would be right. */
export function describeTreeFault(fault: TreeFault): string {
  switch (fault.kind) {
    case 'unknown-step':
      return `"${fault.from}" leads to "${fault.step}", and the tree has no such step.`;
    case 'unknown-test':
      return `Step "${fault.step}" asks the test "${fault.test}", which this symptom's model does not have.`;
    case 'unknown-cause':
      return `Step "${fault.step}" names the cause "${fault.cause}", which is not a candidate of this symptom.`;
    case 'outcome-without-way':
      return `Step "${fault.step}" does not say where "${fault.outcome}" of the test "${fault.test}" leads.`;
    case 'unknown-outcome':
      return `Step "${fault.step}" has a way for "${fault.outcome}", and the test "${fault.test}" has no such outcome.`;
    case 'goes-round':
      return `The tree comes back to where it was: ${[...fault.steps, fault.steps[0]].join(' → ')}.`;
    case 'too-many-ways':
      return `The tree can be walked in ${fault.ways} ways; at most ${MOST_WAYS} are followed.`;
  }
}
