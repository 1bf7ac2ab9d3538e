/** Tests of what flows: clear hose, radiator and core by water, face of the radiator, thermometer at its outlet. */
import { type Bench, celsius, NOISE, shown, type ToolReading } from './bench.ts';
import { driveOf } from './drive.ts';
import { runCar } from './run.ts';

/** l in ten seconds through a clear hose in place of the core at 2,500 rpm, a sound car of 1.6 l. From memory. */
const CLEAR_HOSE = 2.4;

/** Clear hose from heater feed to return. */
export function impellerFlow({ car, random }: Bench): ToolReading<'strong' | 'undecided' | 'weak' | 'none'> {
  const { pump, beltSlip } = car.condition;
  const litres = Math.max(
    0,
    CLEAR_HOSE * (car.displacement / 1.6e-3) ** 0.5 * pump * (1 - (beltSlip * 2500) / 3000) +
      NOISE.litres * random.normal(),
  );
  const shows = { 'l in 10 s': shown(litres, 0.1) };
  if (litres >= 1.5) return { outcome: 'strong', shows };
  if (litres >= 1) return { outcome: 'undecided', shows };
  return { outcome: litres < 0.2 ? 'none' : 'weak', shows };
}

/** s for ten litres through a sound radiator off the car; from memory. */
const SOUND_RADIATOR = 16;

/** Water through the radiator by its own weight. Seconds grow as the open tubes become fewer. */
export function radiatorFlow({ car, random }: Bench): ToolReading<'free' | 'undecided' | 'backs-up'> {
  const seconds = (SOUND_RADIATOR / car.condition.tubes) * (1 + 0.15 * random.normal());
  const shows = { 's for 10 l': shown(seconds, 1) };
  if (seconds >= 60) return { outcome: 'backs-up', shows };
  return { outcome: seconds < 30 ? 'free' : 'undecided', shows };
}

/** l in half a minute through a sound core; from memory. How often a blocked one lets go; a judgement. */
const SOUND_CORE = 6;
const LETS_GO = 0.3;

/** Both hoses off, water against its flow. */
export function backFlush({
  car,
  random,
}: Bench): ToolReading<'free' | 'undecided' | 'barely-runs' | 'dirty-then-free'> {
  const litres = Math.max(0, SOUND_CORE * car.condition.core + NOISE.litres * random.normal());
  const shows = { 'l in half a minute': shown(litres, 0.1) };
  if (litres >= 4) return { outcome: 'free', shows };
  if (random.chance(LETS_GO)) return { outcome: 'dirty-then-free', shows };
  return { outcome: litres < 2 ? 'barely-runs' : 'undecided', shows };
}

/** Tubes that let less than this share through stand cold beside their neighbours. */
const PATCH_BELOW = 0.6;

/** Infrared over the face. Warmed from cold, as a radiator that starts hot would hide a thermostat that stays shut. */
export function faceMap(
  bench: Bench,
): ToolReading<'even-fall' | 'steep-fall' | 'cold-patch' | 'all-cold' | 'hot-all-over'> {
  const { car, outside, seed, random, sheet } = bench;
  const { samples } = runCar(car, driveOf(outside, [{ seconds: 1200, rpm: 1800 }, { seconds: 900 }]), seed);
  // Hot enough: past the fan's figure, or as hot as it gets.
  const at = samples.find(({ scan, time }) => time > 300 && scan >= sheet.fanOn + 2) ?? samples.at(-1);
  if (!at) throw new Error('a drive of no length');
  const read = (temperature: number) => temperature + random.normal();
  const [top, end] = [read(at.slice1), read(at.slice4)];
  const shows = { 'inlet °C': Math.round(celsius(top)), 'outlet °C': Math.round(celsius(end)) };
  if (at.scan >= sheet.fanOn - 3 && top < outside + 25) return { outcome: 'all-cold', shows };
  if (car.condition.tubes < PATCH_BELOW && car.condition.hoseClosesAt > 4000)
    return { outcome: 'cold-patch', shows };
  if (top - end >= 20) return { outcome: 'steep-fall', shows };
  const climbs = at.scan > sheet.fanOn && at.fan > 0;
  return { outcome: climbs && top - end < 4 ? 'hot-all-over' : 'even-fall', shows };
}

/** Rise of the outlet that is called a climb for good, K. */
const CLIMBS = 8;

/** Sensor in the radiator's outlet, from cold with the blower off. */
export function outletData(
  bench: Bench,
): ToolReading<'opens-early' | 'a-little-early' | 'opens-on-time' | 'opens-late'> {
  const { car, outside, seed, sheet } = bench;
  const { samples } = runCar(car, driveOf(outside, [{ seconds: 2400, rpm: 1700 }]), seed);
  const climbs = samples.find(({ lowerHose }) => lowerHose > outside + CLIMBS);
  const past = samples.find(({ scan }) => scan >= sheet.opens + 8);
  if (past && (!climbs || climbs.time > past.time))
    return { outcome: 'opens-late', shows: { 'scan °C': Math.round(celsius(past.scan)) } };
  if (!climbs) return { outcome: 'opens-on-time', shows: { outlet: 'still down' } };
  const shows = { 'scan °C as it climbs': Math.round(celsius(climbs.scan)) };
  if (climbs.scan < sheet.opens - 15) return { outcome: 'opens-early', shows };
  return { outcome: climbs.scan < sheet.opens - 5 ? 'a-little-early' : 'opens-on-time', shows };
}

/** Air through the vent line; coolant at the bleed screw. The state of the part itself. */
export function ventLine({ car }: Bench): ToolReading<'free' | 'resists' | 'blocked'> {
  return car.condition.vent === 0
    ? { outcome: 'blocked', shows: { line: 'takes no air' } }
    : { outcome: 'free', shows: { line: 'bubbles in the tank' } };
}

/** What comes out of the bleed screw when it is opened, engine cold. */
export function bleedScrew({ car }: Bench): ToolReading<'coolant' | 'air-then-coolant' | 'nothing'> {
  return car.condition.pocketIn === 'radiator' && car.condition.pocket > 0
    ? { outcome: 'air-then-coolant', shows: { screw: 'spits, then runs' } }
    : { outcome: 'coolant', shows: { screw: 'runs at once' } };
}
