/** Questions about the coolant and the place, asked by several calculators in the same words. */
import type { Glycol, Mixture } from '../physics/glycol.ts';
import { toMassFraction } from '../physics/strength.ts';
import { fromCelsius, type Metre, metre, volumeFraction } from '../physics/units.ts';
import type { ChoiceInput, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

export const GLYCOL: ChoiceInput = {
  kind: 'choice',
  name: 'glycol',
  label: 'Glycol',
  hint: 'On the canister. Colour tells nothing.',
  default: 'ethylene',
  options: [
    { value: 'ethylene', label: 'ethylene glycol, the usual one' },
    { value: 'propylene', label: 'propylene glycol' },
  ],
};

const STRENGTH = {
  kind: 'quantity',
  name: 'strength',
  label: 'Concentrate by volume',
  dimension: 'share',
  unit: '%',
  default: '50 %',
  figure: { path: 'coolant.mixture', end: 'middle' },
} as const satisfies Partial<QuantityInput>;

/** Any strength, water to undiluted. */
export const ANY_STRENGTH: QuantityInput = { ...STRENGTH, limits: ['0 %', '100 %'] };

/** As far as the published correlation for density and heat runs: 60 % by mass. */
export const CORRELATED_STRENGTH: QuantityInput = { ...STRENGTH, limits: ['0 %', '57 %'] };

export const CAPACITY: QuantityInput = {
  kind: 'quantity',
  name: 'capacity',
  label: 'The whole system holds',
  dimension: 'volume',
  unit: 'l',
  default: '6.0 l',
  limits: ['1 l', '60 l'],
  figure: { path: 'coolant.capacity', end: 'middle' },
};

/** The expansion bottle: what a fall of its level is in litres. */
export const BOTTLE_AREA: QuantityInput = {
  kind: 'quantity',
  name: 'area',
  label: 'The bottle from above',
  hint: 'Length times width inside, such as 12 x 8 cm.',
  dimension: 'area',
  unit: 'cm²',
  default: '100 cm²',
  limits: ['10 cm²', '1500 cm²'],
  reading: true,
  optional: true,
};

export const CAP: QuantityInput = {
  kind: 'quantity',
  name: 'cap',
  label: 'Cap opens at',
  hint: 'As stamped on it, above the air outside. 0 for an open system or a cap that does not hold.',
  dimension: 'pressure',
  unit: 'bar',
  default: '1.4 bar',
  limits: ['0 bar', '3 bar'],
  figure: { path: 'cap.opens', end: 'low' },
};

export const ALTITUDE: QuantityInput = {
  kind: 'quantity',
  name: 'altitude',
  label: 'Altitude',
  hint: 'Above the sea, here.',
  dimension: 'length',
  unit: 'm',
  default: '0 m',
  limits: ['-400 m', '5500 m'],
};

/** No cap is made for less, Pa: what is typed so is a slip in the unit. Common practice, no source. */
const WEAKEST_CAP = 0.2e5;

/** Asks back about a cap that none is: 1.4 typed where the unit beside it says psi. */
export function doubtfulCap(values: Values, show: QuantityFormatter): Refusal | undefined {
  const cap = values.number('cap');
  if (cap === 0 || cap >= WEAKEST_CAP) return undefined;
  return refuse(
    'cap',
    `${show.quantity(cap, 'bar', 2)} is less than any cap holds. Look at the unit beside it; for an open system, or a cap that does not hold, write 0.`,
  );
}

/** No instrument of a workshop tells so little from water: what is typed so is a share of one, 0.5 for 50 %. */
const NO_STRENGTH = 0.02;

/** Asks back about a strength that nobody can have read. @param name the field */
export function doubtfulStrength(values: Values, name: string, show: QuantityFormatter): Refusal | undefined {
  const strength = values.number(name);
  if (strength === 0 || strength >= NO_STRENGTH) return undefined;
  const typed = show.quantity(strength, '%', strength * 100 < 1 ? 2 : 1);
  return refuse(
    name,
    `${typed} is less than any instrument tells from water. Write 0 for water${strength <= 0.01 ? `, or ${show.quantity(strength * 100, '%', 0)} if a share of one was meant` : ''}.`,
  );
}

/** The glycol chosen; what is not propylene glycol is ethylene glycol. */
export function glycolOf(values: Values): Glycol {
  return values.choice('glycol') === 'propylene' ? 'propylene' : 'ethylene';
}

/** The mixture asked about, its strength given by volume. */
export function mixtureOf(values: Values): Mixture {
  const glycol = glycolOf(values);
  return { glycol, fraction: toMassFraction(glycol, volumeFraction(values.number('strength'))) };
}

/** The altitude asked for, in metres; below the sea is negative. */
export function altitudeOf(values: Values): Metre {
  return metre(values.number('altitude'));
}

/** Said wherever somebody may be led to open a hot system. */
export function openingCaution(show: QuantityFormatter): string {
  return `Never open a hot system. Wait until the hose to the radiator can be held in the bare hand, cover the cap, turn it slowly to its first stop, and follow the maker’s procedure. Water of ${show.quantity(fromCelsius(60), '°C', 0)} burns skin in 5 seconds (Moritz and Henriques, 1947).`;
}
