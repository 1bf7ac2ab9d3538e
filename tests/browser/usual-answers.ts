/** The answers a technician would give on a car with a certain fault: each test by the fault's most likely outcome. */
import { resolve } from 'node:path';
import { modelOf } from '../../src/library/case.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import type { Layout } from '../../src/model/layout.ts';
import { layoutKey, NOT_IT, PROVEN, proveKey } from '../../src/site/walk/answers.ts';
import { walkTreeOf } from '../../src/site/walk/walk-tree.ts';

const { shelf } = await readShelf(resolve('content'));

export function causeTitle(id: string): string {
  const cause = shelf.records.cause.get(id);
  if (!cause) throw new Error(`No cause ${id}`);
  return cause.data.title;
}

export interface UsualAnswer {
  key: string;
  value: string;
}

/**
 * @param vehicle whose layout answers the questions of layout
 * @returns answers from the first question to an end that names the cause, or to its proof
 */
export function usualAnswers(symptom: string, cause: string, vehicle: string): UsualAnswer[] {
  const layout: Layout | undefined = shelf.records.vehicle.get(vehicle)?.data.layout;
  const record = shelf.records.tree.get(symptom);
  if (!layout || !record) throw new Error(`No vehicle ${vehicle} or tree ${symptom}`);
  const tree = walkTreeOf(record.data, (id) => {
    const { test, outcome } = shelf.records.cause.get(id)?.data.confirm ?? {};
    return test === undefined || outcome === undefined ? undefined : { test, outcome };
  });
  const model = modelOf(shelf.records, symptom, layout);
  const column = model.causes.findIndex(({ id }) => id === cause);
  /** The likeliest outcome of a test with this fault. @param but an outcome that is not it */
  const usual = (test: string, but: string | undefined): string => {
    const { likelihood = [], outcomes = [] } = model.tests.find(({ id }) => id === test) ?? {};
    const chances = outcomes.map((outcome, row) => (outcome === but ? -1 : (likelihood[row]?.[column] ?? 0)));
    return outcomes[chances.indexOf(Math.max(...chances))] ?? '';
  };
  const answers: UsualAnswer[] = [];
  let at = tree.start;
  for (let steps = 0; steps < 50; steps++) {
    const node = tree.steps[at];
    if (!node || node.kind === 'tree') throw new Error(`The walk of ${symptom} is lost at ${at}`);
    if (node.kind === 'end') {
      if (!node.causes.includes(cause))
        throw new Error(`${symptom} ends at ${node.causes.join(', ')}, not at ${cause}`);
      return answers;
    }
    if (node.kind === 'layout') {
      answers.push({ key: layoutKey(node.feature), value: layout[node.feature] });
      at = node.on[layout[node.feature]] ?? '';
    } else if (node.kind === 'prove') {
      const isIt = node.cause === cause;
      const { by } = node;
      const earlier = by && answers.find(({ key }) => key === by.test)?.value;
      // Not the outcome that would prove another cause than the one it is.
      const seen = by && (isIt ? by.outcome : (earlier ?? usual(by.test, by.outcome)));
      if (by && seen !== undefined) {
        if (earlier === undefined) answers.push({ key: by.test, value: seen });
      } else answers.push({ key: proveKey(node.cause), value: isIt ? PROVEN : NOT_IT });
      if (isIt) return answers;
      at = node.otherwise;
    } else {
      const outcome = answers.find(({ key }) => key === node.test)?.value ?? usual(node.test, undefined);
      if (!answers.some(({ key }) => key === node.test)) answers.push({ key: node.test, value: outcome });
      at = node.on[outcome] ?? '';
    }
  }
  throw new Error(`The walk of ${symptom} does not end`);
}
