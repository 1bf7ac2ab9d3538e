/** How walks of the case bank end, by complaint. */
import type { WalkedBy } from '../diagnosis/answered-walk.ts';
import { type CaseEnding, type CaseWalk, walkCase } from './case-walk.ts';
import type { Entry, Shelf } from './shelf.ts';

export interface WalkedCase {
  entry: Entry<'case'>;
  walk: CaseWalk;
}

/** Walks that were counted together. */
export interface BankFigures {
  cases: number;
  /** How many walks end so. */
  endings: Record<CaseEnding, number>;
  /** Minutes of questions; the lower of the middle two. 0 without cases. */
  medianMinutes: number;
}

/** @throws Error when a case names a record that the shelf lacks: the check reports that first */
export function walkBank(shelf: Pick<Shelf, 'records'>, by: WalkedBy = 'tree'): WalkedCase[] {
  return [...shelf.records.case.values()].map((entry) => ({ entry, walk: walkCase(shelf, entry.data, by) }));
}

/** Whether a person has settled that nothing on the shelf is wrong, and the car is hard. Such a case counts nowhere. */
export function isHard({ entry }: WalkedCase): boolean {
  return entry.data.settled?.['was-wrong'] === 'nothing: the car is hard';
}

/** How the walks of some cases end, counted. */
export function figuresOf(walked: readonly WalkedCase[]): BankFigures {
  const endings = { proven: 0, first: 0, named: 0, missed: 0, 'wrongly proven': 0 };
  for (const { walk } of walked) endings[walk.ending]++;
  const minutes = walked.map(({ walk }) => walk.minutes).sort((a, b) => a - b);
  return { cases: walked.length, endings, medianMinutes: minutes[Math.floor((minutes.length - 1) / 2)] ?? 0 };
}

/** By complaint, in the order of their ids; one without a case is not there. */
export function figuresBySymptom(walked: readonly WalkedCase[]): Map<string, BankFigures> {
  const bySymptom = new Map<string, WalkedCase[]>();
  for (const each of walked) {
    const { symptom } = each.entry.data;
    bySymptom.set(symptom, [...(bySymptom.get(symptom) ?? []), each]);
  }
  return new Map(
    [...bySymptom]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([symptom, all]) => [symptom, figuresOf(all)] as const),
  );
}

/** Share of the walks that end in one of these ways, 0 to 1; 0 without cases. */
export function shareOf({ cases, endings }: BankFigures, ...ways: readonly CaseEnding[]): number {
  return cases === 0 ? 0 : ways.reduce((sum, way) => sum + endings[way], 0) / cases;
}
