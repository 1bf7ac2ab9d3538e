/** A road test written down by hand, judged and told as the page does it. */
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { tell } from '../../src/trace/say.ts';
import { traceVehicleOf, type VehicleFigures } from '../../src/trace/vehicle.ts';
import { type HandPoint, handLog } from './hand-log.ts';
import { STAMP_87 } from './known-cars.ts';

/**
 * On a car whose thermostat is stamped 87, unless another is given; undefined for one that nothing is known of.
 * @param outside °C @param fanColumn whether the log has a column for the fan
 */
export function judgeByHand(
  points: readonly HandPoint[],
  outside: number,
  { sheet = STAMP_87, fanColumn = true }: { sheet?: VehicleFigures | 'unknown'; fanColumn?: boolean } = {},
) {
  const text = handLog(points, outside);
  const read = finish(readLog(fanColumn ? text : text.replace('Radiator fan', 'Other')));
  if (!read.ok) throw new Error(read.fault.message);
  const vehicle = traceVehicleOf(sheet === 'unknown' ? undefined : sheet);
  const result = judgeTrace(read.trace, vehicle);
  return { ...result, told: tell(result, vehicle) };
}
