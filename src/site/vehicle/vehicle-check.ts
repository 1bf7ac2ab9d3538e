/** What the form of a vehicle asks of scripts/vehicle-check.js. */
import type { CheckedVehicle } from '../../library/check-vehicle.ts';

export type VehicleCheck = (
  id: string,
  typed: unknown,
) => Pick<CheckedVehicle, 'faults' | 'readAs'> & {
  /** The file, once nothing is wrong. */
  text: string | undefined;
  /** Drawings of what is known so far, as markup; the circuit only once its layout is whole. */
  ladder: string;
  circuit: string | undefined;
};
