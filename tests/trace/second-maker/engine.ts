/**
 * A second made-up car, so that the reader of logs is not tuned to the first (../car.ts) and its author's picture.
 * Fuel power by a Willans line, flow by conductances in parallel, a wax element that moves in little steps, four slices
 * of radiator with a bounded effectiveness, a by-pass and a heater core. Figures: a petrol car of 1.6 l whose warm-up
 * was fitted to open log sets of measured cars, each drawn within the range that the fits left. °C, W, s, m/s, l/min.
 */
import type { Random } from '../random.ts';

export interface Engine {
  /** Size beside 1.6 l. */
  size: number;
  mass: number;
  dragArea: number;
  /** Heat to the wall beside the usual. */
  wall: number;
  /** Friction at no speed, bar. */
  friction: number;
  pump: number;
  stamp: number;
  tolerance: number;
  span: number;
  play: number;
  waxLag: number;
  inletSide: boolean;
  face: number;
  ram: number;
  fanAir: number;
  fanOn: number;
  fanOff: number;
  skin: number;
  skinByWind: number;
  sensorLag: number;
  capacity: number;
}

/** What is wrong with it. All at rest: a sound car. */
export interface Ills {
  /** Lift the valve never goes under, 0 to 1. */
  liftAtLeast: number;
  /** Lift it never goes over. */
  liftAtMost: number;
  /** Opening beside its stamp, K. */
  shift: number;
  pumpShare: number;
  tubesShare: number;
  fan: 'works' | 'dead' | 'always';
}

export const WELL: Ills = {
  liftAtLeast: 0,
  liftAtMost: 1,
  shift: 0,
  pumpShare: 1,
  tubesShare: 1,
  fan: 'works',
};

export function drawEngine(random: Random): Engine {
  const stamp = random.pick([80, 82, 83, 86, 87, 88, 89, 90, 92, 95]);
  const inletSide = random.chance(0.4);
  // On the inlet side the outlet, where the fan is switched, runs hotter by what the engine gives the water.
  const fanOn = stamp + random.between(8, 13) + (inletSide ? 4 : 0);
  return {
    size: random.between(0.7, 1.6),
    mass: random.between(1000, 1900),
    dragArea: random.between(0.55, 0.95),
    wall: random.between(0.62, 0.78),
    friction: random.between(1.2, 1.9),
    pump: random.between(0.014, 0.026),
    stamp,
    tolerance: random.between(-1.5, 1.5),
    span: random.between(10, 15),
    play: random.between(1, 4),
    waxLag: random.between(5, 15),
    inletSide,
    face: random.between(0.18, 0.3),
    ram: random.between(0.1, 0.17),
    fanAir: random.between(2.2, 3.2),
    fanOn,
    fanOff: fanOn - random.between(4, 6),
    skin: random.between(4, 10),
    skinByWind: random.between(0.4, 1.2),
    sensorLag: random.between(2, 8),
    capacity: random.between(0.85, 1.2),
  };
}

/** A second of a journey. */
export interface Second {
  speed: number;
  /** Uphill, as a share. */
  slope: number;
  outside: number;
  /** Cabin heat asked for, 0 to 1. */
  heater: number;
  running: boolean;
}

export interface State {
  time: number;
  speed: number;
  coolant: number;
  outlet: number;
  intake: number;
  rpm: number;
  load: number;
  fan: boolean;
}

const STEP = 0.2;
/** Heat carried by a litre a minute of half water, half glycol, W/K. */
const CARRIED = 61;
const AIR = 1.2 * 1005;

export function rpmOf(speed: number): number {
  if (speed < 1.5) return 800;
  const gear = [3.2, 6, 9.5, 13.5, 18].find((top) => speed < top * 1.25) ?? 18;
  return Math.max(1000, (speed / gear) * 1700);
}

/** Runs the engine over a journey. The driver gives up when it is far too hot. */
export function runEngine(engine: Engine, ills: Ills, journey: readonly Second[], startAt: number): State[] {
  const { size, capacity } = engine;
  const warm = (share: number) => {
    const outside = journey[0]?.outside ?? startAt;
    return outside + share * (startAt - outside);
  };
  let metal = startAt;
  let block = startAt;
  let jacket = startAt;
  let bypassed = startAt;
  let heater = warm(0.7);
  let cabin = warm(0.3);
  let wax = startAt;
  let lift = ills.liftAtLeast;
  let sensor = startAt;
  let fan = false;
  let slices = [0.6, 0.5, 0.45, 0.4].map(warm);
  let before = journey[0]?.speed ?? 0;
  const states: State[] = [];
  for (const [time, { speed, slope, outside, heater: asked, running }] of journey.entries()) {
    const rpm = running ? rpmOf(speed) : 0;
    const { toMetal, toBlock, load } = heatOf(engine, speed, speed - before, slope, rpm, block, metal);
    before = speed;
    const face = Math.max(
      0.035,
      Math.hypot(engine.ram * speed, fan || ills.fan === 'always' ? engine.fanAir : 0),
    );
    const inlet = outside + 8 * Math.exp(-face / 0.5) * Math.min(1, Math.max(0, (jacket - 60) / 40));
    for (let part = 0; part < 1 / STEP; part++) {
      const flow = flowsOf(engine, ills, rpm, lift);
      const air = AIR * engine.face * size ** 0.5 * face;
      const radiatorFlow = Math.max(0.01, flow.radiator);
      const conductance =
        1 /
        (1 / (1250 * size ** 0.5 * (face / 3.5) ** 0.5) +
          1 / (2600 * size ** 0.5 * (radiatorFlow / 60) ** 0.6 * ills.tubesShare + 1));
      const perSlice =
        ((air * (1 - Math.exp(-conductance / air))) / 4) * Math.min(1, 0.3 + 0.7 * ills.tubesShare);
      const moved = CARRIED * flow.radiator;
      let from = jacket;
      slices = slices.map((slice) => {
        const next =
          slice + (STEP / (2620 * size * capacity)) * (moved * (from - slice) - perSlice * (slice - inlet));
        from = slice;
        return next;
      });
      const back = slices[3] ?? jacket;
      const blower = 95 * asked * (1 - Math.exp((-CARRIED * flow.heater) / 95));
      const toCabin = running ? blower * (heater - outside) : 0;
      heater += (STEP / 3400) * (CARRIED * flow.heater * (jacket - heater) - toCabin - 2 * (heater - cabin));
      cabin += (STEP / 90000) * (toCabin - 55 * (cabin - outside));
      const bypass = Math.max(0.5, flow.bypass);
      bypassed += STEP * 0.4 * (jacket - bypassed);
      const wet = Math.max(0.25, Math.min(1, flow.total / 8)) * 1500 * size;
      const skin = (engine.skin + engine.skinByWind * speed) * size;
      const metalToCoolant = wet * (metal - jacket);
      const metalToBlock = 75 * size * (metal - block);
      const blockToCoolant = 100 * size * (block - jacket);
      metal += (STEP / (9500 * size * capacity)) * (toMetal - metalToCoolant - metalToBlock);
      block +=
        (STEP / (21000 * size * capacity)) *
        (toBlock + metalToBlock - blockToCoolant - 0.7 * skin * (block - outside));
      jacket +=
        (STEP / (10500 * size * capacity)) *
        (metalToCoolant +
          blockToCoolant -
          moved * (jacket - back) -
          CARRIED * flow.heater * (jacket - heater) -
          0.3 * skin * (jacket - outside));
      const mixed =
        (bypass * bypassed + flow.radiator * back + flow.heater * heater) /
        (bypass + flow.radiator + flow.heater);
      wax += (STEP / engine.waxLag) * ((engine.inletSide ? mixed : jacket) - wax);
      lift = liftOf(engine, ills, wax, lift);
      // With next to no flow the sensor sits in what the metal boils up beside it.
      const sensed = flow.total < 2 && running ? 0.7 * jacket + 0.3 * metal : jacket;
      sensor += (STEP / engine.sensorLag) * (sensed - sensor);
    }
    if (running && ills.fan === 'works') fan = sensor > (fan ? engine.fanOff : engine.fanOn);
    else fan = false;
    states.push({
      time,
      speed,
      coolant: sensor,
      outlet: slices[3] ?? jacket,
      intake: outside + 3 + 9 * Math.exp(-speed / 6) * Math.min(1, Math.max(0, (jacket - 20) / 60)),
      rpm,
      load,
      fan: fan || (ills.fan === 'always' && running),
    });
    if (jacket > 124) break;
  }
  return states;
}

/** Fuel by a Willans line; of it to the wall, and friction to oil and block. */
function heatOf(
  { size, mass, dragArea, wall, friction }: Engine,
  speed: number,
  gain: number,
  slope: number,
  rpm: number,
  block: number,
  metal: number,
): { toMetal: number; toBlock: number; load: number } {
  if (rpm === 0) return { toMetal: 0, toBlock: 0, load: 0 };
  const swept = 1.6e-3 * size;
  const pressure = (friction + 0.25 * (rpm / 3000) ** 2) * 1e5;
  const thick = 1 + 0.5 * Math.max(0, (90 - block) / 80) ** 1.5;
  const rubbed = pressure * swept * (rpm / 120) * thick;
  const pull = 0.011 * mass * 9.81 + 0.6 * dragArea * speed ** 2 + mass * (9.81 * slope + gain);
  const road = (pull * speed) / 0.92;
  // Overrun: no fuel while the road turns the engine.
  if (road < -rubbed) return { toMetal: 0.2 * rubbed, toBlock: 0.4 * rubbed, load: 0 };
  const fuel = Math.max(0, road + rubbed + 400) / 0.4;
  const toWall = 1000 * wall * (fuel / 1000) ** 0.68 * size ** 0.32 * (1 - (metal - 100) / 900);
  const most = 9e4 * size;
  return {
    toMetal: toWall + 0.4 * rubbed,
    toBlock: 0.45 * rubbed,
    load: Math.min(100, 12 + (88 * fuel) / 2.6 / most),
  };
}

interface Flows {
  total: number;
  radiator: number;
  bypass: number;
  heater: number;
}

/** All branches are quadratic, so that shares do not depend on speed. l/min. */
function flowsOf({ pump, size }: Engine, { pumpShare }: Ills, rpm: number, lift: number): Flows {
  const valve = 1.6 * lift ** 1.5 + 0.0015;
  const radiator = 1 / Math.sqrt(1 / valve ** 2 + 1);
  const bypass = 0.5 * (1 - 0.9 * lift);
  const heater = 0.22;
  const sum = radiator + bypass + heater;
  const total = ((pump * size * Math.max(rpm, 4) * sum) / Math.sqrt(1 + sum ** 2)) * pumpShare;
  const share = (each: number) => (total * each) / sum;
  return { total, radiator: share(radiator), bypass: share(bypass), heater: share(heater) };
}

/** Opens over its span, closes with some play, moves through all of it in three seconds. */
function liftOf({ stamp, tolerance, span, play }: Engine, ills: Ills, wax: number, lift: number): number {
  const start = stamp + tolerance + ills.shift;
  const line = (temperature: number) => Math.min(1, Math.max(0, (temperature - start) / span));
  const wanted = Math.min(line(wax + play), Math.max(line(wax), lift));
  const most = STEP / 3;
  const next = lift + Math.max(-most, Math.min(most, wanted - lift));
  return Math.min(ills.liftAtMost, Math.max(ills.liftAtLeast, next));
}
