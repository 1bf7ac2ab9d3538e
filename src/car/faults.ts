/**
 * Faults: what each changes in a car, and how badly. The ids are those of the causes on the shelf; nothing is read from
 * there.
 *
 * NOBODY HAS MEASURED these ranges. No series of failed parts was found that says how far a thermostat stays open, how
 * much flow a worn impeller makes, how many fins are blocked in the cars that come in. Each range is a judgement, in
 * the open so that it can be argued with: whoever prints a result prints it at half and at double the ranges too
 * (`severityAt`). They say what a fault *is*, never how often it is met: a prior that slips in here would judge the
 * shelf by itself.
 *
 * Not measured either, so that nothing here may be leant on: cruise with a stuck-open thermostat, a head without flow,
 * gas in a heater core, time that a pocket takes to leave.
 */
import type { Car, CarLayout, Condition } from './car.ts';
import type { Random } from './random.ts';

export interface Fault {
  /** What the severity measures, with its unit. */
  readonly measure: string;
  /** Mildest and worst. */
  readonly range: readonly [number, number];
  /** Spread evenly in the logarithm. */
  readonly logarithmic?: boolean;
  readonly from: string;
  /** Layout without which a car cannot have it. */
  readonly layout?: Partial<CarLayout>;
  /** @param severity inside `range` */
  readonly change: (severity: number, car: Car) => Partial<Condition>;
}

const MEMORY = 'from memory';
const PRACTICE = 'common practice, no source';
const ELECTRIC_FAN: Partial<CarLayout> = { fan: 'electric, two stages', fanSwitchedBy: 'engine controller' };
const BELT: Partial<CarLayout> = { pump: 'belt' };
const NONE = { measure: 'present', range: [1, 1] } as const;
/** l/min in m3/s; ml/min; ml/s. */
const ML_PER_MIN = 1e-6 / 60;
const ML_PER_S = 1e-6;
const LITRE = 1e-3;

export const FAULTS = {
  'normal-behaviour': { ...NONE, from: 'a sound car', change: () => ({}) },

  'thermostat-stuck-open': {
    measure: 'lift it never goes under',
    range: [0.05, 0.8],
    from: MEMORY,
    change: (s) => ({ liftFloor: s }),
  },
  'thermostat-opens-early': {
    measure: 'K below its stamp',
    range: [6, 25],
    from: MEMORY,
    change: (s) => ({ shift: -s }),
  },
  'thermostat-stuck-shut': { ...NONE, from: 'mechanism', change: () => ({ liftCeiling: 0 }) },
  'thermostat-opens-late': {
    measure: 'K above its stamp',
    range: [6, 18],
    from: MEMORY,
    change: (s) => ({ shift: s, sticks: 5 + s / 4 }),
  },
  'thermostat-wrong-rating': {
    measure: 'K of stamp off, −16 to −8 and 5 to 10',
    range: [-16, 2],
    from: PRACTICE,
    change: (s) => ({ wrongStamp: s < -8 ? s : 5 + (s + 8) / 2 }),
  },
  'thermostat-missing': { ...NONE, from: 'mechanism', change: () => ({ liftFloor: 1, byPassStays: true }) },
  'thermostat-not-seated': {
    measure: 'passage beside the seat',
    range: [0.05, 0.4],
    from: MEMORY,
    change: (s) => ({ seatPassage: s }),
  },
  'map-thermostat-heater-fault': {
    ...NONE,
    from: 'mechanism',
    layout: { kind: 'map-controlled' },
    change: () => ({ mapHeater: 'always' }),
  },
  'map-thermostat-heater-open': {
    ...NONE,
    from: 'mechanism',
    layout: { kind: 'map-controlled' },
    change: () => ({ mapHeater: 'never' }),
  },

  'pump-impeller-failed': {
    measure: 'share of its flow',
    range: [0, 0.15],
    from: MEMORY,
    layout: BELT,
    change: (s) => ({ pump: s }),
  },
  'electric-pump-dead': {
    ...NONE,
    from: 'mechanism',
    layout: { pump: 'electric' },
    change: () => ({ pump: 0 }),
  },
  'electric-pump-worn': {
    measure: 'share of its flow',
    range: [0.15, 0.6],
    from: MEMORY,
    layout: { pump: 'electric' },
    change: (s) => ({ pump: s }),
  },
  'pump-belt-slipping': {
    measure: 'share of speed lost at 3,000 rpm',
    range: [0.3, 0.8],
    from: MEMORY,
    layout: BELT,
    change: (s) => ({ beltSlip: s }),
  },
  'hose-collapsing': {
    measure: 'rpm at which it draws flat',
    range: [1800, 3200],
    from: MEMORY,
    layout: BELT,
    change: (s) => ({ hoseClosesAt: s }),
  },
  'hose-delaminated': {
    measure: 'rpm at which the lining shuts it',
    range: [1000, 2600],
    from: MEMORY,
    layout: BELT,
    change: (s) => ({ hoseClosesAt: s, tubes: 0.6 }),
  },
  'radiator-blocked-inside': {
    measure: 'tubes still open',
    range: [0.1, 0.5],
    from: MEMORY,
    change: (s) => ({ tubes: s }),
  },
  'heater-core-blocked': {
    measure: 'passage left',
    range: [0.02, 0.3],
    from: MEMORY,
    change: (s) => ({ core: s }),
  },
  'heater-valve-stuck-shut': {
    measure: 'passage left',
    range: [0, 0.05],
    from: MEMORY,
    layout: { heater: 'valve-controlled' },
    change: (s) => ({ valve: s }),
  },
  'heater-pump-dead': {
    ...NONE,
    from: 'mechanism',
    layout: { heater: 'auxiliary pump' },
    change: () => ({ heaterPump: false }),
  },

  'radiator-fins-blocked': {
    measure: 'air that still passes',
    range: [0.1, 0.5],
    from: MEMORY,
    change: (s) => ({ fins: s }),
  },
  'shroud-missing': {
    measure: 'fan air left',
    range: [0.45, 0.65],
    from: MEMORY,
    change: (s) => ({ fanAir: s }),
  },
  'viscous-clutch-slipping': {
    measure: 'grip left',
    range: [0.1, 0.4],
    from: MEMORY,
    layout: { fan: 'viscous clutch', fanSwitchedBy: 'none' },
    change: (s) => ({ clutchGrip: s }),
  },
  'viscous-clutch-seized': {
    ...NONE,
    from: 'mechanism',
    layout: { fan: 'viscous clutch', fanSwitchedBy: 'none' },
    change: () => ({ clutch: 'seized' }),
  },
  'condenser-fan-dead': { ...NONE, from: PRACTICE, change: () => ({ condenserFan: false }) },
  'cabin-airflow-weak': {
    measure: 'air left',
    range: [0.2, 0.6],
    from: MEMORY,
    change: (s) => ({ cabinAir: s }),
  },
  'blend-door-stuck': {
    measure: 'where it stands, 0 cold',
    range: [0, 0.4],
    from: MEMORY,
    layout: { heater: 'always flowing' },
    change: (s) => ({ flap: s }),
  },
  'cold-ambient-open-grille': {
    measure: 'heat through the skin beside the usual',
    range: [1.3, 1.7],
    from: MEMORY,
    change: (s) => ({ skin: s }),
  },

  'fan-motor-dead': {
    ...NONE,
    from: 'mechanism',
    layout: ELECTRIC_FAN,
    change: () => ({ fanMotor: 'dead' }),
  },
  'fan-relay-stuck-off': {
    ...NONE,
    from: 'mechanism',
    layout: ELECTRIC_FAN,
    change: () => ({ fanRelay: 'stuck off' }),
  },
  'fan-relay-stuck-on': {
    ...NONE,
    from: 'mechanism',
    layout: ELECTRIC_FAN,
    change: () => ({ fanRelay: 'stuck on' }),
  },
  'fan-fuse-or-holder': {
    measure: 'mΩ in the holder; above 50 the fuse is blown',
    range: [5, 60],
    from: MEMORY,
    layout: ELECTRIC_FAN,
    change: (s) => (s > 50 ? { fanFuse: 'blown' } : { fanFeed: s / 1e3 }),
  },
  'fan-wiring-or-earth': {
    measure: 'mΩ, in the feed below 160 and in the earth above',
    range: [20, 300],
    from: MEMORY,
    layout: ELECTRIC_FAN,
    change: (s) => (s < 160 ? { fanFeed: s / 1e3 } : { fanEarth: s / 1e3 }),
  },
  'fan-command-wire-fault': {
    ...NONE,
    from: 'mechanism',
    layout: ELECTRIC_FAN,
    change: () => ({ fanCommand: 'to earth' }),
  },
  'fan-switch-fault': {
    ...NONE,
    from: 'mechanism',
    layout: { fan: 'electric, one stage', fanSwitchedBy: 'switch in the radiator' },
    change: () => ({ fanSwitch: 'open' }),
  },
  'fan-switch-stuck-closed': {
    ...NONE,
    from: 'mechanism',
    layout: { fan: 'electric, one stage', fanSwitchedBy: 'switch in the radiator' },
    change: () => ({ fanSwitch: 'closed' }),
  },

  'brake-dragging': { measure: 'N of drag', range: [150, 500], from: MEMORY, change: (s) => ({ drag: s }) },
  'engine-runs-lean-or-late': {
    measure: 'heat to the walls beside the usual',
    range: [1.1, 1.35],
    from: MEMORY,
    change: (s) => ({ heat: s }),
  },
  'exhaust-blocked': {
    measure: 'heat at full load beside the usual',
    range: [1.15, 1.5],
    from: MEMORY,
    change: (s) => ({ heat: 1.03, heatByLoad: s - 1 }),
  },

  'coolant-low': {
    measure: 'l missing',
    range: [0.7, 3],
    from: MEMORY,
    change: (s, car) => ({ missing: scaled(s, car) }),
  },
  'trapped-air': {
    measure: 'l of air, in the head below 0.6 and in the heater above',
    range: [0.2, 1.2],
    from: MEMORY,
    change: (s) => ({ pocket: s * LITRE, pocketIn: s < 0.6 ? 'head' : 'heater', vent: 0.15 }),
  },
  'bleed-path-not-opened': {
    measure: 'l of air under a shut screw',
    range: [0.6, 2],
    from: MEMORY,
    change: (s) => ({ pocket: s * LITRE, pocketIn: 'radiator', vent: 0.03 }),
  },
  'vent-line-blocked': {
    measure: 'l of air that cannot leave',
    range: [0.3, 1.5],
    from: MEMORY,
    change: (s) => ({ pocket: s * LITRE, pocketIn: 'head', vent: 0 }),
  },
  'cap-weak': {
    measure: 'opens at this share of its stamp',
    range: [0.2, 0.7],
    from: MEMORY,
    change: (s) => ({ cap: s }),
  },
  'cap-wrong-rating': {
    measure: 'stamp beside the right one, 0.5 to 0.75 and 1.3 to 1.8',
    range: [0.5, 1],
    from: MEMORY,
    change: (s) => ({ capStamp: s < 0.75 ? s : 1.3 + (s - 0.75) * 2 }),
  },
  'cap-vacuum-valve-stuck': {
    measure: 'bar below outside before it lets air in',
    range: [0.2, 0.6],
    from: MEMORY,
    change: (s) => ({ vacuum: s * 1e5 }),
  },
  'head-gasket-combustion-leak': {
    measure: 'ml/s of gas at idle',
    range: [0.05, 20],
    logarithmic: true,
    from: MEMORY,
    change: (s) => ({ gas: s * ML_PER_S }),
  },
  'cracked-head': {
    measure: 'ml/s of gas at idle, above 70 °C',
    range: [0.05, 20],
    logarithmic: true,
    from: MEMORY,
    change: (s) => ({ gas: s * ML_PER_S, gasAbove: 343.15 }),
  },
  'hose-leak': leakage(true),
  'radiator-leaking': leakage(true),
  'pump-weep-hole-leak': leakage(true),
  'core-plug-leak': leakage(true),
  'heater-core-leaking': leakage(false),
  'hose-clamp-loose': {
    measure: 'ml/min at cap pressure, below 30 °C',
    range: [0.1, 50],
    logarithmic: true,
    from: MEMORY,
    change: (s, car) => ({ leak: s * ML_PER_MIN, leakBelow: 303.15, missing: lostBy(s, car) }),
  },
  'mixture-too-weak': {
    measure: 'glycol by mass',
    range: [0.1, 0.35],
    from: PRACTICE,
    change: (s) => ({ mixture: s }),
  },
  'mixture-too-strong': {
    measure: 'glycol by mass',
    range: [0.66, 0.95],
    from: PRACTICE,
    change: (s) => ({ mixture: s }),
  },

  'sensor-reads-low': {
    measure: 'ohm in series',
    range: [60, 400],
    logarithmic: true,
    from: MEMORY,
    change: (s) => ({ series: s }),
  },
  'sensor-reads-high': {
    measure: 'ohm beside it',
    range: [250, 1500],
    logarithmic: true,
    from: MEMORY,
    change: (s) => ({ parallel: s }),
  },
  'sensor-open-circuit': { ...NONE, from: 'mechanism', change: () => ({ sensor: 'open' }) },
  'sensor-short-circuit': { ...NONE, from: 'mechanism', change: () => ({ sensor: 'shorted' }) },
  'sensor-intermittent': { ...NONE, from: 'mechanism', change: () => ({ sensor: 'loose contact' }) },
  'gauge-or-cluster-fault': { ...NONE, from: 'mechanism', change: () => ({ gauge: 'wrong' }) },
} as const satisfies Record<string, Fault>;

export type FaultId = keyof typeof FAULTS;

/** The figures of a system are for 6 l. */
function scaled(litres: number, { values }: Car): number {
  return litres * LITRE * Math.min(1.5, values.coolant / 6e-3);
}

/** What a leak has cost before the car comes in: a week's driving, at most what makes the driver look. */
function lostBy(mlPerMin: number, car: Car): number {
  return scaled(Math.min(1.5, 0.15 + 0.08 * mlPerMin), car);
}

function leakage(seen: boolean): Fault {
  return {
    measure: 'ml/min at cap pressure',
    range: [0.1, 50],
    logarithmic: true,
    from: MEMORY,
    change: (s, car) => ({ leak: s * ML_PER_MIN, leakSeen: seen, missing: lostBy(s, car) }),
  };
}

export const FAULT_IDS = Object.keys(FAULTS) as FaultId[];

/**
 * Severity between the ends of a fault's range.
 *
 * @param at 0 mildest end of the table to 1 the other
 * @param scale 1 as the table stands; 0.5 and 2 narrow and widen the range about its middle, for the question of what
 * a result owes to it. Shares stay between 0 and 1, and nothing changes sign.
 */
export function severityAt(id: FaultId, at: number, scale = 1): number {
  const { range, logarithmic = false }: Fault = FAULTS[id];
  const [low, high] = range;
  const [from, to] = logarithmic ? [Math.log(low), Math.log(high)] : [low, high];
  const middle = (from + to) / 2;
  const value = middle + (from + at * (to - from) - middle) * scale;
  if (logarithmic) return Math.exp(value);
  if (low >= 0 && high <= 1) return Math.min(1, Math.max(0, value));
  return low >= 0 ? Math.max(0, value) : value;
}

/**
 * The car with a fault of a severity.
 *
 * The layout of the car must allow it: see `layoutFor`.
 */
export function withFault(car: Car, id: FaultId, severity: number): Car {
  const fault: Fault = FAULTS[id];
  return { ...car, condition: { ...car.condition, ...fault.change(severity, car) } };
}

/** Layout a car must have for a fault to be possible. */
export function layoutFor(id: FaultId): Partial<CarLayout> {
  const fault: Fault = FAULTS[id];
  return fault.layout ?? {};
}

/** A severity drawn for a fault. @param scale see `severityAt` */
export function drawSeverity(random: Random, id: FaultId, scale = 1): number {
  return severityAt(id, random.share(), scale);
}
