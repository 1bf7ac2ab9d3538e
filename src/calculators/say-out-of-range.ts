/** A figure outside its formula, said in the reader's units. */
import type { OutOfRange } from '../physics/out-of-range.ts';
import type { QuantityFormatter } from './declaration.ts';

/** Unit the arithmetic names -> metric unit and decimals a person reads, and what the SI value is multiplied by first. */
const READ: Readonly<Record<string, readonly [unit: string, decimals: number]>> = {
  K: ['°C', 0],
  Pa: ['kPa', 0],
  m3: ['l', 2],
  m2: ['cm²', 0],
  m: ['m', 2],
  'm3/s': ['l/min', 1],
  W: ['kW', 1],
  ohm: ['Ω', 0],
  V: ['V', 2],
  A: ['A', 1],
  s: ['min', 0],
  N·m: ['N·m', 1],
};

/** Kelvin that are a difference or a constant, not a temperature. */
const NO_TEMPERATURE = /difference|distance|B value/;

/** "Coolant temperature comes to 120 °C. The formula holds up to 100 °C; no figure is given beyond it." */
export function sayOutOfRange(
  { quantity, value, limits, unit }: OutOfRange,
  show: QuantityFormatter,
): string {
  const say = (si: number) => {
    if (unit === 'K' && NO_TEMPERATURE.test(quantity)) return show.difference(si, 1);
    if (unit === '1') return quantity.includes('glycol') ? show.quantity(si, '%', 0) : plain(si);
    const read = READ[unit];
    return read ? show.quantity(si, ...read) : `${plain(si)} ${unit}`;
  };
  const [low, high] = limits;
  const holds = Number.isFinite(low)
    ? Number.isFinite(high)
      ? `from ${say(low)} to ${say(high)}`
      : `from ${say(low)} upwards`
    : `up to ${say(high)}`;
  const comes = Number.isFinite(value) ? ` comes to ${say(value)} and` : '';
  const name = quantity.charAt(0).toUpperCase() + quantity.slice(1);
  return `${name}${comes} can only be worked with ${holds}. No figure is given outside that.`;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(3))).replace('-', '\u2212');
}
