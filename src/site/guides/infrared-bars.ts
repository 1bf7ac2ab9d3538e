/** What an infrared thermometer shows of one temperature on different surfaces. */
import { BARE_ALUMINIUM, infraredReading } from '../../physics/infrared.ts';
import { fromCelsius, type Kelvin } from '../../physics/units.ts';
import { coordinate, picture } from '../drawings/svg.ts';

/** What is under all of them, °C, and the bay they mirror, °C. */
export const TRUE_CELSIUS = 90;
export const BAY_CELSIUS = 25;
const SET = 0.95;
const ZERO = 273.15;

export interface Surface {
  name: string;
  /** Emissivity from and to. Handbook ranges, from memory. */
  emissivity: readonly [number, number];
}

export interface SurfaceReading extends Surface {
  /** °C, lowest and highest. */
  low: number;
  high: number;
}

const SURFACES: readonly Surface[] = [
  { name: 'Black rubber hose', emissivity: [0.9, 0.95] },
  { name: 'Paper tape, matt paint', emissivity: [0.9, 0.95] },
  { name: 'Rust, rough cast iron', emissivity: [0.7, 0.9] },
  { name: 'Aluminium gone dull', emissivity: [0.2, 0.4] },
  { name: 'Bare aluminium', emissivity: BARE_ALUMINIUM },
];

/** What the thermometer shows of each, set to 0.95. */
export const shownOn: readonly SurfaceReading[] = SURFACES.map((surface) => {
  const [low, high] = surface.emissivity.map((emissivity) => {
    const spot = { emissivity, set: SET, surroundings: fromCelsius(BAY_CELSIUS) };
    const shows: Kelvin = infraredReading(spot, fromCelsius(TRUE_CELSIUS));
    return shows - ZERO;
  });
  if (low === undefined || high === undefined) throw new Error(`No emissivity of ${surface.name}.`);
  return { ...surface, low, high };
});

const LEFT = 8;
const TOP = 26;
const ROW = 44;
/** Drawing units for a kelvin. */
const KELVIN = 3;
const WIDTH = 340;

/** Bars from nothing to what is shown, their uncertain end washed, and a stroke at the true temperature. @param id prefix of the ids */
export function drawInfraredBars(id: string): string {
  const across = (celsius: number) => LEFT + celsius * KELVIN;
  const bottom = TOP + shownOn.length * ROW;
  const rows = shownOn.map(({ name, low, high }, index) => {
    const y = TOP + index * ROW;
    const [from, to] = [Math.round(low), Math.round(high)];
    const words = from === to ? `${from} °C` : `${from} to ${to} °C`;
    return (
      `<text x="${LEFT}" y="${y + 12}">${name}: <tspan class="strong">${words}</tspan></text>` +
      `<rect class="bar" x="${LEFT}" y="${y + 18}" width="${coordinate(low * KELVIN)}" height="12"/>` +
      `<rect class="part" x="${coordinate(across(low))}" y="${y + 18}" width="${coordinate((high - low) * KELVIN)}" height="12"/>`
    );
  });
  const truth = coordinate(across(TRUE_CELSIUS));
  const description = shownOn
    .map(({ name, low, high }) => `${name} ${Math.round(low)} to ${Math.round(high)} °C`)
    .join('; ');
  return picture(
    {
      id,
      kind: 'guide',
      title: `What infrared shows of ${TRUE_CELSIUS} °C`,
      description: `Thermometer set to ${SET}, bay at ${BAY_CELSIUS} °C. ${description}.`,
      width: WIDTH,
      height: bottom + 8,
    },
    `<text class="small" x="${truth}" y="14" text-anchor="middle">true: ${TRUE_CELSIUS} °C</text>` +
      `<path class="heavy" d="M${truth} ${TOP - 6}V${bottom}"/>${rows.join('')}`,
  );
}
