/**
 * The scale of the temperature ladder: two straight scales joined at one temperature. Where a cooling system works
 * there is room for every degree; below, where only frost and cold soak matter, it is squeezed. The joint is drawn.
 */

/** Where the two scales meet, °C. */
export const JOINT = 70;
/** Always on the scale, °C. */
export const BOTTOM = -45;
export const TOP = 140;

/** Drawing units per kelvin above and below the joint. */
const FINE = 6.4;
const COARSE = 1.28;

/** How many times the lower scale is squeezed. */
export const SQUEEZE = FINE / COARSE;

export interface LadderScale {
  /** Lowest and highest temperature on it, °C. */
  bottom: number;
  top: number;
  height: number;
  /** Distance down from the top of the scale. */
  down(celsius: number): number;
}

/** A scale that takes in every temperature given, °C. */
export function ladderScale(celsius: readonly number[]): LadderScale {
  const bottom = Math.min(BOTTOM, ...celsius.map((each) => Math.floor(each) - 5));
  const top = Math.max(TOP, ...celsius.map((each) => Math.ceil(each) + 5));
  const jointDown = (top - JOINT) * FINE;
  const down = (each: number) => (each >= JOINT ? (top - each) * FINE : jointDown + (JOINT - each) * COARSE);
  return { bottom, top, height: down(bottom), down };
}

/** Names of the steps of the colour scale in tokens.css, and the temperature each begins at, °C. */
export const TEMPERATURE_STEPS = [
  ['freeze', Number.NEGATIVE_INFINITY],
  ['cold', -15],
  ['cool', 25],
  ['warm', 60],
  ['run', 80],
  ['hot', 100],
  ['boil', 115],
] as const;

export type TemperatureStep = (typeof TEMPERATURE_STEPS)[number][0];

/** The step of the colour scale a temperature falls in; the class is `t-` and its name. */
export function temperatureStep(celsius: number): TemperatureStep {
  let step: TemperatureStep = 'freeze';
  for (const [name, from] of TEMPERATURE_STEPS) if (celsius >= from) step = name;
  return step;
}

export type TemperatureUnit = '°C' | '°F';

/** A temperature in the reader's unit. */
export function inUnit(celsius: number, unit: TemperatureUnit): number {
  return unit === '°F' ? celsius * 1.8 + 32 : celsius;
}

/** Round temperatures to mark on the scale: where, °C; what is written, or nothing for a short tick. */
export function ticks(scale: LadderScale, unit: TemperatureUnit): { celsius: number; text: string }[] {
  const fahrenheit = unit === '°F';
  const [fine, coarse] = fahrenheit ? [20, 40] : [10, 20];
  const toCelsius = (value: number) => (fahrenheit ? (value - 32) / 1.8 : value);
  const marks: { celsius: number; text: string }[] = [];
  for (let value = -400; value <= 600; value += fine / 2) {
    const celsius = toCelsius(value);
    if (celsius < scale.bottom || celsius > scale.top) continue;
    // The joint has its own mark; a tick within a few degrees of it would run into that.
    if (celsius > JOINT - 6 && celsius < JOINT + 1) continue;
    if (celsius > JOINT) marks.push({ celsius, text: value % fine === 0 ? String(value) : '' });
    else if (value % coarse === 0) marks.push({ celsius, text: String(value).replace('-', '\u2212') });
  }
  return marks;
}
