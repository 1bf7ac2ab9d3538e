/** How a verdict on a simulated road test counts. */
import type { Verdict } from '../../src/trace/verdict.ts';
import type { Fault } from './car.ts';

export type Score = 'right' | 'cannot tell' | 'missed' | 'wrong blame';

/** Causes on the shelf that are this fault. */
const CAUSES: Record<Exclude<Fault, 'none'>, readonly string[]> = {
  'thermostat stuck open': ['thermostat-stuck-open'],
  'thermostat opens early': ['thermostat-opens-early'],
  'thermostat stuck shut': ['thermostat-stuck-shut'],
  'thermostat opens late': ['thermostat-opens-late', 'thermostat-stuck-shut'],
  'pump moves nothing': ['pump-impeller-failed'],
  'air in the system': ['trapped-air'],
  'fan dead': ['fan-motor-dead'],
  'radiator blocked': ['radiator-fins-blocked', 'radiator-blocked-inside'],
  'sensor reads low': ['sensor-reads-low'],
  'sensor jumps': ['sensor-intermittent'],
  'sensor open': ['sensor-open-circuit'],
  'sensor stands still': ['sensor-open-circuit', 'sensor-intermittent'],
};

/**
 * Right: the fault is among the causes named, at most six of them; or the car is sound and called so. Can't tell: no
 * cause is named. Missed: a faulty car is called sound, unless the verdict says that this part was never put to work.
 */
export function score(
  fault: Fault,
  { finding, causes, open }: Pick<Verdict, 'finding' | 'causes' | 'open'>,
): Score {
  if (causes.length > 6) return 'wrong blame';
  if (fault !== 'none' && causes.some((cause) => CAUSES[fault].includes(cause))) return 'right';
  if (causes.length > 0) return 'wrong blame';
  if (finding !== 'sound') return 'cannot tell';
  if (fault === 'none') return 'right';
  if (fault === 'fan dead' && open.includes('fan-not-asked')) return 'cannot tell';
  if (fault === 'radiator blocked' && open.includes('radiator-not-asked')) return 'cannot tell';
  return 'missed';
}
