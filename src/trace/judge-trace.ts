/** A trace held against a vehicle: everything the page shows, in one call. */
import { type ColdSide, coldSide } from './cold-side.ts';
import { type Band, expectedBand, type HeaterSetting } from './expected-band.ts';
import { type FanCourse, fanCourse } from './fan-course.ts';
import { type Grid, toGrid } from './grid.ts';
import { type HotSide, hotSide } from './hot-side.ts';
import { type Likeness, likenessOf } from './likeness.ts';
import { type MonitorResult, thermostatMonitor } from './monitor.ts';
import { type Start, startOf } from './outside.ts';
import type { Trace } from './read/read-log.ts';
import { checkSensor, type SensorCheck, stuckReading } from './sensor-faults.ts';
import { type Drive, driveOf } from './stretches.ts';
import type { TraceVehicle } from './vehicle.ts';
import { judge, type Verdict } from './verdict.ts';
import { type WarmUpCourse, warmUpCourse } from './warm-up-course.ts';

/** What only the person knows of the road test. */
export interface Said {
  /** K. */
  outside?: number;
  heater?: HeaterSetting;
}

export interface Judged {
  grid: Grid;
  start: Start;
  drive: Drive | undefined;
  band: Band | undefined;
  course: WarmUpCourse;
  fan: FanCourse;
  sensor: SensorCheck;
  monitor: MonitorResult;
  likeness: Likeness | undefined;
  cold: ColdSide;
  hot: HotSide;
  verdict: Verdict;
}

export function judgeTrace(trace: Trace, vehicle: TraceVehicle, said: Said = {}): Judged {
  const sensor = checkSensor(trace.coolant);
  // With hardly a sound reading left, the faulty ones are shown as they are.
  const usable = sensor.clean.time.length >= 2 ? { ...trace, coolant: sensor.clean } : trace;
  const grid = toGrid(usable);
  const drive = driveOf(grid);
  const stuck = stuckReading(usable.coolant, grid, drive, vehicle.opens.low);
  const faults = stuck ? [...sensor.faults, stuck] : sensor.faults;
  const start = startOf(grid, said.outside);
  const heater = said.heater ?? 'unknown';
  const bandWith = (setting: HeaterSetting) =>
    start.outside && expectedBand(grid, vehicle, start.outside.kelvin, start.coolant, setting);
  const band = bandWith(heater);
  const course = warmUpCourse(grid, vehicle);
  const fan = fanCourse(grid, drive, vehicle);
  const likeness = start.outside && likenessOf(grid, vehicle, start.outside.kelvin, start.coolant);
  const coldWith = (withBand: Band | undefined, heaterMatters: boolean) =>
    coldSide({ grid, drive, band: withBand, likeness, vehicle, start, course, heaterMatters });
  let cold = coldWith(band, false);
  if (cold.is === 'unknown' && cold.because.includes('cold-day') && heater === 'unknown') {
    const off = coldWith(bandWith('off'), false);
    if (off.is !== 'unknown') cold = coldWith(band, true);
  }
  const hot = hotSide({ grid, drive, band, vehicle, course, fan });
  const verdict = judge({ grid, vehicle, start, drive, course, fan, sensor: faults, cold, hot });
  return {
    grid,
    start,
    drive,
    band,
    course,
    fan,
    sensor: { ...sensor, faults },
    likeness,
    monitor: thermostatMonitor(grid, vehicle.opens.low),
    cold,
    hot,
    verdict,
  };
}
