/** The vehicles that are this device's alone. They lie in the small storage: the chosen one is read before a page is shown. */
import { forget, keep, kept, keptNames } from '../../browser/storage.ts';
import { isVehicleDraft, type VehicleDraft } from '../vehicle-draft.ts';

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

export function removeOwnVehicle(id: string): void {
  forget(`own.${id}`);
}
