import { LAYOUT_FEATURES, layoutAllows } from '../../model/layout.ts';
import type { ShelfRule } from '../rule.ts';

/** A candidate cause that no vehicle with the complaint can have: one of the two layouts is wrong. */
export const causeOnNoVehicle: ShelfRule = {
  id: 'cause-on-no-vehicle',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.symptom.values()].flatMap(({ file, data }) =>
      Object.keys(data.causes).flatMap((id) => {
        const has = records.cause.get(id)?.data.layout;
        const feature = LAYOUT_FEATURES.find((each) => {
          const values: readonly string[] | undefined = has?.[each];
          return values?.every((value) => !layoutAllows(data.layout, { [each]: value }));
        });
        if (!feature) return [];
        return [
          {
            at: { file, path: ['causes', id], on: 'key' as const },
            found: `No vehicle with this complaint can have "${id}".`,
            expected: `The complaint is for ${feature}: ${data.layout?.[feature]?.join(' or ')}; the cause for ${has?.[feature]?.join(' or ')}.`,
            byHand: 'take the cause off this list, or correct one of the two layouts',
          },
        ];
      }),
    ),
};
