/** What this site keeps on the device, counted, and all of it forgotten in one act. */
import { tellWindows } from './device-store.ts';
import { keeper } from './open-keeper.ts';
import { takeSearched } from './searched.ts';
import { prefix } from './storage.ts';
import { DATABASE_STARTS, type DatabaseName, type DatabaseStart } from './storage-names.ts';

export interface KeptHere {
  /** How many there are of each kind that may hold a customer's words. */
  counts: Record<DatabaseStart, number>;
  /** Vehicles of this device alone. */
  own: number;
  /** The other names in the small storage: walks, timers, readings of proof runs, chosen vehicle, units. */
  small: number;
}

/** Counts it; what cannot be read any more counts too. */
export async function keptHere(): Promise<KeptHere> {
  const names = await databaseNames();
  const small = smallNames();
  const own = small.filter((name) => name.startsWith(`${prefix()}own.`));
  const count = (start: DatabaseStart) => names.filter((name) => name.startsWith(start)).length;
  return {
    counts: {
      'job.': count('job.'),
      'note.': count('note.'),
      'picture.': count('picture.'),
      'vehicle-draft.': count('vehicle-draft.'),
    },
    own: own.length,
    small: small.length - own.length,
  };
}

/**
 * Takes all of it off the device, and tells the other windows. The pages kept for use without a network stay: they are the same
 * for everybody.
 * @throws when the device does not let go of it; then it has kept everything
 */
export async function forgetAll(): Promise<void> {
  const names = await databaseNames();
  await (await keeper()).change('probe', () => undefined, new Map(names.map((name) => [name, undefined])));
  for (const name of smallNames()) localStorage.removeItem(name);
  // What the customer said to the search.
  takeSearched();
  tellWindows(names);
}

async function databaseNames(): Promise<DatabaseName[]> {
  const place = await keeper();
  const all = await Promise.all(DATABASE_STARTS.map((start) => place.all(start)));
  return all.flat().map(([name]) => name as DatabaseName);
}

function smallNames(): string[] {
  const own = prefix();
  return Object.keys(localStorage).filter((name) => name.startsWith(own));
}
