/** A complaint of this shelf before and after one finding, worked out by the same engine as the walk. */
import { type CompiledModel, compile } from '../../diagnosis/compiled.ts';
import { type CauseShare, posterior } from '../../diagnosis/posterior.ts';
import { caseOf } from '../../library/case.ts';
import { commonestLayout } from '../../model/layout.ts';
import { entryOf } from '../shelf/record-pages.ts';
import { shelf } from '../shelf/shelf.ts';
import { layoutCasesOf } from '../walk/build/layout-cases.ts';

export interface FindingExample {
  /** What was seen; undefined before anything was. */
  seen?: string;
  ranked: CauseShare[];
}

/**
 * The ranking at the start and after each outcome of a test alone, on a layout of the shelf's vehicles that has the test; where no
 * vehicle has it, on the commonest that can.
 * @throws Error when no layout can have both the complaint and the test
 */
export function findingExample(symptom: string, test: string, most: number): FindingExample[] {
  const compiled =
    layoutCasesOf(symptom).find((each) => each.compiled.testNumber.has(test))?.compiled ??
    compiledFor(symptom, test);
  const top = (evidence: { test: string; outcome: string }[]) =>
    posterior(compiled, { evidence }).ranked.slice(0, most);
  return [
    { ranked: top([]) },
    ...Object.entries(entryOf('test', test).data.outcomes).map(([outcome, { label }]) => ({
      seen: label,
      ranked: top([{ test, outcome }]),
    })),
  ];
}

function compiledFor(symptom: string, test: string): CompiledModel {
  const layout = commonestLayout(shelf.shop.layouts ?? {}, entryOf('test', test).data.layout);
  const compiled = compile(caseOf(shelf, symptom, layout).model);
  if (!compiled.testNumber.has(test))
    throw new Error(`No layout has the test ${test} under the complaint ${symptom}.`);
  return compiled;
}
