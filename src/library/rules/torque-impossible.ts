import type { Joint } from '../../model/figures.ts';
import { quantityText } from '../../model/show-quantity.ts';
import type { TorqueEntry } from '../../model/torque.ts';
import { isPropertyClass } from '../../physics/bolt.ts';
import {
  HOLE_MATERIALS,
  type HoleMaterial,
  type TorquePlausibility,
  torquePlausibility,
} from '../../physics/torque-plausibility.ts';
import { newtonMetre } from '../../physics/units.ts';
import type { ShelfRule } from '../rule.ts';

/** Where nobody has read the class off the head, only what no bolt bears is impossible. */
const STRONGEST = '12.9';

/** A torque that the named bolt, or the hole it goes into, cannot bear: ISO 898-1 and VDI 2230. */
export const torqueImpossible: ShelfRule = {
  id: 'torque-impossible',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.vehicle.values()].flatMap(({ file, data }) =>
      (Object.entries(data.torques) as [Joint, TorqueEntry][]).flatMap(([joint, entry]) => {
        const { bolt, class: propertyClass, into, is } = entry;
        const strength = propertyClass ?? STRONGEST;
        if (!isPropertyClass(strength) || !isHoleMaterial(into)) return [];
        const answer = torquePlausibility({
          thread: bolt,
          propertyClass: strength,
          into,
          torque: newtonMetre(is.high),
        });
        if (answer.verdict !== 'impossible') return [];
        return [
          {
            at: { file, path: ['torques', joint, 'is'] },
            found: refusal(entry, answer),
            expected: usual(entry, answer),
            byHand: 'look at the source again: torque, unit, thread and class belong together',
          },
        ];
      }),
    ),
};

type Impossible = Extract<TorquePlausibility, { verdict: 'impossible' }>;

function isHoleMaterial(material: string): material is HoleMaterial {
  return (HOLE_MATERIALS as readonly string[]).includes(material);
}

function refusal(
  { bolt, class: propertyClass, into, is }: TorqueEntry,
  { because, limit }: Impossible,
): string {
  const torque = quantityText(is);
  const most = `${limit.toFixed(0)}\u00a0N·m`;
  switch (because) {
    case 'no bolt of this thread':
      return `No ${bolt} bolt bears ${torque}; the strongest class is past breaking at ${most}.`;
    case 'no bolt of this class':
      return `An ${bolt} bolt of class ${propertyClass} does not bear ${torque}; it is past breaking at ${most}.`;
    case 'strips the hole':
      return `${torque} strips the ${bolt} thread out of ${into}; it gives way at ${most} at the latest.`;
    case 'pulls the insert out':
      return `${torque} pulls the ${bolt} insert out of the plastic; it gives way at ${most} at the latest.`;
  }
}

function usual({ bolt, class: propertyClass, into, is }: TorqueEntry, answer: Impossible): string {
  const { lowest, highest } = answer.figures.usual;
  const range =
    propertyClass === undefined
      ? 'Torque, unit and thread do not go together.'
      : `Usual for ${bolt} ${propertyClass} in ${into} is ${lowest.toFixed(0)} to ${highest.toFixed(0)}\u00a0N·m.`;
  const number = quantityText(is);
  const threads =
    answer.fitsThreads.length > 0 ? ` ${number} would suit ${answer.fitsThreads.join(' or ')}.` : '';
  const units =
    answer.fitsUnits.length > 0 ? ` The number would suit ${answer.fitsUnits.join(' or ')} as its unit.` : '';
  return range + threads + units;
}
