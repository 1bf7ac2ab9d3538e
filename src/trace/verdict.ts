/** From what the log shows to one verdict: what it is, how sure, what the log cannot tell, and what it means for the walk. */
import { LOGGED_AIR, ONE_AIR_ALONE, SENSOR_AGREES } from '../physics/thermistor.ts';
import { type Cleared, clearedBy, overStamp } from './cleared.ts';
import type { ColdSide, NoVerdictReason } from './cold-side.ts';
import type { FanAsked } from './fan-asked.ts';
import type { FanCourse, FanRun } from './fan-course.ts';
import { pausedAtStamp } from './first-rise.ts';
import type { Grid } from './grid.ts';
import type { HotSide } from './hot-side.ts';
import type { Start } from './outside.ts';
import type { RiseDips } from './rise-dips.ts';
import type { SensorFault } from './sensor-faults.ts';
import type { StandingReading } from './standing-reading.ts';
import type { Drive } from './stretches.ts';
import type { TraceVehicle } from './vehicle.ts';
import type { WarmUpCourse } from './warm-up-course.ts';

/** What a log can come to. */
export const FINDINGS = [
  'sound',
  'cold-at-speed',
  'low-throughout',
  'straight-past',
  'swings-hot',
  'dips-warming',
  'no-fan',
  'fan-does-not-help',
  'hot-at-speed',
  'holds-high',
  'too-hot',
  'sensor-jumps',
  'sensor-open',
  'sensor-shorted',
  'sensor-stands-still',
  'sensor-under-air',
  'cannot-tell',
] as const;
export type FindingId = (typeof FINDINGS)[number];

/** An answer of one of the shelf's tests. */
export interface TestOutcome {
  test: 'cruise-trace' | 'idle-to-fan-trace' | 'warm-up-timing' | 'cold-soak-comparison';
  outcome: string;
}

export interface Verdict {
  finding: FindingId;
  sure: 'clear' | 'likely' | 'not at all';
  /** The engine is or was too hot, or coolant is not moving: nobody drives on. */
  stop: boolean;
  /** Ids of causes on the shelf this points to, most likely first. */
  causes: readonly string[];
  /** Symptom whose walk goes on from here. */
  symptom: string | undefined;
  outcomes: readonly TestOutcome[];
  /** What the log leaves open. */
  open: readonly NoVerdictReason[];
  /** What a sound log clears and what it does not; undefined with any other finding. */
  clears: Cleared | undefined;
}

export interface Observations {
  grid: Grid;
  vehicle: TraceVehicle;
  start: Start;
  drive: Drive | undefined;
  course: WarmUpCourse;
  fan: FanCourse;
  asked: FanAsked;
  /** Where the fan came and went far under its start, K. */
  fanElsewhere: number | undefined;
  sensor: readonly SensorFault[];
  standing: StandingReading | undefined;
  /** Falls in the first rise that came back as quickly. */
  dips: RiseDips | undefined;
  cold: ColdSide;
  hot: HotSide;
}

interface Meaning {
  stop?: boolean;
  causes: readonly string[];
  symptom?: string;
}

const MEANINGS: Record<FindingId, Meaning> = {
  sound: { causes: [] },
  'cold-at-speed': {
    causes: [
      'thermostat-stuck-open',
      'thermostat-opens-early',
      'thermostat-missing',
      'thermostat-not-seated',
      // Though it agreed with the air when cold: a few hundred ohms in a contact are little there and much at 90 °C.
      'sensor-reads-low',
      // Stamped 15 K too low it looks as if it stood open.
      'thermostat-wrong-rating',
    ],
    symptom: 'reads-low-at-cruise',
  },
  'low-throughout': {
    causes: [
      'thermostat-wrong-rating',
      'thermostat-opens-early',
      'sensor-reads-low',
      'thermostat-stuck-open',
    ],
    symptom: 'reads-low-at-cruise',
  },
  'straight-past': {
    stop: true,
    causes: [
      'thermostat-stuck-shut',
      'coolant-low',
      'trapped-air',
      'pump-impeller-failed',
      'radiator-blocked-inside',
      'sensor-reads-high',
      'thermostat-opens-late',
    ],
    symptom: 'hot-within-minutes',
  },
  'swings-hot': {
    stop: true,
    causes: ['coolant-low', 'trapped-air', 'head-gasket-combustion-leak', 'thermostat-opens-late'],
    symptom: 'swings-up-and-down',
  },
  'dips-warming': {
    causes: ['trapped-air', 'coolant-low', 'head-gasket-combustion-leak'],
    symptom: 'swings-up-and-down',
  },
  'no-fan': {
    stop: true,
    causes: [
      'fan-relay-stuck-off',
      'fan-fuse-or-holder',
      'fan-motor-dead',
      'fan-wiring-or-earth',
      'fan-switch-fault',
    ],
    symptom: 'hot-in-traffic',
  },
  'fan-does-not-help': {
    stop: true,
    causes: [
      'radiator-fins-blocked',
      'radiator-blocked-inside',
      'pump-impeller-failed',
      // Most logs hold what the control unit asks for, not what turns.
      'fan-motor-dead',
      'fan-relay-stuck-off',
      'fan-wiring-or-earth',
    ],
    symptom: 'hot-in-traffic',
  },
  'hot-at-speed': {
    stop: true,
    causes: [
      'radiator-blocked-inside',
      'radiator-fins-blocked',
      'thermostat-opens-late',
      'coolant-low',
      'pump-impeller-failed',
      'sensor-reads-high',
      'trapped-air',
    ],
    symptom: 'hot-under-load',
  },
  'holds-high': {
    causes: [
      'thermostat-opens-late',
      'thermostat-wrong-rating',
      'radiator-blocked-inside',
      'radiator-fins-blocked',
      'coolant-low',
      'sensor-reads-high',
      'trapped-air',
    ],
    symptom: 'hot-under-load',
  },
  'too-hot': { stop: true, causes: [], symptom: 'hot-within-minutes' },
  'sensor-jumps': { causes: ['sensor-intermittent'], symptom: 'swings-up-and-down' },
  'sensor-open': { causes: ['sensor-open-circuit'], symptom: 'stays-dead-cold' },
  'sensor-shorted': { causes: ['sensor-short-circuit'], symptom: 'reads-hot-engine-is-not' },
  'sensor-stands-still': { causes: ['sensor-open-circuit', 'sensor-intermittent'] },
  'sensor-under-air': { causes: ['sensor-reads-low'], symptom: 'reads-low-at-cruise' },
  'cannot-tell': { causes: [] },
};

/** Causes and symptom a finding points to, for pages that name them beforehand. */
export function pointsTo(finding: FindingId): Pick<Meaning, 'causes' | 'symptom'> {
  const { causes, symptom } = MEANINGS[finding];
  return { causes, ...(symptom && { symptom }) };
}

/** A log shorter than this says nothing about the circuit, s. */
const SHORTEST = 120;
/** Colder than both air readings at a start by so much is a sensor, K. */
const UNDER_AIR = SENSOR_AGREES + LOGGED_AIR;
/** The same where only one air was logged, K. */
const UNDER_ONE_AIR = UNDER_AIR + ONE_AIR_ALONE;

/** The verdict of all that was seen: the gravest finding, its causes, what stays open. */
export function judge(seen: Observations): Verdict {
  const { cold } = seen;
  const finding = findingOf(seen);
  const meaning = MEANINGS[finding.id];
  // Beside a stop or a faulty sensor, what else the log might have shown is nobody's next step.
  const complete = meaning.stop || finding.id.startsWith('sensor');
  const open: NoVerdictReason[] = [
    ...('because' in cold ? cold.because : []),
    ...fanOpen(seen),
    ...(radiatorAsked(seen) ? [] : ['radiator-not-asked' as const]),
  ];
  // A fan that should have come is said whatever else the log cannot tell.
  const cannotTell = [...finding.because, ...fanOpen(seen).filter((each) => each === 'fan-did-not-show')];
  return {
    finding: finding.id,
    sure: finding.sure,
    stop: meaning.stop === true,
    causes: causesOf(finding.id, seen),
    symptom: meaning.symptom,
    outcomes: finding.id.startsWith('sensor') ? sensorOutcomes(finding.id) : outcomesOf(seen),
    open: finding.id === 'cannot-tell' ? cannotTell : complete ? [] : open,
    clears: finding.id === 'sound' ? clearedBy(seen) : undefined,
  };
}

/** Who names more than so many causes has named none. */
const MOST_NAMED = 6;

/**
 * The causes of a finding, those first that the log speaks for; where they are more than a list may hold, those go that
 * it speaks against. What reads high has a path beside the sensor, and that shows most when cold: one that agreed with
 * the air at a cold start does not read high.
 */
function causesOf(finding: FindingId, seen: Observations): readonly string[] {
  const { state, underAir } = seen.start;
  const agreed = state === 'cold' && underAir !== undefined && underAir < SENSOR_AGREES;
  const possible = MEANINGS[finding].causes.filter((cause) => !(agreed && cause === 'sensor-reads-high'));
  if (possible.length <= MOST_NAMED) return possible;
  return possible
    .map((cause) => ({ cause, weight: spokenFor(cause, seen) }))
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST_NAMED)
    .map(({ cause }) => cause);
}

/** A thermostat that opens late has opened so far over its stamp, K: 18 K late and as much again to lift. */
const LATEST = 30;

/** 1 where the log speaks for a cause, -1 where it speaks against it, 0 where it says nothing. */
function spokenFor(cause: string, { dips, hot, course, vehicle, start }: Observations): -1 | 0 | 1 {
  switch (cause) {
    case 'trapped-air':
    case 'coolant-low':
      return dips || dipped(hot) ? 1 : 0;
    case 'thermostat-stuck-shut':
      return pausedAtStamp(course, vehicle) ? -1 : 0;
    case 'thermostat-opens-late':
      if (hot.highest > vehicle.opens.high + LATEST || pausedAtStamp(course, vehicle)) return -1;
      return course.pause ? 1 : 0;
    // Over the air at the start: an engine that had run, or a sensor that reads high.
    case 'sensor-reads-high':
      return start.state === 'warm' ? 1 : start.state === 'cold' ? -1 : 0;
    default:
      return 0;
  }
}

interface RawFinding {
  id: FindingId;
  sure: Verdict['sure'];
  because: NoVerdictReason[];
}

function found(id: FindingId, sure: boolean): RawFinding {
  return { id, sure: sure ? 'clear' : 'likely', because: [] };
}

function findingOf({
  grid,
  vehicle,
  sensor,
  standing,
  start,
  hot,
  cold,
  asked,
  dips,
  fanElsewhere,
}: Observations): RawFinding {
  for (const { kind, times } of sensor) {
    if (kind === 'jump') return found('sensor-jumps', times > 1);
    if (kind === 'flat') return found('sensor-stands-still', true);
    return found(kind === 'short' ? 'sensor-shorted' : 'sensor-open', true);
  }
  const duration = grid.length * grid.step;
  if (duration < SHORTEST) return { id: 'cannot-tell', sure: 'not at all', because: ['too-short'] };
  switch (hot.is) {
    case 'straight past':
      return found('straight-past', hot.sure);
    case 'swings':
      return found('swings-hot', hot.sure);
    case 'no fan':
      return found('no-fan', hot.sure);
    case 'fan does not help':
      return found('fan-does-not-help', hot.sure);
    case 'hot at speed':
      return found('hot-at-speed', hot.sure);
    case 'too hot':
      return found('too-hot', false);
    case 'holds high':
      return found('holds-high', false);
    case 'not hot':
      break;
  }
  if ((dips?.times ?? 0) + (dipped(hot) ? 1 : 0) > 1) return found('dips-warming', false);
  const once = dips !== undefined || dipped(hot);
  if ((start.underAir ?? 0) > UNDER_AIR || (start.underOneAir ?? 0) > UNDER_ONE_AIR)
    return found('sensor-under-air', false);
  if (standing) return { id: 'cannot-tell', sure: 'not at all', because: ['stands-still'] };
  switch (cold.is) {
    case 'falls':
    case 'stays low':
      return found('cold-at-speed', cold.sure);
    case 'unlike sound':
      return found('cold-at-speed', false);
    case 'low throughout':
      return found('low-throughout', cold.sure);
    case 'opens':
    case 'holds':
      if (once) return { id: 'cannot-tell', sure: 'not at all', because: ['dipped-once'] };
      // Past every usual fan figure, and this vehicle's is not known: nobody calls that sound.
      if (vehicle.fanOn.from === 'general' && hot.highest > vehicle.fanOn.high + 2)
        return { id: 'cannot-tell', sure: 'not at all', because: ['vehicle-unknown'] };
      if (fanElsewhere !== undefined)
        return { id: 'cannot-tell', sure: 'not at all', because: ['fan-at-other-figure'] };
      if (asked.is === 'came' && asked.rose)
        return { id: 'cannot-tell', sure: 'not at all', because: ['fan-did-not-cool'] };
      if (hot.overStamp !== undefined && vehicle.opens.from !== 'general')
        return { id: 'cannot-tell', sure: 'not at all', because: ['over-the-stamp'] };
      if (
        vehicle.opens.from === 'vehicle' &&
        start.state === 'warm' &&
        airsAgree(start) &&
        overStamp(cold, vehicle)
      )
        return { id: 'cannot-tell', sure: 'not at all', because: ['may-read-high'] };
      return found('sound', cold.is === 'holds' && vehicle.opens.from === 'vehicle');
    case 'unknown':
      return {
        id: 'cannot-tell',
        sure: 'not at all',
        because: [...(once ? ['dipped-once' as const] : []), ...cold.because],
      };
  }
}

/** Intake as cool as the air outside: the bay is not warm from a drive before. */
function airsAgree({ underAir }: Start): boolean {
  return underAir !== undefined;
}

function dipped(hot: HotSide): boolean {
  return hot.is === 'not hot' && hot.dip !== undefined;
}

/** What is left open of the fan. */
function fanOpen({ asked, hot }: Observations): NoVerdictReason[] {
  if (hot.is === 'no fan' || hot.is === 'fan does not help') return [];
  if (asked.is === 'came') return [];
  return [asked.is === 'did not show' ? 'fan-did-not-show' : 'fan-not-asked'];
}

/** The reading fell while it ran: it turned. */
function cooled({ on, off }: FanRun): boolean {
  return off !== undefined && off < on - 1;
}

function sensorOutcomes(finding: FindingId): TestOutcome[] {
  if (finding === 'sensor-jumps') return [{ test: 'cruise-trace', outcome: 'jumps' }];
  if (finding === 'sensor-under-air') return [{ test: 'cold-soak-comparison', outcome: 'coolant-below' }];
  return [];
}

/** Minutes at speed on a warm day: only then has the radiator shown what it can give off. */
function radiatorAsked({ drive, start }: Observations): boolean {
  return (drive?.secondsAtSpeed ?? 0) > 300 && (start.outside?.kelvin ?? 0) > WARM_DAY;
}

function outcomesOf({ grid, vehicle, drive, course, asked, cold, hot, start }: Observations): TestOutcome[] {
  const outcomes: TestOutcome[] = [];
  const cruise = {
    holds: 'holds',
    falls: 'falls-at-speed',
    'stays low': 'falls-at-speed',
    'low throughout': 'steady-low',
    opens: undefined,
    'unlike sound': undefined,
    unknown: undefined,
  }[cold.is];
  if (hot.is === 'swings') outcomes.push({ test: 'cruise-trace', outcome: 'jumps' });
  else if (cruise) outcomes.push({ test: 'cruise-trace', outcome: cruise });
  const idle = idleOutcome(hot, asked, grid, drive, vehicle);
  if (idle) outcomes.push({ test: 'idle-to-fan-trace', outcome: idle });
  if (start.state === 'cold') {
    const outcome = hot.is === 'straight past' ? 'too-fast' : cold.is === 'stays low' ? 'never' : undefined;
    const paused =
      course.pause && Math.abs(course.pause.kelvin - vehicle.opens.low) < 6 && hot.is === 'not hot';
    if (outcome) outcomes.push({ test: 'warm-up-timing', outcome });
    else if (paused && (cold.is === 'holds' || cold.is === 'opens'))
      outcomes.push({ test: 'warm-up-timing', outcome: 'on-time' });
  }
  return outcomes;
}

/** K: 20 °C. */
const WARM_DAY = 293;
/** Quarter of an hour standing without reaching the fan's figure is an answer of its own. */
const LONG_IDLE = 900;

function idleOutcome(
  hot: HotSide,
  asked: FanAsked,
  grid: Grid,
  drive: Drive | undefined,
  vehicle: TraceVehicle,
): string | undefined {
  if (hot.is === 'swings') return undefined;
  if (hot.is === 'no fan') return 'climbs-no-fan';
  if (hot.is === 'fan does not help') return 'climbs-with-fan';
  if (asked.is === 'came' && asked.runs.some(cooled)) return 'cycles';
  const idled = drive?.standing.some(
    ({ from, to }) =>
      (to - from) * grid.step >= LONG_IDLE && (grid.smooth[to] ?? 999) < vehicle.fanOn.low - 3,
  );
  return idled && asked.is === 'not asked' ? 'never-gets-there' : undefined;
}
