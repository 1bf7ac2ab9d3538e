/** How cold it was outside, and whether the engine had stood long enough to be as cold. */
import { LOGGED_AIR, SENSOR_AGREES } from '../physics/thermistor.ts';
import { type Grid, middleOf } from './grid.ts';

export interface Start {
  /** Coolant at the beginning, K. */
  coolant: number;
  /** Intake air at the beginning, K. */
  intake: number | undefined;
  /** Outside temperature, K, and where it is from. */
  outside: { kelvin: number; from: 'person' | 'ambient column' | 'intake column' | 'cold start' } | undefined;
  /** cold: stood for hours. warm: it had run before. unknown: nothing to compare with. */
  state: 'cold' | 'warm' | 'unknown';
  /** How far the coolant reading is under both air readings at the start, K; negative when it is over. Only with both. */
  underAir: number | undefined;
  /** The same where there is only one of them. */
  underOneAir: number | undefined;
}

/** Colder than this without anything to compare is a cold start, K: 40 °C. */
const SURELY_COLD = 313.15;

/** @param said outside temperature the person typed, K */
export function startOf({ signals, smooth, step }: Grid, said: number | undefined): Start {
  const first = smooth.findIndex(Number.isFinite);
  const to = first + Math.ceil(20 / step);
  const coolant = middleOf(signals.coolant, first, first + Math.ceil(6 / step));
  const at = (values: Float64Array | undefined) => {
    const value = values ? middleOf(values, first, to) : Number.NaN;
    return Number.isFinite(value) ? value : undefined;
  };
  const intake = at(signals.intake);
  const ambient = signals.ambient && middleOf(signals.ambient, 0, signals.ambient.length);
  const air = said ?? ambient;
  const references = [intake, air].filter(
    (each): each is number => each !== undefined && Number.isFinite(each),
  );
  const [lowest, highest] = [Math.min(...references), Math.max(...references)];
  const compared = references.length > 0;
  const state = compared
    ? coolant - highest <= SENSOR_AGREES + LOGGED_AIR
      ? 'cold'
      : coolant > SURELY_COLD || coolant - highest > 12
        ? 'warm'
        : 'unknown'
    : coolant > SURELY_COLD
      ? 'warm'
      : 'unknown';
  const underAir = references.length === 2 && highest - lowest <= 8 ? lowest - coolant : undefined;
  return {
    coolant,
    intake,
    outside: outsideOf(signals, said, ambient, intake, coolant, state),
    state,
    underAir,
    underOneAir: references.length === 1 ? lowest - coolant : undefined,
  };
}

function outsideOf(
  { intake: intakes }: Grid['signals'],
  said: number | undefined,
  ambient: number | undefined,
  intake: number | undefined,
  coolant: number,
  state: Start['state'],
): Start['outside'] {
  const usable = (kelvin: number | undefined) => kelvin !== undefined && kelvin > 220 && kelvin < 330;
  if (said !== undefined && usable(said)) return { kelvin: said, from: 'person' };
  if (ambient !== undefined && usable(ambient)) return { kelvin: ambient, from: 'ambient column' };
  if (intakes && intake !== undefined) {
    // Intake air is warmed under the bonnet; the coldest of the drive is nearest to the air outside.
    const sorted = intakes.filter(Number.isFinite).sort();
    const kelvin = (sorted[Math.floor(0.05 * sorted.length)] ?? intake) - 3;
    if (usable(kelvin)) return { kelvin, from: 'intake column' };
  }
  if (state !== 'warm' && coolant < SURELY_COLD && usable(coolant))
    return { kelvin: coolant, from: 'cold start' };
  return undefined;
}
