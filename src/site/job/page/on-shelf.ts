/** Which vehicles this version of the shelf has, where the page knows it: the job card's does, so that it need not ask for one that is gone. */

/** Whether a vehicle can be asked for under this id; a page that does not know lets it be tried. */
export function isOnShelf(vehicle: string): boolean {
  const ids = document.querySelector<HTMLElement>('[data-vehicles]')?.dataset.vehicles;
  return ids === undefined || ids.split(' ').includes(vehicle);
}
