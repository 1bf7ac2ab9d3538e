/** One step of heat through metal, coolant, radiator, heater and cabin. Explicit Euler; what leaves one lump enters the next. */
import type { Car } from './car.ts';
import type { Flow } from './flow.ts';
import type { State } from './state.ts';

/** What stays the same over a step. */
export interface Surroundings {
  /** Heat given by the engine, W. */
  readonly toMetal: number;
  readonly toBlock: number;
  readonly outside: number;
  /** Radiator: W/K and K; heater: W/K; cabin air: W/K. */
  readonly radiator: number;
  readonly airBefore: number;
  readonly heater: number;
  readonly cabinAir: number;
  /** Through the skin of the engine, W/K. */
  readonly skin: number;
  /** Boiling point in the jackets, K. */
  readonly boilsAt: number;
  /** Heat a cubic metre of coolant carries, J/(m3 K). */
  readonly carries: number;
}

/** Shares of the skin: block, head, and hoses and tank. */
const SKIN_BLOCK = 0.6;
const SKIN_HEAD = 0.3;
const SKIN_TANK = 0.1;
/** Heat to the coolant goes to block and head jackets. Head and exhaust side take more; common practice. */
const INTO_HEAD = 0.55;
/** Half of the jackets' capacity each. */
const HALF = 0.5;
/** No step moves more than this share of the difference that a lump has to its neighbours. */
const MOST = 0.5;
/** Parts of a second while coolant moves, so that the valve's stroke is followed; at least, and at most, whatever is drawn. */
const LEAST = 2;
const MOST_PARTS = 40;
/** Flow by warmth alone, m3/s: nothing is quick then. */
const STANDING_FLOW = 2e-5;

/** Heat capacities of one car, J/K. */
export interface Capacities {
  readonly metal: number;
  readonly block: number;
  readonly jacket: number;
  readonly hose: number;
  readonly slice: number;
  readonly heater: number;
  readonly tank: number;
  readonly cabin: number;
}

/** @param carries J/(m3 K) of the coolant; what is missing is missing in jackets and hoses */
export function capacitiesOf({ values, condition }: Car, carries: number): Capacities {
  const dry = Math.min(condition.missing * carries, 0.5 * values.jacket);
  return {
    metal: values.metal,
    block: values.block,
    jacket: (values.jacket - dry) * HALF,
    hose: values.hose,
    slice: values.radiator / 4,
    heater: values.heaterCore,
    tank: values.tank,
    cabin: values.cabin,
  };
}

/** Heat in everything above a temperature, J. */
export function heatAbove(c: Capacities, s: State, outside: number): number {
  return (
    c.metal * (s.metal - outside) +
    c.block * (s.block - outside) +
    c.jacket * (s.low + s.head - 2 * outside) +
    c.hose * (s.upperHose + s.lowerHose - 2 * outside) +
    c.slice * (s.slice1 + s.slice2 + s.slice3 + s.slice4 - 4 * outside) +
    c.heater * (s.heater - outside) +
    c.tank * (s.tank - outside) +
    c.cabin * (s.cabin - outside)
  );
}

/** Parts that a second has to be made in so that it stays stable and smooth. */
export function partsOf(
  { jacket, hose, slice }: Capacities,
  { values }: Car,
  flow: Flow,
  around: Surroundings,
): number {
  const { carries } = around;
  const quickest = Math.max(
    (flow.total * carries + values.metalToCoolant) / jacket,
    (flow.radiator * carries) / hose,
    (flow.radiator * carries + around.radiator / 4) / slice,
  );
  const least = flow.total > STANDING_FLOW ? LEAST : 1;
  return Math.min(MOST_PARTS, Math.max(least, Math.ceil(quickest / MOST)));
}

/** Moves the heat of a step of `step` seconds. Changes `s`. */
export function moveHeat(
  car: Car,
  c: Capacities,
  s: State,
  flow: Flow,
  around: Surroundings,
  step: number,
): void {
  const { values } = car;
  const { outside, carries } = around;
  const through = flow.total * carries;
  const byRadiator = flow.radiator * carries;
  const byHeater = flow.heater * carries;
  const byVent = flow.vent * carries;
  const returned =
    byRadiator * s.lowerHose + byHeater * s.heater + flow.byPass * carries * s.head + byVent * s.tank;
  // Standing coolant takes the temperature of the block round it.
  const still = 0.5;
  s.mixed = (returned + still * s.low) / (through + still);

  const fromMetal = values.metalToCoolant * (s.metal - (INTO_HEAD * s.head + (1 - INTO_HEAD) * s.low));
  const metalHead = values.metalToCoolant * INTO_HEAD * (s.metal - s.head);
  const metalLow = fromMetal - metalHead;
  const metalBlock = values.metalToBlock * (s.metal - s.block);
  const blockLow = values.blockToCoolant * (1 - INTO_HEAD) * (s.block - s.low);
  const blockHead = values.blockToCoolant * INTO_HEAD * (s.block - s.head);
  const mixing = values.stillMixing * (s.head - s.low);
  const skinBlock = around.skin * SKIN_BLOCK * (s.block - outside);
  const skinHead = around.skin * SKIN_HEAD * (s.head - outside);
  const skinTank = around.skin * SKIN_TANK * (s.tank - outside);
  const quarter = around.radiator / 4;
  const off1 = quarter * (s.slice1 - around.airBefore);
  const off2 = quarter * (s.slice2 - around.airBefore);
  const off3 = quarter * (s.slice3 - around.airBefore);
  const off4 = quarter * (s.slice4 - around.airBefore);
  const heaterAir = around.heater * (s.heater - outside);
  const cabinOut = (around.cabinAir + values.cabinLoss) * (s.cabin - outside);

  const head = s.head;
  s.metal += (step * (around.toMetal - fromMetal - metalBlock)) / c.metal;
  s.block += (step * (around.toBlock + metalBlock - blockLow - blockHead - skinBlock)) / c.block;
  const intoLow = returned - through * s.low;
  s.head += (step * (through * (s.low - head) + metalHead + blockHead - mixing - skinHead)) / c.jacket;
  s.low += (step * (intoLow + metalLow + blockLow + mixing)) / c.jacket;
  const { upperHose, slice1, slice2, slice3, slice4 } = s;
  s.upperHose += (step * byRadiator * (head - upperHose)) / c.hose;
  s.slice1 += (step * (byRadiator * (upperHose - slice1) - off1)) / c.slice;
  s.slice2 += (step * (byRadiator * (slice1 - slice2) - off2)) / c.slice;
  s.slice3 += (step * (byRadiator * (slice2 - slice3) - off3)) / c.slice;
  s.slice4 += (step * (byRadiator * (slice3 - slice4) - off4)) / c.slice;
  s.lowerHose += (step * byRadiator * (slice4 - s.lowerHose)) / c.hose;
  s.heater += (step * (byHeater * (head - s.heater) - heaterAir)) / c.heater;
  s.tank += (step * (byVent * (head - s.tank) - skinTank)) / c.tank;
  s.cabin += (step * ((around.cabinAir > 0 ? heaterAir : 0) - cabinOut)) / c.cabin;

  const toBay = around.cabinAir > 0 ? 0 : heaterAir;
  s.given += step * (around.toMetal + around.toBlock);
  s.gone += step * (skinBlock + skinHead + skinTank + off1 + off2 + off3 + off4 + cabinOut + toBay);
  s.boiled += boilOff(c, s, around.boilsAt);
}

/** Heat above the boiling point goes to the tank as steam, and out of it once that boils too, J. */
function boilOff(c: Capacities, s: State, boilsAt: number): number {
  let steam = 0;
  if (s.head > boilsAt) {
    steam += c.jacket * (s.head - boilsAt);
    s.head = boilsAt;
  }
  if (s.low > boilsAt) {
    steam += c.jacket * (s.low - boilsAt);
    s.low = boilsAt;
  }
  if (steam === 0) return 0;
  s.tank += steam / c.tank;
  if (s.tank <= boilsAt) return 0;
  const out = c.tank * (s.tank - boilsAt);
  s.tank = boilsAt;
  return out;
}
