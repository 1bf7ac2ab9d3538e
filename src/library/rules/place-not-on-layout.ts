import { asAccess } from '../../model/access.ts';
import { CIRCUIT_PLACES, placeAgainst } from '../../model/circuit-places.ts';
import type { LayoutCondition } from '../../model/layout.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** A place of the circuit that no vehicle of the test can have, or not the vehicle whose record names it. */
export const placeNotOnLayout: ShelfRule = {
  id: 'place-not-on-layout',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => [
    ...[...records.test.values()].flatMap(({ file, data }) =>
      data.at.flatMap((place, index) => {
        const feature = placeAgainst(data.layout, place);
        if (feature === undefined) return [];
        return [
          fault({ file, path: ['at', index] }, place, `${feature}: ${data.layout?.[feature]?.join(' or ')}`),
        ];
      }),
    ),
    ...[...records.vehicle.values()].flatMap(({ file, data }) =>
      data.access.flatMap((line, index) =>
        asAccess(line).at.flatMap((place, at) => {
          const feature = placeAgainst(only(data.layout), place);
          if (feature === undefined) return [];
          const path = ['access', index, 'at', at];
          return [fault({ file, path }, place, `${feature}: ${data.layout[feature]}`)];
        }),
      ),
    ),
  ],
};

/** The layout of one vehicle as a condition that it alone fulfils. */
function only(layout: object): LayoutCondition {
  return Object.fromEntries(Object.entries(layout).map(([feature, value]) => [feature, [value]]));
}

function fault(at: Fault['at'], place: keyof typeof CIRCUIT_PLACES, has: string): Fault {
  return {
    at,
    found: `A vehicle with ${has} has no place "${place}" (${CIRCUIT_PLACES[place].name}), or it is not worked at there.`,
    byHand: 'take the place out, or name the one that such a vehicle has',
  };
}
