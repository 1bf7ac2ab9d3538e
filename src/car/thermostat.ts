/** Wax element and valve. */
import { type Car, MAP_ABOVE_PLAIN } from './car.ts';

/** Time over the whole stroke, s. */
const STROKE = 3;
/** Share of full load from which a map-controlled thermostat is heated, and the heat above its stamp, K. */
const MAP_LOAD = 0.45;
const MAP_HOT = 4;

/** Where this thermostat starts to open now, K. @param head coolant at the outlet, K */
export function opensAt({ values, condition, layout }: Car, load: number, head: number): number {
  const plain = values.stamp + values.tolerance + condition.shift + condition.wrongStamp;
  if (layout.kind !== 'map-controlled') return plain;
  const { mapHeater } = condition;
  const ordered = load > MAP_LOAD || head > plain + MAP_HOT;
  const heated = mapHeater === 'always' || (mapHeater === 'ordered' && ordered);
  return heated ? plain - MAP_ABOVE_PLAIN : plain;
}

/**
 * Lift after a step, 0 to 1: the opening line on the way up, the same line lower by the play on the way down.
 *
 * @param wax K
 * @param opens K
 * @param step s
 */
export function liftAfter(
  { values, condition }: Car,
  lift: number,
  wax: number,
  opens: number,
  step: number,
): number {
  const { span, play } = values;
  const line = (temperature: number) => Math.min(1, Math.max(0, (temperature - opens) / span));
  const sticks = condition.sticks > 0 && lift <= condition.liftFloor && wax < opens + condition.sticks;
  const wanted = sticks ? 0 : Math.min(line(wax + play), Math.max(line(wax), lift));
  const within = Math.min(condition.liftCeiling, Math.max(condition.liftFloor, wanted));
  const most = step / STROKE;
  return lift + Math.max(-most, Math.min(most, within - lift));
}
