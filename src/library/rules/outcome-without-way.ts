import { LAYOUT } from '../../model/layout.ts';
import type { Fault, Path } from '../finding.ts';
import { listed, nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/** A step on a test has a way for each of its outcomes, a step on the layout one for each value, and no others. */
export const outcomeWithoutWay: ShelfRule = {
  id: 'outcome-without-way',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.tree.values()].flatMap(({ file, data }) =>
      Object.entries(data.steps).flatMap(([id, { test, layout, on }]) => {
        const outcomes = test === undefined ? undefined : records.test.get(test)?.data.outcomes;
        const answers = layout ? [...LAYOUT[layout]] : outcomes && Object.keys(outcomes);
        if (!on || !answers) return [];
        const what = layout ? `value of "${layout}"` : `outcome of "${test}"`;
        return compare(file, ['steps', id, 'on'], answers, Object.keys(on), what);
      }),
    ),
};

function compare(file: string, path: Path, answers: string[], written: string[], what: string): Fault[] {
  const without = answers.filter((answer) => !written.includes(answer));
  const faults: Fault[] = [];
  for (const answer of written) {
    if (answers.includes(answer)) continue;
    const nearest = nearestOf(answer, without);
    // A slip of the pen leaves its outcome without a way: one finding says both.
    if (nearest) without.splice(without.indexOf(nearest.word), 1);
    faults.push({
      at: { file, path: [...path, answer], on: 'key' },
      found: `There is no ${what} called "${answer}".`,
      expected: nearest ? `Right is "${nearest.word}".` : `There is ${listed(answers)}.`,
      byHand: 'use one that there is',
      ...(nearest && { replaceBy: nearest.word }),
    });
  }
  if (without.length > 0)
    faults.push({
      at: { file, path, on: 'key' },
      found: `${listed(without)} ${without.length === 1 ? 'has' : 'have'} no way on here.`,
      expected: `Each ${what} leads to a step or an end.`,
      byHand: `add a line "${without[0]}: <step or end>"`,
    });
  return faults;
}
