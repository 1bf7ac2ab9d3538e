/**
 * Before sites had a name of their own, all sites of a host kept their things in one place. What lies there belongs to the site
 * at the top of the host once that one has been opened; until then the first site in a folder takes it, so that nothing is lost
 * and nothing is ever in two sites.
 */
import { openDB } from 'idb';
import { carryOver, putInto } from './carry-over.ts';
import { type Database, STORE } from './database.ts';
import { PLAIN_NAME, siteName } from './site-name.ts';

/** Kept in the shared place by the site that it belongs to. */
const OWNER = 'site';

/** @throws when the database does not take it; then all of it lies where it lay */
export async function takeWhatWasShared(own: Database): Promise<void> {
  if (siteName() === PLAIN_NAME) {
    if ((await own.get(STORE, OWNER)) === undefined) await own.put(STORE, siteName(), OWNER);
    return;
  }
  const databases = await indexedDB.databases();
  if (databases.some(({ name }) => name === PLAIN_NAME)) {
    const shared = await openDB<unknown>(PLAIN_NAME);
    try {
      if (!shared.objectStoreNames.contains(STORE)) return;
      const [names, values] = await Promise.all([shared.getAllKeys(STORE), shared.getAll(STORE)]);
      if (names.includes(OWNER)) return;
      await putInto(
        own,
        names.map((name, at) => ({ name: String(name), value: values[at] })),
      );
      await shared.clear(STORE);
    } finally {
      shared.close();
    }
  }
  await carryOver(own, `${PLAIN_NAME}.`);
}
