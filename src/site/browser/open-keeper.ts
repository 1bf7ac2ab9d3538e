/** Where this device keeps what may not be lost: the browser's database, and where it has none its small storage. */
import type { Keeper } from './keeper.ts';
import { openDatabase } from './keeper-database.ts';
import { smallStorage } from './keeper-small.ts';

let opened: Promise<Keeper> | undefined;

/** The keeper of this page. A database that does not open leaves the small storage, whose things it takes over later. */
export function keeper(): Promise<Keeper> {
  opened ??= openDatabase(() => {
    opened = undefined;
  }).catch(() => smallStorage);
  return opened;
}

/** Whether this device keeps anything here: storage may be blocked, full, or gone when a private window closes. */
export async function keepsAnything(): Promise<boolean> {
  const place = await keeper();
  try {
    await place.change('probe', () => 'x'.repeat(200));
    await place.change('probe', () => undefined);
    return true;
  } catch {
    return false;
  }
}
