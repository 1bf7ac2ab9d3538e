/** Vehicles of this device alone, told by their id. */

/** What their ids start with; no record of a shelf is called so. */
export const OWN_START = 'own-vehicle';

/** After the address of the page, where it is opened from a complaint: only what matters for that one is asked. */
export const FOR_COMPLAINT = 'for-complaint';

/** Whether this is a vehicle of the device alone, not one of the shelf. */
export function isOwnId(id: string): boolean {
  return id.startsWith(`${OWN_START}-`);
}

/** The page of a vehicle of the shelf, or of this device, from the root of the site. */
export function vehicleAddress(id: string): string {
  return isOwnId(id) ? `own-vehicle.html#${id}` : `vehicles/${id}.html`;
}
