/** Which vehicles can be had: of this version of the shelf, where the page knows it: the job card's does of it, so that it need not ask for one that is gone, and of this device. */
import { storedText } from '../../browser/storage.ts';
import { isOwnId } from '../../vehicle/own-id.ts';

/** Whether a vehicle can be asked for under this id; a page that does not know lets it be tried. */
export function isOnShelf(vehicle: string): boolean {
  if (isOwnId(vehicle)) return storedText(`own.${vehicle}`) !== undefined;
  const ids = document.querySelector<HTMLElement>('[data-vehicles]')?.dataset.vehicles;
  return ids === undefined || ids.split(' ').includes(vehicle);
}
