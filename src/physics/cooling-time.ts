import { within } from './out-of-range.ts';
import { type CubicMetre, fromCelsius, type Kelvin, kelvin, type Second, second } from './units.ts';
import { timeToReach, type WarmUpResult } from './warm-up.ts';
import { fitHeat, type WarmUpVehicle, warmUp } from './warm-up-model.ts';

/**
 * Below this it scalds no more at a touch, and a system may be opened as its maker describes. The record of the cooling down goes by the
 * same. Common practice, no source.
 */
export const COOL_ENOUGH = fromCelsius(50);

/** Where the engine stands while it cools. */
export type EnginePlace = 'bonnet open' | 'bonnet shut' | 'blower before it';

/**
 * Time in which the distance to the air outside falls to 37 %, for an engine with 6 l of coolant and its bonnet open, s: least after a
 * short drive, most after a long one, when block and oil are hot throughout. From 95 to 50 °C at 20 °C that is one to two hours. Common
 * practice, no source.
 */
const COOLS_IN = { least: 65 * 60, most: 130 * 60 } as const;
const OF_LITRES = 6e-3;
/** How much slower or quicker than with the bonnet open. Common practice, no source. */
const SLOWER: Readonly<Record<EnginePlace, number>> = {
  'bonnet open': 1,
  'bonnet shut': 1.35,
  'blower before it': 0.5,
};
/** Two readings leave so much open: the first minutes are none of a lump, the air under the bonnet warms. Common practice, no source. */
const LUMP_SHARE = 0.2;
/** Each thermometer, K. Common practice, no source. */
const THERMOMETER = 1;

/** Soonest and latest. */
export interface Span {
  readonly soonest: Second;
  readonly latest: Second;
}

/**
 * Time until an engine that was switched off has cooled to a temperature, from its size alone.
 *
 * Newton's cooling; larger engines slower by the cube root of their coolant. Good to the two hours' spread of `COOLS_IN`.
 * @param capacity coolant of the whole system, 0.001 to 0.1 m3
 * @throws OutOfRange on any figure, and when it never gets there
 */
export function coolingTime(
  capacity: CubicMetre,
  standing: EnginePlace,
  from: Kelvin,
  to: Kelvin,
  outside: Kelvin,
): Span {
  const litres = within('system capacity', capacity, 1e-3, 0.1, 'm3');
  const scale = Math.cbrt(litres / OF_LITRES) * SLOWER[standing];
  const at = (seconds: number) =>
    after({ capacity: 1e5, loss: 1e5 / (seconds * scale), surroundings: outside }, from, to);
  return { soonest: at(COOLS_IN.least), latest: at(COOLS_IN.most) };
}

/**
 * The same from two readings of this engine: its own pace, carried on.
 *
 * @param first a reading, K
 * @param now the later one, at least 3 K below it, K
 * @param between 300 s to 6 h
 * @throws OutOfRange on any figure, and when it never gets there
 */
export function coolingTimeSeen(
  first: Kelvin,
  now: Kelvin,
  between: Second,
  to: Kelvin,
  outside: Kelvin,
): Span {
  const took = within('time between the readings', between, 300, 6 * 3600, 's');
  within('fall between the readings', first - now, 3, 200, 'K');
  within('coolant above the air', now - outside, 2, 200, 'K');
  const time = (fall: number) => {
    const pace = Math.log((first - outside) / (first - fall - outside)) / took;
    return after({ capacity: 1e5, loss: 1e5 * pace, surroundings: outside }, now, to);
  };
  const fell = first - now;
  const most = Math.min(fell + 2 * THERMOMETER, first - outside - 1);
  const least = Math.max(fell - 2 * THERMOMETER, fell / 3);
  return {
    soonest: second(time(most) * (1 - LUMP_SHARE)),
    latest: second(time(least) * (1 + LUMP_SHARE)),
  };
}

function after(
  lump: { capacity: number; loss: number; surroundings: Kelvin },
  from: Kelvin,
  to: Kelvin,
): Second {
  const reached: WarmUpResult = timeToReach({ ...lump, heat: 0 as never }, from, to);
  if (reached.reaches) return reached.after;
  within('temperature to cool to', to, lump.surroundings, from, 'K');
  return second(0);
}

/** How it warms up. Speeds are held. */
export type Warming = 'standing, fast idle' | 'town' | 'open road';
const SPEED: Readonly<Record<Warming, number>> = {
  'standing, fast idle': 0,
  town: 30 / 3.6,
  'open road': 80 / 3.6,
};
/** Held at 1,500 to 2,000 rpm it makes so much more heat than at idle. Common practice, no source. */
const FAST_IDLE = 1.5;
/** Engines and days differ by so much heat either way. Common practice, no source. */
const HEAT_BETWEEN = [0.75, 1.3] as const;
const HORIZON = 3600;
const STEP = 2;

/** What a warm-up comes to. */
export type WarmUpRisk =
  | { readonly gets: 'there'; readonly soonest: Second; readonly latest: Second }
  /** The least of heat does not get it there: soonest if at all, and where it levels out else. */
  | { readonly gets: 'there perhaps'; readonly soonest: Second; readonly levelsOut: Kelvin }
  | { readonly gets: 'never'; readonly levelsOut: Kelvin };

/**
 * Time to the thermostat on this day, for a sound engine whose time at 20 °C in mixed driving is known.
 *
 * The two-lump model of `warm-up-model`, fitted to that time, at 0.75 and 1.3 of its heat.
 * @param usual time from a cold start to the opening at 20 °C in mixed driving, 1 to 60 min
 * @param heater 0 off to 1 full
 * @throws OutOfRange on any figure
 */
export function warmUpTime(
  opens: Kelvin,
  usual: Second,
  warming: Warming,
  { start, outside, heater }: { start: Kelvin; outside: Kelvin; heater: number },
): WarmUpRisk {
  within('coolant at the start', start, 230, opens, 'K');
  const vehicle: WarmUpVehicle = { opens, fullyOpen: kelvin(opens + 13), fan: undefined };
  const fitted = fitHeat(vehicle, usual) * (warming === 'standing, fast idle' ? FAST_IDLE : 1);
  const drive = {
    step: second(STEP),
    speed: new Float64Array(HORIZON / STEP + 1).fill(SPEED[warming]),
    running: undefined,
    start,
    outside,
  };
  const [slow, quick] = HEAT_BETWEEN.map((share) => {
    const heat = Math.min(8, Math.max(0.1, fitted * share));
    const run = warmUp(vehicle, drive, { heat, heater, air: 1, leak: 0, shift: 0 });
    const at = run.findIndex((each) => each >= opens);
    return { at: at < 0 ? undefined : second(at * STEP), end: kelvin(run.at(-1) ?? start) };
  });
  if (!slow || !quick) throw new Error('Two ends are run');
  if (quick.at === undefined) return { gets: 'never', levelsOut: quick.end };
  return slow.at === undefined
    ? { gets: 'there perhaps', soonest: quick.at, levelsOut: slow.end }
    : { gets: 'there', soonest: quick.at, latest: slow.at };
}
