/** Narrow the results to one kind of page: a list to choose from, each kind with its count. */
import { KINDS } from '../../../model/kinds.ts';
import { element } from '../../browser/element.ts';

const MANY = new Map<string, string>([
  ...Object.values(KINDS).map(({ one, many }): [string, string] => [one, many]),
  ['calculator', 'Calculators'],
  ['guide', 'Guides'],
  ['page', 'Other pages'],
]);

/**
 * @param counts pages of each kind, '' for all
 * @param chosen the kind in force, '' for all
 */
export function kindOptions(counts: ReadonlyMap<string, number>, chosen: string): HTMLOptionElement[] {
  return [...counts].map(([kind, count]) => {
    const name = kind === '' ? 'Every kind' : (MANY.get(kind) ?? kind);
    return element('option', { value: kind, selected: kind === chosen }, `${name}, ${count}`);
  });
}
