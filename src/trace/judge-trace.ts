/** A trace held against a vehicle: everything the page shows, in one call. */
import { type ColdSide, coldSide } from './cold-side.ts';
import { type Band, expectedBand, type HeaterSetting, leastFrom } from './expected-band.ts';
import { type FanAsked, fanAsked, fanAtOtherFigure } from './fan-asked.ts';
import { type FanCourse, fanCourse } from './fan-course.ts';
import { type Grid, toGrid } from './grid.ts';
import { type HotSide, hotSide } from './hot-side.ts';
import { type Likeness, likenessOf } from './likeness.ts';
import { type MonitorResult, thermostatMonitor } from './monitor.ts';
import { type Start, startOf } from './outside.ts';
import type { Trace } from './read/read-log.ts';
import { type RiseDips, riseDips } from './rise-dips.ts';
import { checkSensor, type SensorCheck, type SensorFault } from './sensor-faults.ts';
import { type StandingReading, standingReading } from './standing-reading.ts';
import { type Drive, driveOf } from './stretches.ts';
import type { FiguresOf, TraceVehicle, TypedFigures } from './vehicle.ts';
import { judge, type Verdict } from './verdict.ts';
import { type WarmUpCourse, warmUpCourse } from './warm-up-course.ts';

/** What only the person knows of the road test and of the car. */
export interface DriverInput {
  /** K. */
  outside?: number;
  heater?: HeaterSetting;
  /** Read off the car; whoever makes the vehicle's figures takes them. */
  figures?: TypedFigures;
  /** Whether the vehicle chosen is this car, or the nearest there is. */
  whose?: FiguresOf;
}

export interface TraceJudgement {
  /** The figures it was held against. */
  vehicle: TraceVehicle;
  grid: Grid;
  start: Start;
  drive: Drive | undefined;
  band: Band | undefined;
  course: WarmUpCourse;
  fan: FanCourse;
  asked: FanAsked;
  /** Where the fan came and went far under its start, K. */
  fanElsewhere: number | undefined;
  sensor: SensorCheck;
  /** The reading no longer moves, and no coolant would stand there. */
  standing: StandingReading | undefined;
  monitor: MonitorResult;
  likeness: Likeness | undefined;
  /** Falls in the first rise that came back as quickly. */
  dips: RiseDips | undefined;
  cold: ColdSide;
  hot: HotSide;
  verdict: Verdict;
}

/** Judges in one go. */
export function judgeTrace(trace: Trace, vehicle: TraceVehicle, said: DriverInput = {}): TraceJudgement {
  const judging = judgeInParts(trace, vehicle, said);
  for (;;) {
    const part = judging.next();
    if (part.done) return part.value;
  }
}

/** Judges part by part, so that a page without a worker can breathe in between. */
export function* judgeInParts(
  trace: Trace,
  vehicle: TraceVehicle,
  said: DriverInput = {},
): Generator<void, TraceJudgement> {
  const sensor = checkSensor(trace.coolant);
  // With hardly a sound reading left, the faulty ones are shown as they are.
  const usable = sensor.clean.time.length >= 2 ? { ...trace, coolant: sensor.clean } : trace;
  yield;
  const grid = toGrid(usable);
  yield;
  const drive = driveOf(grid);
  const start = startOf(grid, said.outside);
  const air = start.outside?.from === 'cold start' ? undefined : start.outside?.kelvin;
  const standing = standingReading(trace.coolant, grid, drive, vehicle.opens.low, air);
  // What it did before it came to stand is the same fault.
  const faults = standing?.byStep ? [flatFault(standing), ...sensor.faults] : sensor.faults;
  yield;
  const heater = said.heater ?? 'unknown';
  const bandWith = (setting: HeaterSetting) =>
    start.outside && expectedBand(grid, vehicle, start.outside.kelvin, start.coolant, setting);
  const band = bandWith(heater);
  yield;
  const course = warmUpCourse(grid, vehicle);
  yield;
  const tracked = fanCourse(grid, drive, vehicle);
  yield;
  const likeness = start.outside && (yield* likenessOf(grid, vehicle, start.outside.kelvin, start.coolant));
  const coldWith = (setting: HeaterSetting, withBand: Band | undefined, heaterMatters: boolean) =>
    coldSide({
      grid,
      drive,
      band: withBand,
      likeness,
      vehicle,
      start,
      course,
      heaterMatters,
      leastFrom: (at) => start.outside && leastFrom(grid, vehicle, start.outside.kelvin, setting, at),
    });
  let cold = coldWith(heater, band, false);
  if (cold.is === 'unknown' && cold.because.includes('cold-day') && heater === 'unknown') {
    const off = coldWith('off', bandWith('off'), false);
    if (off.is !== 'unknown') cold = coldWith(heater, band, true);
  }
  yield;
  const hot = hotSide({ grid, drive, band, vehicle, course, fan: tracked, outside: start.outside?.kelvin });
  // Among swings a fall is no sign of a fan.
  const fan = hot.is === 'swings' && tracked.from === 'temperature' ? { ...tracked, runs: [] } : tracked;
  const asked = fanAsked(grid, drive, vehicle, fan);
  const fanElsewhere = fanAtOtherFigure(vehicle, fan);
  const dips = riseDips(grid, vehicle);
  const read = { grid, vehicle, start, drive, course, fan, asked, fanElsewhere };
  const seen = { ...read, standing, dips, cold, hot };
  return {
    ...seen,
    band,
    likeness,
    sensor: { ...sensor, faults },
    monitor: thermostatMonitor(grid, vehicle.opens.low, start.outside?.kelvin),
    verdict: judge({ ...seen, sensor: faults }),
  };
}

function flatFault({ at, readings, from, to }: StandingReading): SensorFault {
  return { kind: 'flat', at, times: readings, from, to };
}
