/** Narrow the results to one kind of page: a list to choose from, each kind with its count. */
import { KINDS } from '../../model/kinds.ts';
import { element } from '../islands/element.ts';
import type { Hit } from './find.ts';

const MANY = new Map<string, string>([
  ...Object.values(KINDS).map(({ one, many }): [string, string] => [one, many]),
  ['calculator', 'Calculators'],
  ['guide', 'Guides'],
  ['page', 'Other pages'],
]);

/** @param chosen the kind in force, '' for all */
export function kindOptions(hits: readonly Hit[], chosen: string): HTMLOptionElement[] {
  const counts = new Map<string, number>([['', hits.length]]);
  for (const { kind } of hits) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => {
    const name = kind === '' ? 'Every kind' : (MANY.get(kind) ?? kind);
    return element('option', { value: kind, selected: kind === chosen }, `${name}, ${count}`);
  });
}
