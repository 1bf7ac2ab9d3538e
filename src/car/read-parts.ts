/** Tests with volts and ohms, and looks at the part itself. */
import { type Bench, celsius, NOISE, shown, type ToolReading } from './bench.ts';
import { driveOf } from './drive.ts';
import { CHARGING, feedOf, stageAsked } from './fan.ts';
import { ohmsAtPins, scanOf, sensorOhms, temperatureOf } from './signals.ts';
import { stateAt } from './state.ts';

/** Plug off, against the true temperature. */
export function sensorResistance(
  bench: Bench,
): ToolReading<'on-curve' | 'too-high' | 'too-low' | 'open-or-shorted'> {
  const { car, outside, random } = bench;
  const { sensor } = car.condition;
  const warm = 273.15 + 80;
  if (sensor === 'loose contact') return { outcome: 'open-or-shorted', shows: { ohm: 'jumps' } };
  const off = (truth: number) => {
    const ohms = ohmsAtPins(car, truth) * (1 + NOISE.ohms * random.normal());
    const says = temperatureOf(ohms);
    return { ohms, kelvins: says === undefined ? undefined : says - truth };
  };
  const [cold, hot] = [off(outside), off(warm)];
  const shows = {
    'ohm warm': Number.isFinite(hot.ohms) ? shown(hot.ohms, 1) : 'open',
    'ohm of a good one': shown(sensorOhms(warm), 1),
  };
  if (hot.kelvins === undefined || cold.kelvins === undefined) return { outcome: 'open-or-shorted', shows };
  if (hot.kelvins < -5) return { outcome: 'too-high', shows };
  return { outcome: hot.kelvins > 5 ? 'too-low' : 'on-curve', shows };
}

/** Plug off and bridged: what the controller shows. An open or a short of the model lies in the sensor itself. */
export function sensorUnplug({
  car,
}: Bench): ToolReading<'follows' | 'stuck-cold' | 'stuck-hot' | 'gauge-does-not-follow'> {
  return car.condition.gauge === 'wrong'
    ? { outcome: 'gauge-does-not-follow', shows: { scan: 'swings', needle: 'stands' } }
    : { outcome: 'follows', shows: { scan: 'swings', needle: 'swings' } };
}

/** A fused lead straight to the motor. */
export function fanDirect({ car }: Bench): ToolReading<'strong' | 'weak' | 'dead'> {
  return car.condition.fanMotor === 'dead'
    ? { outcome: 'dead', shows: { fan: 'stands' } }
    : { outcome: 'strong', shows: { fan: 'full speed' } };
}

/** The fan with a good relay, and with none. */
export function relaySwap(
  bench: Bench,
): ToolReading<'cured' | 'not-shown' | 'unchanged' | 'runs-without-relay'> {
  const { car } = bench;
  if (car.condition.fanRelay !== 'works') return { outcome: 'cured', shows: { fan: 'as it should' } };
  const stage = car.layout.fan === 'electric, two stages' ? 2 : 1;
  const runsCold = relayControl(bench).outcome === 'always-there';
  const ordered = relayControl(bench).outcome === 'as-ordered';
  return !runsCold && ordered && feedOf(car, stage, CHARGING).current > 1
    ? { outcome: 'not-shown', shows: { fan: 'stands cold, runs when asked' } }
    : { outcome: 'unchanged', shows: { fan: 'as before' } };
}

/** Clamp round the feed, full speed asked for. */
export function fanCurrent({
  car,
  sheet,
  random,
}: Bench): ToolReading<'as-expected' | 'a-little-high' | 'too-high' | 'too-low' | 'starved' | 'none'> {
  const stage = car.layout.fan === 'electric, two stages' ? 2 : 1;
  const { current, volts } = feedOf(car, car.condition.fanCommand === 'open' ? 0 : stage, CHARGING);
  const reads = current * (1 + NOISE.clamp * random.normal());
  const shows = { A: shown(reads, 0.1), 'V at the plug': shown(volts + NOISE.volts * random.normal(), 0.01) };
  if (reads < 1) return { outcome: 'none', shows };
  if (reads >= 1.35 * sheet.fanCurrent) return { outcome: 'too-high', shows };
  if (reads >= 1.25 * sheet.fanCurrent) return { outcome: 'a-little-high', shows };
  if (reads >= 0.75 * sheet.fanCurrent) return { outcome: 'as-expected', shows };
  return { outcome: CHARGING - volts > 1 ? 'starved' : 'too-low', shows };
}

/** Lamp at the relay's coil: engine cold, then asked. */
export function relayControl({ car }: Bench): ToolReading<'as-ordered' | 'missing' | 'always-there'> {
  const cold = stateAt(293.15, 101325);
  const [moment] = driveOf(293.15, [{ seconds: 1 }]).moments;
  if (!moment) throw new Error('a drive of no length');
  const asks = (temperature: number, airConditioning: boolean) =>
    stageAsked(
      car,
      { ...cold, slice2: temperature },
      { ...moment, airConditioning },
      scanOf(car, temperature),
    ) > 0;
  if (asks(293.15, false)) return { outcome: 'always-there', shows: { lamp: 'lit cold' } };
  const hot = car.values.stamp + 25;
  return asks(hot, true) && asks(hot, false)
    ? { outcome: 'as-ordered', shows: { lamp: 'lit when asked' } }
    : { outcome: 'missing', shows: { lamp: 'dark' } };
}

/** Out of its housing, at room temperature. Held open by less than a twentieth no feeler goes in. */
export function thermostatInspection({
  car,
}: Bench): ToolReading<
  'sound' | 'gapes-cold' | 'hair-open' | 'wrong-stamp' | 'stamp-too-high' | 'missing' | 'badly-seated'
> {
  const { liftFloor, seatPassage, turnedRound, wrongStamp } = car.condition;
  const stamp = Math.round(celsius(car.values.stamp + wrongStamp));
  const shows = { 'stamp °C': stamp };
  if (liftFloor >= 1) return { outcome: 'missing', shows: { housing: 'empty' } };
  if (seatPassage > 0 || turnedRound) return { outcome: 'badly-seated', shows };
  if (wrongStamp <= -4) return { outcome: 'wrong-stamp', shows };
  if (wrongStamp >= 4) return { outcome: 'stamp-too-high', shows };
  if (liftFloor > 0.04) return { outcome: 'gapes-cold', shows };
  return { outcome: liftFloor > 0.005 ? 'hair-open' : 'sound', shows };
}

const POT = 273.15 + 99.5;

/** In the pot, on a thread. A pot in still air at sea level boils at 100 °C. */
export function thermostatBench({
  car,
  random,
}: Bench): ToolReading<'opens-at-stamp' | 'opens-early' | 'open-when-cold' | 'late-or-never'> {
  const { liftFloor, liftCeiling, shift, sticks, wrongStamp } = car.condition;
  if (liftFloor > 0.04) return { outcome: 'open-when-cold', shows: { thread: 'falls out cold' } };
  const stamp = car.values.stamp + wrongStamp;
  const starts = stamp + car.values.tolerance + shift + sticks + 0.7 * random.normal();
  if (liftCeiling === 0 || starts > POT)
    return {
      outcome: stamp > POT - 2 && liftCeiling > 0 ? 'opens-at-stamp' : 'late-or-never',
      shows: { thread: 'holds until it boils' },
    };
  const shows = { 'drops °C': Math.round(celsius(starts)), 'stamp °C': Math.round(celsius(stamp)) };
  if (starts <= stamp - 3) return { outcome: 'opens-early', shows };
  return { outcome: starts > stamp + 3 ? 'late-or-never' : 'opens-at-stamp', shows };
}

/** A lamp behind the radiator. */
export function finInspection({
  car,
  random,
}: Bench): ToolReading<'clear' | 'undecided' | 'clogged' | 'rotted' | 'cowl-missing'> {
  const light = Math.min(1, car.condition.fins + 0.03 * random.normal());
  const shows = { 'share that lets light through': shown(Math.min(1, Math.max(0, light)), 0.1) };
  if (light <= 0.8) return { outcome: 'clogged', shows };
  if (car.condition.fanAir < 0.8) return { outcome: 'cowl-missing', shows };
  return { outcome: light <= 0.9 ? 'undecided' : 'clear', shows };
}

/** Points by volume from mass: ethylene glycol 1,113, water 998 kg/m3 at 20 °C. */
export function refractometer({
  car,
  sheet,
  random,
}: Bench): ToolReading<'as-wanted' | 'too-weak' | 'too-strong'> {
  const byVolume = (mass: number) => (100 * (mass / 1113)) / (mass / 1113 + (1 - mass) / 998);
  const reads = byVolume(car.condition.mixture ?? car.values.mixture) + NOISE.refractometer * random.normal();
  const shows = { '% by volume': Math.round(reads) };
  if (reads > 65) return { outcome: 'too-strong', shows };
  return { outcome: reads < byVolume(sheet.mixture) - 5 ? 'too-weak' : 'as-wanted', shows };
}
