/** The browser's database as a keeper: one store, whose keys are names such as `job.<id>`. */
import { openDB } from 'idb';
import { carryOver } from './carry-over.ts';
import { type Database, STORE, settle } from './database.ts';
import type { Keeper } from './keeper.ts';
import { takeWhatWasShared } from './shared-before.ts';
import { siteName } from './site-name.ts';
import { prefix } from './storage.ts';
import type { DatabaseStart } from './storage-names.ts';

/** Milliseconds after which a database that has not opened is taken for one that never does; some browsers hang there. */
const LONGEST_WAIT = 8000;

/**
 * Opens it, and carries over what lies in the small storage.
 * @param onLost called when the browser closes it, so that the next use opens it anew
 * @throws when this browser has none, or does not open it
 */
export async function openDatabase(onLost: () => void): Promise<Keeper> {
  const opening = openDB<unknown>(siteName(), 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore(STORE);
    },
    // A newer version of the site waits in another window: it may not have to wait for this one.
    blocking: (_from, _to, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
      onLost();
    },
    terminated: onLost,
  });
  const database = await Promise.race([opening, never(LONGEST_WAIT)]);
  // What cannot be carried over now stays where it is, and is tried again the next time.
  await takeWhatWasShared(database).catch(() => undefined);
  await carryOver(database, prefix()).catch(() => undefined);
  return keeperOf(database);
}

function keeperOf(database: Database): Keeper {
  return {
    kind: 'database',
    async all(start) {
      const transaction = database.transaction(STORE);
      const range = rangeOf(start);
      const [names, values] = await Promise.all([
        transaction.store.getAllKeys(range),
        transaction.store.getAll(range),
      ]);
      return names.map((name, at) => [String(name), values[at]]);
    },
    get: (name) => database.get(STORE, name),
    async change(name, change, others = new Map()) {
      // On the disk before it is said to be kept: a card may be the only copy of a job.
      const transaction = database.transaction(STORE, 'readwrite', { durability: 'strict' });
      await settle(transaction, async () => {
        const next = change(await transaction.store.get(name));
        for (const [each, value] of [[name, next] as const, ...others]) {
          if (value === undefined) await transaction.store.delete(each);
          else await transaction.store.put(value, each);
        }
      });
    },
  };
}

/** All names that start so: a name continues with letters and digits, which sort before the last of all characters. */
export function rangeOf(start: DatabaseStart): IDBKeyRange {
  return IDBKeyRange.bound(start, `${start}\uffff`);
}

function never(milliseconds: number): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new Error('The database does not open')), milliseconds);
  });
}
