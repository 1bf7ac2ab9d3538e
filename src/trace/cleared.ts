/**
 * What a sound log clears and what it does not: of every cause that a log can point to, whether this log would have
 * shown it. What it leaves comes as a few lines, each with the cheap test that settles it.
 */
import { clearedWords, leftWords } from './cleared-words.ts';
import type { ColdSide } from './cold-side.ts';
import type { FanAsked } from './fan-asked.ts';
import type { FanCourse, FanRun } from './fan-course.ts';
import { extentOf, type Grid } from './grid.ts';
import { levelOf } from './level.ts';
import type { Start } from './outside.ts';
import { type Drive, overlaps } from './stretches.ts';
import { ACROSS_ENGINE, acrossEngine, type TraceVehicle } from './vehicle.ts';

/** A line on the page: what is not cleared, by the test that clears it. */
export type LeftLine = 'contents' | 'radiator' | 'fan' | 'thermostat';
/** What of the thermostat: its seat, what it reads over or under what the stamp says, or the stamp itself. */
export type LeftPart = 'seat' | 'over the stamp' | 'under the stamp' | 'stamp';

export interface Left {
  line: LeftLine;
  /** Ids of causes on the shelf. */
  causes: readonly string[];
  /** In words, cut where `by` stands. */
  words: readonly string[];
  /** K. */
  by: number | undefined;
}

export interface Cleared {
  /** Ids of causes that this log would have shown. */
  cleared: readonly string[];
  left: readonly Left[];
  /** What it clears, in a sentence. */
  summary: string;
}

export interface ClearedInput {
  grid: Grid;
  vehicle: TraceVehicle;
  start: Start;
  drive: Drive | undefined;
  fan: FanCourse;
  asked: FanAsked;
  cold: ColdSide;
}

const FAN = [
  'fan-relay-stuck-off',
  'fan-fuse-or-holder',
  'fan-motor-dead',
  'fan-wiring-or-earth',
  'fan-switch-fault',
] as const;
const PUMP = 'pump-impeller-failed';

/** Every cause that a log can point to. Those in no line below a sound log has always cleared. */
export const SHOWN_BY_LOGS = [
  'thermostat-stuck-shut',
  'thermostat-opens-late',
  'thermostat-opens-early',
  'thermostat-stuck-open',
  'thermostat-missing',
  'thermostat-not-seated',
  'thermostat-wrong-rating',
  PUMP,
  'radiator-blocked-inside',
  'radiator-fins-blocked',
  ...FAN,
  'coolant-low',
  'trapped-air',
  'head-gasket-combustion-leak',
  'sensor-reads-low',
  'sensor-reads-high',
  'sensor-open-circuit',
  'sensor-short-circuit',
  'sensor-intermittent',
] as const;

/** Says of each cause whether a sound log would have shown it. */
export function clearedBy(input: ClearedInput): Cleared {
  const thermostat = [...(seatShown(input) ? [] : [SEAT]), ...figuresLeft(input)];
  const line = (name: LeftLine, causes: readonly string[], parts: readonly LeftPart[] = []): Left[] =>
    causes.length === 0
      ? []
      : [{ line: name, causes, words: leftWords(name, parts, causes), by: differenceOf(parts, input) }];
  const left = [
    // Air goes in minutes or sits in the heater, a litre short still covers the sensor, and little gas finds the tank.
    ...line('contents', ['coolant-low', 'trapped-air', 'head-gasket-combustion-leak']),
    // Sized for top speed in the heat: on a level road half of it is enough.
    ...line('radiator', [
      'radiator-blocked-inside',
      'radiator-fins-blocked',
      ...(flowShown(input) ? [] : [PUMP]),
    ]),
    ...line('fan', fanShown(input) ? [] : FAN),
    ...line(
      'thermostat',
      thermostat.flatMap(({ causes }) => causes),
      thermostat.map(({ part }) => part),
    ),
  ];
  const open = new Set(left.flatMap(({ causes }) => causes));
  const cleared = SHOWN_BY_LOGS.filter((cause) => !open.has(cause));
  return { cleared, left, summary: clearedWords(cleared) };
}

function differenceOf(parts: readonly LeftPart[], { cold, vehicle }: ClearedInput): number | undefined {
  if (parts.includes('over the stamp')) return levelOf(cold) - vehicle.opens.high;
  return parts.includes('under the stamp') ? ACROSS_ENGINE : undefined;
}

interface ThermostatLeft {
  part: LeftPart;
  causes: readonly string[];
}

const SEAT: ThermostatLeft = { part: 'seat', causes: ['thermostat-not-seated', 'thermostat-stuck-open'] };

/** A fan that came by its own figure and went again stood the reading down: so much over its start nothing did, K. */
const OVER_ITS_START = 3;
/** Once may be the wind or the driver's foot. */
const COME_AND_GONE = 2;

/**
 * The order alone is in most logs. One that is taken back while the car stands was obeyed: only the fan brings the
 * reading down there.
 */
function fanShown({ grid, vehicle, drive, fan, asked }: ClearedInput): boolean {
  if (asked.is !== 'came' || asked.rose) return false;
  const { fanOn } = vehicle;
  const { high: highest } = extentOf(grid.smooth, 0, grid.length - 1);
  if (fan.from === 'column' && fanOn.from !== 'general' && highest > fanOn.high + OVER_ITS_START)
    return false;
  return asked.runs.filter((run) => cameAndWent(run, grid, drive)).length >= COME_AND_GONE;
}

function cameAndWent({ from, to }: FanRun, { step }: Grid, drive: Drive | undefined): boolean {
  if (to === undefined) return false;
  return drive?.standing.some((stretch) => overlaps(stretch, { from: from / step, to: to / step })) ?? false;
}

/**
 * So quick a fall by the fan, K/s, takes about 12 kW from an engine of 60 kJ/K that makes 3 kW at idle, and over 45 K
 * at 61 W/K a litre a minute that is more than a failed impeller moves at idle.
 */
const QUICK_FALL = 0.15;
/** A fall of so much can be timed, K. */
const TIMED = 3;

function flowShown({ asked }: ClearedInput): boolean {
  if (asked.is !== 'came') return false;
  const quick = asked.runs.filter(
    ({ from, to, on, off }) =>
      to !== undefined && off !== undefined && on - off >= TIMED && (on - off) / (to - from) >= QUICK_FALL,
  );
  return quick.length > 0;
}

/** Held at speed on a day colder than this, an engine cannot have kept what a leaking seat lets through, K: 15 °C. */
const COOL_DAY = 288;

function seatShown({ cold, start }: ClearedInput): boolean {
  return cold.is === 'holds' && (start.outside?.kelvin ?? COOL_DAY) < COOL_DAY;
}

/** Over the stamp by more than stamp and reading are out, K. */
const OVER_STAMP = 3;
/** Under what a thermostat in the inlet would hold, K: it holds what comes in, and the outlet is hotter. */
const UNDER_INLET = 4;

/** What the level leaves of stamp, opening and sensor. */
function figuresLeft({ cold, vehicle, start }: ClearedInput): ThermostatLeft[] {
  const { opens } = vehicle;
  // What reads high has a path beside the sensor, and that shows most when cold.
  const high = start.state === 'cold' ? [] : ['sensor-reads-high'];
  if (opens.from !== 'vehicle')
    return [
      {
        part: 'stamp',
        causes: [
          'thermostat-wrong-rating',
          'thermostat-opens-early',
          'thermostat-opens-late',
          'sensor-reads-low',
          ...high,
        ],
      },
    ];
  if (overStamp(cold, vehicle))
    return [
      { part: 'over the stamp', causes: ['thermostat-wrong-rating', 'thermostat-opens-late', ...high] },
    ];
  const across = acrossEngine(vehicle);
  if (across > 0 && levelOf(cold) < opens.low + across - UNDER_INLET)
    return [
      {
        part: 'under the stamp',
        causes: ['thermostat-wrong-rating', 'thermostat-opens-early', 'sensor-reads-low'],
      },
    ];
  return [];
}

/**
 * Whether it held over its stamp by more than stamp and reading are out. With the thermostat in the inlet the outlet is
 * hotter; where the side is not known it may be that, or not.
 */
export function overStamp(cold: ColdSide, vehicle: TraceVehicle): boolean {
  const across = vehicle.layout.thermostat === undefined ? 0 : acrossEngine(vehicle);
  return levelOf(cold) - vehicle.opens.high - across > OVER_STAMP;
}
