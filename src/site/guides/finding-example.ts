/** A complaint of this shelf before and after one finding, worked out by the same engine as the walk. */
import { type CauseShare, posterior } from '../../diagnosis/posterior.ts';
import { entryOf } from '../shelf/record-pages.ts';
import { layoutCasesOf } from '../walk/build/layout-cases.ts';

export interface FindingExample {
  /** What was seen; undefined before anything was. */
  seen?: string;
  ranked: CauseShare[];
}

/**
 * The ranking at the start and after each outcome of a test alone.
 * @throws Error when no vehicle of the shelf has both the complaint and the test
 */
export function findingExample(symptom: string, test: string, most: number): FindingExample[] {
  const found = layoutCasesOf(symptom).find(({ compiled }) => compiled.testNumber.has(test));
  if (!found) throw new Error(`No layout of the shelf has the test ${test} under the complaint ${symptom}.`);
  const top = (evidence: { test: string; outcome: string }[]) =>
    posterior(found.compiled, { evidence }).ranked.slice(0, most);
  return [
    { ranked: top([]) },
    ...Object.entries(entryOf('test', test).data.outcomes).map(([outcome, { label }]) => ({
      seen: label,
      ranked: top([{ test, outcome }]),
    })),
  ];
}
