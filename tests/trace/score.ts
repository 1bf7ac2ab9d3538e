/** How a verdict on a simulated road test counts. */
import type { Verdict } from '../../src/trace/verdict.ts';

export type Score = 'right' | 'cannot tell' | 'missed' | 'wrong blame';

/** What is wrong with a made-up car, and whether its drive put that to work. */
export interface Truth {
  /** Causes on the shelf that are this fault; none for a sound car. */
  causes: readonly string[];
  /** For a fault of the fan: seconds the coolant stood over where the fan should start. */
  fanAsked?: number;
  /** A fault that only a radiator put to work shows. */
  needsRadiator?: boolean;
}

/** Over its start for so long, s, a log has shown that no fan came. */
const FAN_ASKED = 150;

/**
 * Right: the fault is among the causes named, at most six of them; or the car is sound and called so. Can't tell: no
 * cause is named. Missed: a faulty car is called sound, unless the verdict says that this part was never put to work,
 * or that it should have come and did not show.
 */
export function score(
  { causes: meant, fanAsked, needsRadiator }: Truth,
  { finding, causes, open }: Pick<Verdict, 'finding' | 'causes' | 'open'>,
): Score {
  if (causes.length > 6) return 'wrong blame';
  if (causes.some((cause) => meant.includes(cause))) return 'right';
  if (causes.length > 0) return 'wrong blame';
  if (finding !== 'sound') return 'cannot tell';
  if (meant.length === 0) return 'right';
  if (fanAsked !== undefined) {
    if (open.includes('fan-did-not-show')) return 'cannot tell';
    return fanAsked < FAN_ASKED && open.includes('fan-not-asked') ? 'cannot tell' : 'missed';
  }
  return needsRadiator && open.includes('radiator-not-asked') ? 'cannot tell' : 'missed';
}
