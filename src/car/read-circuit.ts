/** Tests of motors, switches and wires, and looks at what stands in plain sight: the state of the part, with its reader. */
import { type Bench, NOISE, shown, type ToolReading } from './bench.ts';
import { CHARGING, feedOf } from './fan.ts';

const most = ({ car }: Bench) => (car.layout.fan === 'electric, two stages' ? 2 : 1);
const feed = (bench: Bench) =>
  feedOf(bench.car, bench.car.condition.fanCommand === 'open' ? 0 : most(bench), CHARGING);

/** Belt by eye, hand and water. */
export function beltCheck({ car }: Bench): ToolReading<'sound' | 'slips' | 'crooked' | 'broken'> {
  return car.condition.beltSlip > 0
    ? { outcome: 'slips', shows: { belt: 'glazed, slack, loud with water' } }
    : { outcome: 'sound', shows: { belt: 'sound' } };
}

/** A clutch by hand, hot and cold. Between these grips nobody is sure. */
const GRIPS = 0.45;
const SPINS_FREE = 0.3;

/** How the viscous clutch turns by hand, engine off. */
export function viscousSpin({
  car,
  random,
}: Bench): ToolReading<'grips-hot' | 'undecided' | 'spins-free' | 'locked'> {
  const { clutch, clutchGrip } = car.condition;
  if (clutch === 'seized') return { outcome: 'locked', shows: { fan: 'cannot be turned cold' } };
  const grip = clutchGrip + 0.05 * random.normal();
  if (grip >= GRIPS) return { outcome: 'grips-hot', shows: { turns: 'stops within two' } };
  return grip < SPINS_FREE
    ? { outcome: 'spins-free', shows: { turns: 'five and more' } }
    : { outcome: 'undecided', shows: { turns: 'three' } };
}

/** Pump in the heater hose, by ear and by its return. */
export function heaterPump({
  car,
}: Bench): ToolReading<'runs' | 'runs-no-flow' | 'silent-with-voltage' | 'no-voltage'> {
  const { heaterPump: runs, core, valve, pocketIn, pocket } = car.condition;
  if (!runs) return { outcome: 'silent-with-voltage', shows: { pump: 'silent', V: 13.6 } };
  const shut = core * valve < 0.2 || (pocketIn === 'heater' && pocket > 0.35e-3);
  return shut
    ? { outcome: 'runs-no-flow', shows: { pump: 'hums', return: 'cool' } }
    : { outcome: 'runs', shows: { pump: 'hums', return: 'warm' } };
}

/** Electric water pump on command. Less than this share of its flow is seen at the return. */
const SEEN_WEAK = 0.7;

/** What the return shows when the scan tool commands the electric pump. */
export function electricPump({
  car,
  random,
}: Bench): ToolReading<'runs-and-flows' | 'runs-weak' | 'silent-with-voltage' | 'no-voltage'> {
  const flow = car.condition.pump;
  if (flow === 0) return { outcome: 'silent-with-voltage', shows: { pump: 'stands' } };
  const weak = flow + 0.08 * random.normal() < SEEN_WEAK;
  return weak
    ? { outcome: 'runs-weak', shows: { return: 'hardly follows' } }
    : { outcome: 'runs-and-flows', shows: { return: 'follows' } };
}

/** The radiator's switch in the pot. */
export function switchTemperature({
  car,
}: Bench): ToolReading<'as-stamped' | 'closed-when-cold' | 'never-closes' | 'closes-and-fails-loaded'> {
  const { fanSwitch } = car.condition;
  if (fanSwitch === 'closed') return { outcome: 'closed-when-cold', shows: { cold: 'continuity' } };
  return fanSwitch === 'open'
    ? { outcome: 'never-closes', shows: { hot: 'open' } }
    : { outcome: 'as-stamped', shows: { hot: 'closes' } };
}

/** Element of a map-controlled thermostat. Half of those that never heat have lost their feed; the car keeps its kind. */
export function mapCircuit({
  car,
  random,
}: Bench): ToolReading<'in-order' | 'element-faulty' | 'always-driven' | 'no-supply'> {
  const { mapHeater } = car.condition;
  if (mapHeater === 'always') return { outcome: 'always-driven', shows: { lamp: 'lit cold' } };
  if (mapHeater === 'ordered') return { outcome: 'in-order', shows: { ohm: 15 } };
  return random.chance(0.5)
    ? { outcome: 'element-faulty', shows: { ohm: 'open' } }
    : { outcome: 'no-supply', shows: { V: 0 } };
}

/** Volts lost on the way to the fan and on the way back, at its current. */
export function voltageDrop(
  bench: Bench,
): ToolReading<'within-limits' | 'supply-high' | 'earth-high' | 'no-current'> {
  const { current, dropFeed, dropEarth } = feed(bench);
  if (current < 1) return { outcome: 'no-current', shows: { A: 0 } };
  const read = (volts: number) => volts + NOISE.volts * bench.random.normal();
  const [supply, earth] = [read(dropFeed), read(dropEarth)];
  const shows = { 'V supply': shown(supply, 0.01), 'V earth': shown(earth, 0.01) };
  if (supply > 0.4) return { outcome: 'supply-high', shows };
  return { outcome: earth > 0.2 ? 'earth-high' : 'within-limits', shows };
}

/** K above its neighbours for each watt in a fuse holder; from memory. What a sound one warms at 25 A, K. */
const HOLDER = 4;
const SOUND_HOLDER = 6;
/** From here up the resistance of the feed sits in the wire and not in the holder, ohm. */
const IN_HOLDER = 0.055;

/** Fuse and holder after five minutes: current squared times the holder's resistance. */
export function connectorHeat(
  bench: Bench,
): ToolReading<'cool' | 'warm' | 'too-hot-to-hold' | 'browned-and-cool'> {
  const { fanFeed, fanFuse } = bench.car.condition;
  if (fanFuse === 'blown')
    return bench.random.chance(0.5)
      ? { outcome: 'browned-and-cool', shows: { holder: 'brown' } }
      : { outcome: 'cool', shows: { holder: 'as new' } };
  const { current } = feed(bench);
  const inHolder = fanFeed < IN_HOLDER ? fanFeed : 0;
  const above =
    current ** 2 * (inHolder * HOLDER + SOUND_HOLDER / 625) + NOISE.rubber * bench.random.normal();
  const shows = { 'K above its neighbours': shown(above, 1) };
  if (above >= 25) return { outcome: 'too-hot-to-hold', shows };
  return { outcome: above >= 10 ? 'warm' : 'cool', shows };
}

/** Millivolts across the fuse, as amperes; good to a fifth. */
export function fuseDrop(
  bench: Bench,
): ToolReading<'as-expected' | 'too-high' | 'too-low' | 'none' | 'fuse-open'> {
  if (bench.car.condition.fanFuse === 'blown') return { outcome: 'fuse-open', shows: { mV: 'overload' } };
  const { current } = feed(bench);
  const reads = current * (1 + 0.1 * bench.random.normal());
  const shows = { A: shown(reads, 0.5) };
  if (reads < 1) return { outcome: 'none', shows };
  if (reads >= 1.35 * bench.sheet.fanCurrent) return { outcome: 'too-high', shows };
  return { outcome: reads < 0.65 * bench.sheet.fanCurrent ? 'too-low' : 'as-expected', shows };
}

/** Order at the fan's thin wire. A wire on earth shows there whatever is asked. */
export function commandDuty({
  car,
}: Bench): ToolReading<
  'obeys' | 'no-output' | 'full-against-order' | 'order-lost' | 'full-is-ordered' | 'not-fed'
> {
  const { fanCommand, fanMotor, fanFuse, fanRelay, fanFeed, fanEarth, sensor } = car.condition;
  if (fanCommand !== 'works') return { outcome: 'order-lost', shows: { wire: 'earth' } };
  if (fanRelay === 'stuck on') return { outcome: 'full-against-order', shows: { fan: 'blows at rest' } };
  if (fanMotor === 'dead' || fanFuse === 'blown' || fanRelay === 'stuck off' || fanFeed + fanEarth > 0.025)
    return { outcome: 'not-fed', shows: { plug: 'volts missing, or the motor stands' } };
  return sensor === 'open' || sensor === 'shorted'
    ? { outcome: 'full-is-ordered', shows: { order: 'full, cold' } }
    : { outcome: 'obeys', shows: { fan: 'as asked' } };
}

/** The condenser's own fan. */
export function condenserFan({
  car,
}: Bench): ToolReading<'comes-when-asked' | 'dead-or-drags' | 'good-not-fed' | 'none-fitted'> {
  return car.condition.condenserFan
    ? { outcome: 'comes-when-asked', shows: { fan: 'strong' } }
    : { outcome: 'dead-or-drags', shows: { fan: 'stands' } };
}

/** Heat beside the usual by which a driver feels that it will not rev out, and by which the trims show it. */
const BREATHLESS = 0.12;
const TRIMS = 1.08;

/** Tailpipe from cold. What burns coolant needs a leak that the model does not have: gas leaves, nothing comes in. */
export function exhaustLook({
  car,
  random,
}: Bench): ToolReading<
  'clears' | 'cloud-then-clear' | 'white-stays' | 'white-stings' | 'dark-or-breathless'
> {
  return car.condition.heatByLoad + 0.04 * random.normal() > BREATHLESS
    ? { outcome: 'dark-or-breathless', shows: { pulse: 'weak' } }
    : { outcome: 'clears', shows: { vapour: 'thins' } };
}

/** What the controller adds or takes back. Lean and late are told apart by chance; the car keeps its kind. */
export function fuelTrim({
  car,
  random,
}: Bench): ToolReading<'normal' | 'adding-fuel' | 'timing-late' | 'taking-fuel'> {
  const { heat, heatByLoad } = car.condition;
  if (heatByLoad > BREATHLESS && random.chance(0.5))
    return { outcome: 'taking-fuel', shows: { air: 'short of its figure' } };
  if (heatByLoad > 0 || heat < TRIMS) return { outcome: 'normal', shows: { 'trim %': 3 } };
  return random.chance(0.5)
    ? { outcome: 'adding-fuel', shows: { 'trim %': 14 } }
    : { outcome: 'timing-late', shows: { 'degrees back': 8 } };
}

/** How often what blocks tubes or a core is seen in the glass; a judgement, no source. */
const SILT_SEEN = 0.6;

/** A sample in a glass. */
export function coolantLook({ car, random }: Bench): ToolReading<'clear' | 'brown' | 'oily' | 'gelled'> {
  const { tubes, core, hoseClosesAt } = car.condition;
  const silted = core < 1 || (tubes < 1 && hoseClosesAt > 4000);
  return silted && random.chance(SILT_SEEN)
    ? { outcome: 'brown', shows: { glass: 'brown, settles' } }
    : { outcome: 'clear', shows: { glass: 'clear' } };
}
