import type { Glycol, Mixture } from '../../../src/physics/glycol.ts';
import { toMassFraction } from '../../../src/physics/strength.ts';
import { massFraction, volumeFraction } from '../../../src/physics/units.ts';

/** Mixture by mass. */
export function byMass(glycol: Glycol, fraction: number): Mixture {
  return { glycol, fraction: massFraction(fraction) };
}

/** Mixture by volume before mixing. */
export function byVolume(glycol: Glycol, fraction: number): Mixture {
  return { glycol, fraction: toMassFraction(glycol, volumeFraction(fraction)) };
}

/** Half and half by volume. */
export function half(glycol: Glycol): Mixture {
  return byVolume(glycol, 0.5);
}
