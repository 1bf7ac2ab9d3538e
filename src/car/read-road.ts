/** Tests on the road, at the fan and in the cabin. */
import { type Bench, celsius, NOISE, shown, type ToolReading } from './bench.ts';
import { driveOf } from './drive.ts';
import { runCar, type Sample } from './run.ts';

const WARM = 273.15 + 80;
const FAN_SOON = 273.15 + 92;
const KMH = 1 / 3.6;

function middle(samples: readonly Sample[], of: (sample: Sample) => number): number {
  const sorted = samples.map(of).toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Town, ten minutes at 90 km/h, idle again; in frost once more with half of the radiator covered. */
export function cruiseTrace(
  bench: Bench,
): ToolReading<'holds' | 'undecided' | 'falls-at-speed' | 'frost-only' | 'steady-low' | 'jumps'> {
  const { car, outside, seed, sheet } = bench;
  const heater = { blower: 0.3, hot: 1 };
  const drive = driveOf(
    outside,
    [
      { seconds: 600, speed: 30 * KMH, ...heater },
      { seconds: 900, speed: 90 * KMH, ...heater },
      { seconds: 180, ...heater },
    ],
    WARM,
  );
  const log = (which: typeof car) => {
    const { samples } = runCar(which, drive, seed);
    const part = samples.slice(1200, 1500);
    return {
      town: middle(samples.slice(400, 600), ({ scan }) => scan),
      speed: middle(part, ({ scan }) => scan),
      end: samples.at(-1)?.scan ?? 0,
      jumps: jumps(samples),
    };
  };
  const bare = log(car);
  const shows = {
    'town °C': Math.round(celsius(bare.town)),
    'cruise °C': Math.round(celsius(bare.speed)),
    'after idling °C': Math.round(celsius(bare.end)),
  };
  if (bare.jumps >= 2) return { outcome: 'jumps', shows };
  if (bare.speed >= sheet.lowLimit + 5) return { outcome: 'holds', shows };
  if (bare.speed >= sheet.lowLimit) return { outcome: 'undecided', shows };
  if (outside < 273.15) {
    const covered = log({ ...car, condition: { ...car.condition, fins: car.condition.fins * 0.5 } });
    if (covered.speed >= sheet.lowLimit) return { outcome: 'frost-only', shows };
  }
  const even = Math.abs(bare.town - bare.speed) < 5 && bare.speed < sheet.cruise[0] - 5;
  return { outcome: even ? 'steady-low' : 'falls-at-speed', shows };
}

/** Steps of 5 K and more within two seconds. */
function jumps(samples: readonly Sample[]): number {
  return samples.filter(({ scan }, at) => Math.abs(scan - (samples[at - 2]?.scan ?? scan)) >= 5).length;
}

/** A hill of 6 % at 75 km/h in a low gear, the flat, then standing. Air conditioning off. */
export function roadLoad(
  bench: Bench,
): ToolReading<
  'holds' | 'gains-and-returns' | 'climbs-on-load' | 'climbs-at-standstill' | 'climbs-everywhere'
> {
  const { car, outside, seed, sheet } = bench;
  const drive = driveOf(
    outside,
    [
      { seconds: 600, speed: 75 * KMH },
      { seconds: 480, speed: 75 * KMH, slope: 0.06, rpm: 3000 },
      { seconds: 240, speed: 75 * KMH },
      { seconds: 900 },
    ],
    WARM,
  );
  const { samples } = runCar(car, drive, seed);
  const top = (from: number, to: number) => Math.max(...samples.slice(from, to).map(({ scan }) => scan));
  const [flat, hill, stands] = [top(300, 600), top(600, 1080), top(1320, 2220)];
  const [hot, warm] = [sheet.cruise[1] + 12, sheet.cruise[1] + 3];
  const shows = { 'hill °C': Math.round(celsius(hill)), 'standing °C': Math.round(celsius(stands)) };
  // A figure that never moves climbs nowhere.
  if (top(0, 10) > hot) return { outcome: 'holds', shows };
  if (flat > hot && hill > hot) return { outcome: 'climbs-everywhere', shows };
  if (hill > hot) return { outcome: 'climbs-on-load', shows };
  if (stands > sheet.fanOn + 4) return { outcome: 'climbs-at-standstill', shows };
  return { outcome: hill > warm ? 'gains-and-returns' : 'holds', shows };
}

/** Fan on a cold engine, then asked for. */
export function fanBehaviour(
  bench: Bench,
): ToolReading<'as-it-should' | 'ac-only' | 'runs-always' | 'never-runs' | 'one-stage-missing'> {
  const { car, sound, outside, seed, sheet } = bench;
  const drive = driveOf(outside, [
    { seconds: 90 },
    { seconds: 60, airConditioning: true },
    { seconds: 120, rpm: 2500 },
  ]);
  const air = (which: typeof car) => {
    const { samples } = runCar(which, drive, seed);
    return {
      cold: samples[80]?.fanAir ?? 0,
      asked: samples[140]?.fanAir ?? 0,
      revved: samples.at(-1)?.fanAir ?? 0,
    };
  };
  const [own, usual] = [air(car), air(sound)];
  const shows = {
    cold: own.cold > 0.5 ? 'turns' : 'stands',
    'asked for': own.asked > 0.5 ? 'turns' : 'stands',
  };
  if (car.layout.fan === 'viscous clutch') {
    if (own.revved > 2 * usual.revved) return { outcome: 'runs-always', shows };
    return { outcome: own.revved < 0.5 * usual.revved ? 'one-stage-missing' : 'as-it-should', shows };
  }
  if (own.cold > 0.5) return { outcome: 'runs-always', shows };
  // Idled on until the fan's figure, or half an hour at most.
  const idled = runCar(car, driveOf(outside, [{ seconds: 1800 }], FAN_SOON), seed).samples;
  const past = idled.find(({ head }) => head > sheet.fanOn + 5);
  const byHeat = idled.some(({ fanAir }) => fanAir > 0.5);
  if (own.asked < 0.2) return { outcome: 'never-runs', shows };
  if (past && !byHeat) return { outcome: 'ac-only', shows };
  return { outcome: own.asked < 0.8 * usual.asked ? 'one-stage-missing' : 'as-it-should', shows };
}

/** Flap from cold to hot with both hoses hot; air at the centre outlet. */
export function blendDoor(bench: Bench): ToolReading<'follows' | 'does-not-follow' | 'one-side-only'> {
  const { car, outside, seed, random } = bench;
  const vent = (hot: number) =>
    (runCar(car, driveOf(outside, [{ seconds: 300, blower: 0.5, hot }], WARM), seed).samples.at(-1)?.vent ??
      outside) +
    NOISE.rubber * random.normal();
  const [cold, hot] = [vent(0), vent(1)];
  const shows = { 'vent cold °C': Math.round(celsius(cold)), 'vent hot °C': Math.round(celsius(hot)) };
  return { outcome: hot - cold > 20 ? 'follows' : 'does-not-follow', shows };
}

/** Valve in the feed. The model's stuck valve does not move; what keeps water from passing a moving one is elsewhere. */
export function heaterValve(
  bench: Bench,
): ToolReading<'moves-and-flows' | 'undecided' | 'does-not-move' | 'moves-no-flow'> {
  const { car, outside, seed, random } = bench;
  if (car.condition.valve < 0.1) return { outcome: 'does-not-move', shows: { arm: 'stands' } };
  const last = runCar(car, driveOf(outside, [{ seconds: 200, blower: 0.5, hot: 1 }], WARM), seed).samples.at(
    -1,
  );
  // Right behind the valve, before the core takes its heat: as hot as what comes, while anything comes.
  const comes = (last?.heaterFlow ?? 0) > 3e-6;
  const behind =
    (comes ? 2 : (last?.head ?? 0) - (last?.heater ?? 0)) + Math.abs(NOISE.rubber * random.normal());
  const shows = { 'K cooler behind it': shown(behind, 1) };
  if (behind >= 25) return { outcome: 'moves-no-flow', shows };
  return { outcome: behind >= 10 ? 'undecided' : 'moves-and-flows', shows };
}

const DISC_LOSS = 12;

/** Disc of the dragging wheel above its partner after ten minutes at 60 km/h: N times v over what a disc gives off. */
export function brakeDrag({ car, random }: Bench): ToolReading<'alike' | 'undecided' | 'one-hot'> {
  const above = Math.abs((car.condition.drag * 60 * KMH) / DISC_LOSS + 6 * random.normal());
  const shows = { 'K above its partner': shown(above, 5) };
  if (above >= 40) return { outcome: 'one-hot', shows };
  return { outcome: above < 20 ? 'alike' : 'undecided', shows };
}

/** A sheet of paper at the vents. */
export function ventAir({ car, random }: Bench): ToolReading<'strong' | 'weak' | 'some-speeds-only'> {
  const air = car.condition.cabinAir * (1 + 0.08 * random.normal());
  return { outcome: air > 0.62 ? 'strong' : 'weak', shows: { paper: air > 0.62 ? 'blown off' : 'hangs' } };
}

/** Monitors of the controller, run over a drive of the week before. */
export function codeRead(
  bench: Bench,
): ToolReading<'nothing-new' | 'too-cold-code' | 'sensor-circuit-code' | 'actuator-code'> {
  const { car, outside, seed, sheet } = bench;
  const { sensor, fanMotor, fanRelay, mapHeater, fanCommand, fanFuse } = car.condition;
  const dead =
    fanMotor === 'dead' || fanRelay === 'stuck off' || fanFuse === 'blown' || fanCommand !== 'works';
  // Half of the controllers watch their fan; the car keeps its kind.
  if (
    (dead && seed % 2 === 0) ||
    mapHeater !== 'ordered' ||
    (car.layout.pump === 'electric' && car.condition.pump < 0.1)
  )
    return { outcome: 'actuator-code', shows: { code: 'actuator' } };
  if (sensor !== 'works') return { outcome: 'sensor-circuit-code', shows: { code: 'sensor circuit' } };
  const { samples } = runCar(car, driveOf(outside, [{ seconds: 1500, speed: 14 }]), seed);
  const best = Math.max(...samples.map(({ scan }) => scan));
  // 20 °F below the stamp, and not judged below 20 °F outside: 13 CCR 1968.2 (e)(10).
  const cold = outside > 273.15 - 6.7 && best < sheet.opens - 11;
  return cold
    ? { outcome: 'too-cold-code', shows: { code: 'too cold', 'best °C': Math.round(celsius(best)) } }
    : { outcome: 'nothing-new', shows: { code: 'none' } };
}
