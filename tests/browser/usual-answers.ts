/** The answers a technician would give on a car with a certain fault: each question by the fault's most likely outcome. */
import { resolve } from 'node:path';
import { compile } from '../../src/diagnosis/compiled.ts';
import { resolve as lookUp } from '../../src/diagnosis/state.ts';
import { placeOf } from '../../src/diagnosis/walk.ts';
import { modelOf } from '../../src/library/case.ts';
import { readShelf } from '../../src/library/read-shelf.ts';
import { LAYOUT_FEATURES, type Layout } from '../../src/model/layout.ts';
import { layoutKey } from '../../src/site/walk/answers.ts';
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
 * @returns answers from the first question until the cause is proven, or until nothing is left that is worth asking
 */
export function usualAnswers(symptom: string, cause: string, vehicle: string): UsualAnswer[] {
  const layout: Layout | undefined = shelf.records.vehicle.get(vehicle)?.data.layout;
  const record = shelf.records.tree.get(symptom);
  if (!layout || !record) throw new Error(`No vehicle ${vehicle} or tree ${symptom}`);
  const tree = walkTreeOf(record.data);
  const compiled = compile(modelOf(shelf.records, symptom, layout));
  const column = compiled.causeNumber.get(cause);
  if (column === undefined) throw new Error(`${vehicle} cannot have ${cause}`);
  const known: Record<string, string> = {};
  const answers: UsualAnswer[] = [];
  for (let steps = 0; steps < 60; steps++) {
    const evidence = answers.map(({ key, value }) => ({ test: key, outcome: value }));
    const { standing, belief } = placeOf(compiled, tree, lookUp(compiled, { evidence }), known);
    if (standing.kind === 'ask-layout') {
      const feature = LAYOUT_FEATURES.find((each) => each === standing.feature);
      if (!feature) throw new Error(`No layout feature ${standing.feature}`);
      known[feature] = layout[feature];
      answers.push({ key: layoutKey(feature), value: layout[feature] });
    } else if (standing.kind === 'ask') {
      const test = compiled.tests[compiled.testNumber.get(standing.test) ?? -1];
      const chances = test?.rows.map((row) => row[column] ?? 0) ?? [];
      const value = test?.outcomes[chances.indexOf(Math.max(...chances))] ?? '';
      answers.push({ key: standing.test, value });
    } else {
      if (standing.kind === 'proven' && standing.cause !== cause && !belief.found.includes(cause))
        throw new Error(`${symptom} proves ${standing.cause}, not ${cause}`);
      return answers;
    }
  }
  throw new Error(`The walk of ${symptom} does not end`);
}
