/** Tests of pressure, gas, level and flow. */
import { type Bench, NOISE, shown, type ToolReading } from './bench.ts';
import { coolantOf } from './coolant-state.ts';
import { driveOf } from './drive.ts';
import { runCar } from './run.ts';
import { pressureOf } from './vessel.ts';

const OUTSIDE = 101325;
const GAS_CONSTANT = 8.314;

/** Pumped up to the cap's pressure cold, a quarter of an hour, tester's volume left out. */
export function pressureTestCold({
  car,
  random,
  outside,
}: Bench): ToolReading<'holds' | 'undecided' | 'drip-outside' | 'falls-unseen'> {
  const { values, condition } = car;
  const coolant = coolantOf(condition.mixture ?? values.mixture);
  const vapour = coolant.vapourPressure(outside);
  const brim = values.coolant + values.air;
  let liquid = values.coolant - condition.pocket;
  const room = () => Math.max(0.05e-3, brim - liquid);
  const start = OUTSIDE + values.cap;
  const gas = ((start - vapour) * (room() + values.give * values.cap)) / (GAS_CONSTANT * outside);
  const now = () => pressureOf(room(), values.give, gas, outside, vapour, OUTSIDE);
  for (let second = 0; second < 900; second++)
    if (outside < condition.leakBelow)
      liquid -= condition.leak * Math.sqrt(Math.max(0, now() - OUTSIDE) / values.cap);
  const fall = (start - now()) / 1e5 + NOISE.pressure * random.normal();
  const shows = { 'bar lost in 15 min': shown(fall, 0.01) };
  // A weep of less than some millilitres has dried before it is found.
  const found = condition.leakSeen && outside < condition.leakBelow && condition.leak * 900 > 3e-6;
  if (found) return { outcome: 'drip-outside', shows };
  if (fall < 0.03) return { outcome: 'holds', shows };
  return { outcome: fall < 0.05 ? 'undecided' : 'falls-unseen', shows };
}

/** The cap on the tester. */
export function capTest({
  car,
  sheet,
  random,
}: Bench): ToolReading<'holds' | 'leaks-early' | 'vacuum-stuck' | 'wrong-stamp'> {
  const { condition, values } = car;
  const opens = (values.cap * condition.cap * condition.capStamp) / 1e5 + NOISE.pressure * random.normal();
  const off = opens - sheet.capOpens / 1e5;
  const shows = { 'opens bar': shown(opens, 0.05) };
  if (condition.vacuum > 15e3) return { outcome: 'vacuum-stuck', shows };
  if (condition.capStamp !== 1 && Math.abs(off) >= 0.15) return { outcome: 'wrong-stamp', shows };
  return { outcome: off < -0.15 ? 'leaks-early' : 'holds', shows };
}

const SEEN = 0.05e-6;

/** Funnel on the neck for ten minutes from cold. A bubble a few seconds apart is seen: 0.02 ml/s. */
export function bubbleWatch(bench: Bench): ToolReading<'still' | 'stops' | 'undecided' | 'never-stops'> {
  const { car, outside, seed } = bench;
  const { samples } = runCar(car, driveOf(outside, [{ seconds: 600, rpm: 1200, hot: 1 }]), seed);
  const [first, late, last] = [samples[5], samples[480], samples.at(-1)];
  if (!first || !late || !last) throw new Error('a drive of no length');
  const gas = ((last.exhaust - late.exhaust) * 0.02405) / (last.time - late.time);
  const left = first.gasInCircuit - last.gasInCircuit;
  if (gas > SEEN) return { outcome: 'never-stops', shows: { bubbles: 'a string that goes on' } };
  if (left < 0.05e-3) return { outcome: 'still', shows: { bubbles: 'none' } };
  const ends = last.gasInCircuit < 0.1 * first.gasInCircuit;
  return ends
    ? { outcome: 'stops', shows: { bubbles: 'bursts, then none' } }
    : { outcome: 'undecided', shows: { bubbles: 'fewer, still coming' } };
}

/** Bottle against its cold mark. */
export function levelCold({ car, random }: Bench): ToolReading<'at-mark' | 'a-little-low' | 'far-down'> {
  const litres = Math.max(0, car.condition.missing * 1e3 + 0.04 * random.normal());
  const shows = { 'l to the mark': shown(litres, 0.1) };
  if (litres > 0.5) return { outcome: 'far-down', shows };
  return { outcome: litres > 0.12 ? 'a-little-low' : 'at-mark', shows };
}

/** Small return in the tank, idle and 2,500 rpm. */
export function returnFlow(bench: Bench): ToolReading<'streams' | 'dribbles' | 'nothing'> {
  const { car, sound, outside, seed } = bench;
  const stream = (which: typeof car) =>
    runCar(which, driveOf(outside, [{ seconds: 60 }, { seconds: 30, rpm: 2500 }], 333.15), seed).samples.at(
      -1,
    )?.ventFlow ?? 0;
  const share = (stream(car) / stream(sound)) * (car.condition.vent === 0 ? 0 : 1);
  const shows = { stream: share > 0.5 ? 'full' : share > 0.1 ? 'thin' : 'none' };
  if (share > 0.5) return { outcome: 'streams', shows };
  return { outcome: share > 0.1 ? 'dribbles' : 'nothing', shows };
}

const TURNS = 15e-6;

/** Tester on the neck, two minutes at idle and two at 2,500 rpm. Fluid turns on so many ml of exhaust; from memory. */
export function combustionGas(bench: Bench): ToolReading<'unchanged' | 'changes-quickly' | 'changes-slowly'> {
  const { car, outside, seed, random } = bench;
  const { samples } = runCar(
    car,
    driveOf(outside, [{ seconds: 120 }, { seconds: 120, rpm: 2500 }], 273.15 + 85),
    seed,
  );
  const gas = (at: number) => (samples[at]?.exhaust ?? 0) * 0.02405;
  const needs = TURNS * Math.exp(0.3 * random.normal());
  if (gas(60) > needs) return { outcome: 'changes-quickly', shows: { fluid: 'yellow within a minute' } };
  return gas(239) > needs
    ? { outcome: 'changes-slowly', shows: { fluid: 'green after minutes' } }
    : { outcome: 'unchanged', shows: { fluid: 'blue' } };
}

/** Litres out of a drain against litres in: air that stays inside is missing from the second. */
export function fillAccount({
  car,
  random,
}: Bench): ToolReading<'balanced' | 'a-little-short' | 'far-short'> {
  const short = car.condition.pocket * 1e3 + NOISE.litres * random.normal();
  const shows = { 'l short': shown(short, 0.1) };
  if (short > 1) return { outcome: 'far-short', shows };
  return { outcome: short > 0.3 ? 'a-little-short' : 'balanced', shows };
}

/** How often a hose that draws flat is soft to the hand; a judgement, no source. */
const WALL_IS_FELT = 0.7;

/** Hoses by hand, cold and just started. */
export function hoseSqueeze(
  bench: Bench,
): ToolReading<
  'springs-back' | 'air-comes' | 'soft-or-flat' | 'drawn-flat' | 'flat-when-revved' | 'hard-cold'
> {
  const { car, outside, seed, random } = bench;
  const { hoseClosesAt, tubes, vacuum, pocket } = car.condition;
  const { samples } = runCar(car, driveOf(outside, [{ seconds: 60 }]), seed);
  const bar = ((samples.at(-1)?.pressure ?? OUTSIDE) - OUTSIDE) / 1e5;
  const shows = { hose: bar > 0.25 ? 'hard' : 'springy' };
  if (bar > 0.25) return { outcome: 'hard-cold', shows };
  if (vacuum > 20e3) return { outcome: 'drawn-flat', shows: { hose: 'flat before the cap is off' } };
  // A lining that peels inside feels sound outside; a wall that has lost its spring is felt, or only seen when revved.
  if (hoseClosesAt < 4000 && tubes === 1)
    return random.chance(WALL_IS_FELT)
      ? { outcome: 'soft-or-flat', shows: { hose: 'like cloth' } }
      : { outcome: 'flat-when-revved', shows: { hose: 'firm, drawn in when revved' } };
  const air = pocket + Math.max(0, car.condition.missing - 0.7e-3);
  return air > 0.15e-3
    ? { outcome: 'air-comes', shows: { hose: 'gurgles' } }
    : { outcome: 'springs-back', shows };
}
