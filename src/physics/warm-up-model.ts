/**
 * An engine that warms up on the road: two lumps of heat, a thermostat between them, a fan, a heater.
 *
 * Lump one is the engine with the coolant in it, lump two the radiator with its hoses. Explicit Euler in steps of a
 * second at most; the quickest time constant (radiator at full speed) is above that.
 *
 * No measured series of a warm-up was found in the literature that could be held against it. The constants are sizes
 * usual for a passenger car with about 6 l of coolant, common practice unless a source is named; a larger engine has
 * more of everything, so what is left to fit is one factor on the heat (`fitHeat`). Callers run it at the ends of
 * their ranges, never once. With the radiator out of it, it is the closed form of warm-up.ts, and a test holds it to that.
 */
import { within } from './out-of-range.ts';
import type { Kelvin, Second } from './units.ts';

export interface WarmUpVehicle {
  /** Thermostat starts to open, and is fully open. */
  readonly opens: Kelvin;
  readonly fullyOpen: Kelvin;
  /** Switched fan; undefined for a clutch or where the points are not known. */
  readonly fan: { readonly on: Kelvin; readonly off: Kelvin } | undefined;
}

/** How this day and this engine stand to the usual one. */
export interface WarmUpConditions {
  /** Heat into the coolant beside the usual, 0.1 to 8. */
  readonly heat: number;
  /** Heat the cabin takes, 0 blower off to 1 everything on full. */
  readonly heater: number;
  /** Air over the radiator and the engine beside the usual, 0.1 to 3: a head wind, a covered grille. */
  readonly air: number;
  /** Opening of the thermostat that never closes, 0 to 1: 0 seals, 1 is missing. */
  readonly leak: number;
  /** How far above its stamp the thermostat works, K, −40 to 40. */
  readonly shift: number;
}

export interface WarmUpDrive {
  /** 0.1 to 60 s. */
  readonly step: Second;
  /** Road speed at each step, m/s. */
  readonly speed: Float64Array;
  /** 0 where the engine stands still; undefined when it runs all the time. */
  readonly running: Uint8Array | undefined;
  /** Coolant at the beginning. */
  readonly start: Kelvin;
  readonly outside: Kelvin;
}

/**
 * Metal, oil and coolant that warm together, J/K: about 40 kg of aluminium and iron round the jackets at 900 and
 * 460 J/(kg·K), half the oil, and 4.5 l of coolant.
 */
export const ENGINE_CAPACITY = 52e3;
/** Radiator, hoses and the 1.5 l in them, J/K. */
const RADIATOR_CAPACITY = 7e3;

/** Heat to the coolant standing at idle, W: 0.9 l/h of petrol, 32 MJ/l, about a third of it. */
export const IDLE_HEAT = 2700;
/** Rolling and air resistance, about as much heat to the coolant as work to the road: W per m/s, W per (m/s)3. */
const ROLLING_HEAT = 170;
const DRAG_HEAT = 0.26;
/** Speeding up: 1,300 kg, again as much heat as work, J per (m/s)2. */
const SPEEDING_UP_HEAT = 1300;

/** Lost through the skin of the engine, W/K: standing, and per m/s. */
export const SKIN_LOSS = 12;
const SKIN_LOSS_BY_SPEED = 0.9;
/** Taken by the heater with the blower on full, W/K: 6 to 8 kW across 80 K. */
const HEATER_LOSS = 90;
/** Given off by the radiator, W/K: standing without a fan, per (m/s)^0.8 of ram air, and added by the fan. */
const RADIATOR_LOSS = 14;
const RADIATOR_LOSS_BY_SPEED = 42;
const FAN_LOSS = 380;
/** Heat flow carried by the coolant through a fully open thermostat, W/K: idle, and per m/s of road speed. */
const FLOW = 1100;
const FLOW_BY_SPEED = 70;

/** A wax element follows with this delay, s, and closes this much below where it opens, K (2 to 6 by the trade). */
const WAX_DELAY = 15;
const WAX_HYSTERESIS = 3;

const LONGEST_STEP = 1;

/**
 * Coolant temperature of the engine at each step of a drive, K.
 *
 * @throws OutOfRange on a figure outside its limits
 */
export function warmUp(
  vehicle: WarmUpVehicle,
  drive: WarmUpDrive,
  conditions: WarmUpConditions,
): Float64Array {
  check(vehicle, drive, conditions);
  const { speed, running, outside } = drive;
  const { heat, heater, air, leak, shift } = conditions;
  const parts = Math.ceil(drive.step / LONGEST_STEP);
  const step = drive.step / parts;
  const out = new Float64Array(speed.length);
  let engine: number = drive.start;
  let radiator: number = Math.min(drive.start, outside + (drive.start - outside) / 2);
  let opening = leak;
  let fanRuns = false;
  let before = speed[0] ?? 0;
  for (let at = 0; at < speed.length; at++) {
    out[at] = engine;
    const v = speed[at] ?? 0;
    const runs = running === undefined || running[at] === 1;
    const given = runs ? heat * heatAt(v, (v - before) / drive.step) : 0;
    const skin = SKIN_LOSS + SKIN_LOSS_BY_SPEED * v * air + (runs ? HEATER_LOSS * heater : 0);
    const ram = RADIATOR_LOSS + RADIATOR_LOSS_BY_SPEED * v ** 0.8 * air;
    const flow = runs ? FLOW + FLOW_BY_SPEED * v : 0;
    before = v;
    for (let part = 0; part < parts; part++) {
      const wanted = Math.max(leak, wantedOpening(engine - shift, opening, vehicle));
      opening += ((wanted - opening) * step) / WAX_DELAY;
      if (vehicle.fan) fanRuns = runs && engine > (fanRuns ? vehicle.fan.off : vehicle.fan.on);
      const across = flow * opening * (engine - radiator);
      engine += ((given - skin * (engine - outside) - across) * step) / ENGINE_CAPACITY;
      radiator +=
        ((across - (ram + (fanRuns ? FAN_LOSS : 0)) * (radiator - outside)) * step) / RADIATOR_CAPACITY;
    }
  }
  return out;
}

/** Heat into the coolant, W. */
function heatAt(speed: number, gain: number): number {
  return (
    IDLE_HEAT + ROLLING_HEAT * speed + DRAG_HEAT * speed ** 3 + SPEEDING_UP_HEAT * Math.max(0, gain) * speed
  );
}

/** Where the element wants to be: its opening line when it opens, the same line lower down when it closes. */
function wantedOpening(sensed: number, opening: number, { opens, fullyOpen }: WarmUpVehicle): number {
  const line = (temperature: number) => Math.min(1, Math.max(0, (temperature - opens) / (fullyOpen - opens)));
  const rising = line(sensed);
  const falling = line(sensed + WAX_HYSTERESIS);
  return Math.min(falling, Math.max(rising, opening));
}

/**
 * The factor on the heat with which this engine takes a given time from a cold start at 20 °C to the opening of its
 * thermostat in mixed driving: half a minute standing, a minute and a half at 50 km/h, and so on.
 *
 * @param time 1 to 60 min
 * @returns 0.1 to 8; the end of that range when the time asks for more
 * @throws OutOfRange
 */
export function fitHeat(vehicle: WarmUpVehicle, time: Second): number {
  within('warm-up time', time, 60, 3600, 's');
  const step = 1 as Second;
  const speed = mixedDriving(time, step);
  const mild = (273.15 + 20) as Kelvin;
  const drive = { step, speed, running: undefined, start: mild, outside: mild };
  let [low, high] = [0.1, 8];
  for (let round = 0; round < 20; round++) {
    const heat = Math.sqrt(low * high);
    const reached = Math.max(...warmUp(vehicle, drive, { heat, heater: 0.2, air: 1, leak: 0, shift: 0 }));
    if (reached < vehicle.opens) low = heat;
    else high = heat;
  }
  return Math.sqrt(low * high);
}

/** Half a minute standing, 10 s speeding up, a minute and a quarter at 50 km/h, 5 s slowing down. */
function mixedDriving(time: number, step: number): Float64Array {
  const town = 50 / 3.6;
  return Float64Array.from({ length: Math.round(time / step) + 1 }, (_, at) => {
    const moment = (at * step) % 120;
    if (moment < 30) return 0;
    if (moment < 40) return ((moment - 30) / 10) * town;
    return moment < 115 ? town : ((120 - moment) / 5) * town;
  });
}

function check({ opens, fullyOpen }: WarmUpVehicle, drive: WarmUpDrive, conditions: WarmUpConditions): void {
  within('thermostat opening', opens, 300, 400, 'K');
  within('thermostat fully open', fullyOpen, opens + 2, 440, 'K');
  within('step of the drive', drive.step, 0.1, 60, 's');
  within('temperature at the start', drive.start, 200, 450, 'K');
  within('temperature outside', drive.outside, 200, 340, 'K');
  within('heat into the coolant, beside the usual', conditions.heat, 0.1, 8, '1');
  within('heater setting', conditions.heater, 0, 1, '1');
  within('air, beside the usual', conditions.air, 0.1, 3, '1');
  within('opening that never closes', conditions.leak, 0, 1, '1');
  within('shift of the thermostat', conditions.shift, -40, 40, 'K');
  for (const speed of drive.speed) within('road speed', speed, 0, 120, 'm/s');
}
