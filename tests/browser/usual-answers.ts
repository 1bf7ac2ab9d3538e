/** The answers a technician would give on a car with a certain fault: each question by the fault's most likely outcome. */
import { modelOf } from '../../src/library/case.ts';
import { asMostAre, LAYOUT_FEATURES, type Layout } from '../../src/model/layout.ts';
import { causeOfRecheck, NOT_IT, PROVEN } from '../../src/model/recheck.ts';
import { layoutKey } from '../../src/site/walk/answers.ts';
import { walkViewOf } from '../../src/site/walk/build/walk-view.ts';
import { Diagnoser } from '../../src/site/walk/page/diagnose.ts';
import { knownLayout } from '../../src/site/walk/page/replay.ts';
import { shelf } from '../shelf/shelf.ts';

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
 * @param vehicle whose layout answers the questions of layout, which the page asks while no vehicle is chosen
 * @returns answers from the first question until the walk comes to an end of its tree, or until a cause is proven
 */
export function usualAnswers(symptom: string, cause: string, vehicle: string): UsualAnswer[] {
  const { data } = walkViewOf(symptom);
  const diagnoser = new Diagnoser(data);
  const usual = usualOutcomes(symptom, cause, vehicle);
  const answers = new Map<string, string>();
  for (let steps = 0; steps < 60; steps++) {
    const { standing, end } = diagnoser.place(answers, knownLayout({}, answers), new Set());
    if (end === undefined && standing.kind === 'ask') answers.set(standing.test, usual(standing.test));
    else if (standing.kind === 'ask-layout') {
      const feature = LAYOUT_FEATURES.find((each) => each === standing.feature);
      if (!feature) throw new Error(`No layout feature ${standing.feature}`);
      const key = layoutKey(feature);
      answers.set(key, usual(key));
    } else return [...answers].map(([key, value]) => ({ key, value }));
  }
  throw new Error(`The walk of ${symptom} does not end`);
}

/** The likeliest answer to each question on a vehicle with a fault, by the key of the answer. */
export function usualOutcomes(symptom: string, cause: string, vehicle: string): (key: string) => string {
  const layout: Layout | undefined = shelf.records.vehicle.get(vehicle)?.data.layout;
  if (!layout) throw new Error(`No vehicle ${vehicle}`);
  const model = modelOf(shelf.records, symptom, layout);
  const column = model.causes.findIndex(({ id }) => id === cause);
  if (column < 0) throw new Error(`${vehicle} cannot have ${cause}`);
  return (key) => {
    const feature = LAYOUT_FEATURES.find((each) => layoutKey(each) === key);
    if (feature) return asMostAre(layout)[feature] ?? '';
    const rechecked = causeOfRecheck(key);
    if (rechecked !== undefined) return rechecked === cause ? PROVEN : NOT_IT;
    const { likelihood = [], outcomes = [] } = model.tests.find((each) => each.id === key) ?? {};
    const chances = likelihood.map((row) => row[column] ?? 0);
    return outcomes[chances.indexOf(Math.max(...chances))] ?? '';
  };
}
