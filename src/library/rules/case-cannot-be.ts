import { layoutAllows } from '../../model/layout.ts';
import type { Fault, Path } from '../finding.ts';
import { knownLayoutWords } from '../layouts-told-apart.ts';
import type { ShelfRule } from '../rule.ts';

/** A case on a vehicle that cannot have its symptom or its fault, or that has no place for a test it shows. */
export const caseCannotBe: ShelfRule = {
  id: 'case-cannot-be',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.case.values()].flatMap(({ file, data }): Fault[] => {
      const layout = records.vehicle.get(data.vehicle)?.data.layout;
      if (!layout) return [];
      const hold = (
        kind: 'symptom' | 'cause' | 'test',
        id: string,
        path: Path,
        on: 'key' | 'value',
      ): Fault[] => {
        const condition = records[kind].get(id)?.data.layout;
        if (layoutAllows(condition, layout)) return [];
        return [
          {
            at: { file, path, on },
            found: `The ${kind} "${id}" is not for this vehicle: it needs ${knownLayoutWords(flat(condition ?? {}))}.`,
            byHand: 'take another vehicle, or leave it out',
          },
        ];
      };
      return [
        ...hold('symptom', data.symptom, ['symptom'], 'value'),
        ...data.faults.flatMap((id, at) => hold('cause', id, ['faults', at], 'value')),
        ...Object.keys(data.shows).flatMap((id) => hold('test', id, ['shows', id], 'key')),
      ];
    }),
};

/** A condition as words: the values of a feature joined by or. */
function flat(condition: Readonly<Record<string, readonly string[] | undefined>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(condition).map(([feature, values]) => [feature, (values ?? []).join(' or ')]),
  );
}
