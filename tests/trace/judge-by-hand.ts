/** A road test written down by hand, judged and told as the page does it. */
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { tell } from '../../src/trace/say.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { type HandPoint, handLog } from './hand-log.ts';
import { STAMP_87 } from './known-cars.ts';

/** On a car whose thermostat is stamped 87. @param outside °C */
export function judgeByHand(points: readonly HandPoint[], outside: number) {
  const read = finish(readLog(handLog(points, outside)));
  if (!read.ok) throw new Error(read.fault.message);
  const vehicle = traceVehicleOf(STAMP_87);
  const result = judgeTrace(read.trace, vehicle);
  return { ...result, told: tell(result, vehicle) };
}
