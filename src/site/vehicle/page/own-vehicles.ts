/** The vehicles that are this device's alone. They lie in the small storage: the chosen one is read before a page is shown. */
import { forget, keep, kept, keptNames } from '../../browser/storage.ts';
import { isVehicleDraft, type VehicleDraft } from '../vehicle-draft.ts';

/** The vehicle of this device with this id, as it was typed; undefined where there is none. */
export function ownVehicle(id: string): VehicleDraft | undefined {
  return kept(`own.${id}`, isVehicleDraft);
}

/** The last changed first. */
export function ownVehicles(): VehicleDraft[] {
  return keptNames('own.')
    .flatMap((name) => kept(name, isVehicleDraft) ?? [])
    .sort((a, b) => b.changed.localeCompare(a.changed));
}

/** @returns whether the device keeps it */
export function keepOwnVehicle(vehicle: VehicleDraft): boolean {
  return keep(`own.${vehicle.id}`, vehicle);
}

/** Takes a vehicle of this device off it. */
export function removeOwnVehicle(id: string): void {
  forget(`own.${id}`);
}
