/** The cases of a complaint as the practice page loads them, and the list of all. */
import { deflateRawSync } from 'node:zlib';
import type { Entry } from '../../../library/shelf.ts';
import { FIGURES } from '../../../model/figures.ts';
import { shelf } from '../../shelf/shelf.ts';
import { walkViewOf } from '../../walk/build/walk-view.ts';
import { codeOf } from '../case-codes.ts';
import type { CaseShows, PracticeCase, PracticeIndex, PracticePack } from '../practice-data.ts';

/** A car with nothing wrong has this cause. */
const NOTHING_WRONG = 'normal-behaviour';

const causesOf = ({ faults }: Entry<'case'>['data']) => (faults.length > 0 ? faults : [NOTHING_WRONG]);

/**
 * Cases that can be practised: the fault is among the causes of the complaint, so that it can be named, and nobody has settled that
 * the car is one that no walk finds.
 */
function practised(): Entry<'case'>[] {
  return [...shelf.records.case.values()].filter(({ data }) => {
    const named = shelf.records.symptom.get(data.symptom)?.data.causes ?? {};
    const isHard = data.settled?.['was-wrong'] === 'nothing: the car is hard';
    return !isHard && causesOf(data).every((cause) => Object.hasOwn(named, cause));
  });
}

let bySymptom: Map<string, Entry<'case'>[]> | undefined;

/** @throws Error when two cases come to have one code */
function casesBySymptom(): Map<string, Entry<'case'>[]> {
  if (bySymptom) return bySymptom;
  const codes = new Map<string, string>();
  bySymptom = new Map();
  for (const entry of practised()) {
    const code = codeOf(entry.id);
    const other = codes.get(code);
    if (other !== undefined)
      throw new Error(`The cases "${other}" and "${entry.id}" have one code: give one of them another id.`);
    codes.set(code, entry.id);
    const { symptom } = entry.data;
    bySymptom.set(symptom, [...(bySymptom.get(symptom) ?? []), entry]);
  }
  return bySymptom;
}

/** Ids of the complaints that have cases to practise. */
export function practisedSymptoms(): string[] {
  return [...casesBySymptom().keys()].sort();
}

/** Every complaint with the codes of its cases, in no order that tells anything. */
export function practiceIndex(): PracticeIndex {
  return {
    symptoms: practisedSymptoms().map((symptom) => [
      symptom,
      shelf.records.symptom.get(symptom)?.data.title ?? symptom,
      (casesBySymptom().get(symptom) ?? [])
        .map(({ id }) => codeOf(id))
        .sort()
        .join(''),
    ]),
  };
}

/** @throws Error when the shelf lacks a record that a case names */
export function practicePack(symptom: string): PracticePack {
  const { data: walk } = walkViewOf(symptom);
  const tests = walk.model.tests.filter(({ isRecheck }) => !isRecheck).map(({ id }) => id);
  const cases = (casesBySymptom().get(symptom) ?? []).map(packedCase);
  return {
    walk,
    sound: Object.fromEntries(
      tests.flatMap((id) => {
        const sound = shelf.records.test.get(id)?.data.sound;
        return sound === undefined ? [] : [[id, sound]];
      }),
    ),
    measures: Object.fromEntries(
      tests.flatMap((id) => {
        const measures = shelf.records.test.get(id)?.data.scale?.measures;
        return measures === undefined ? [] : [[id, measures]];
      }),
    ),
    figures: Object.fromEntries(Object.entries(FIGURES).map(([path, { label }]) => [path, label])),
    cases: deflateRawSync(JSON.stringify(cases), { level: 9 }).toString('base64'),
  };
}

function packedCase({ id, data }: Entry<'case'>): PracticeCase {
  const shows: CaseShows = Object.fromEntries(
    Object.entries(data.shows).map(([test, { sees, reads = '', why }]) => [test, [sees, reads, why]]),
  );
  return {
    code: codeOf(id),
    vehicle: data.vehicle,
    diesel: shelf.records.vehicle.get(data.vehicle)?.data.engine?.fuel === 'diesel',
    said: data.said,
    faults: causesOf(data),
    mechanism: data.mechanism,
    shows,
    rechecks: data.rechecks ?? {},
  };
}
