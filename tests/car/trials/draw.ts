/** Draws cars that somebody would bring in: with a fault, on a day on which their own drive shows the complaint. */
import { type Car, drawCar } from '../../../src/car/car.ts';
import { type ComplaintId, complains, drawDay } from '../../../src/car/complaint.ts';
import { drawSeverity, type FaultId, layoutFor, withFault } from '../../../src/car/faults.ts';
import { randomOf } from '../../../src/car/random.ts';

/** A car on the day it is brought in. */
export interface BroughtIn {
  readonly complaint: ComplaintId;
  readonly fault: FaultId;
  readonly car: Car;
  /** K; the same day in the shop. */
  readonly outside: number;
  readonly seed: number;
}

/** Days and severities tried before a car is given up: with this cause it does not make this complaint. */
const TRIES = 20;

/**
 * A car brought in with a complaint; undefined where no day and no severity tried makes this car show it.
 * @param scale 1 as the table of faults stands; 0.5 and 2 for half and double the ranges
 */
export function broughtIn(
  complaint: ComplaintId,
  fault: FaultId,
  seed: number,
  scale = 1,
): BroughtIn | undefined {
  const random = randomOf(seed, `${complaint} ${fault}`);
  const sound = drawCar(seed, { layout: layoutOf(fault) });
  for (let at = 0; at < TRIES; at++) {
    const car = withFault(sound, fault, drawSeverity(random, fault, scale));
    const outside = drawDay(random, complaint);
    if (complains(complaint, car, outside, seed, random.chance(0.5)))
      return { complaint, fault, car, outside, seed };
  }
  return undefined;
}

/** Layout that a fault asks for; a fan in front of the condenser stands beside a viscous one here. */
function layoutOf(fault: FaultId): ReturnType<typeof layoutFor> {
  return fault === 'condenser-fan-dead' ? { fan: 'viscous clutch', fanSwitchedBy: 'none' } : layoutFor(fault);
}
