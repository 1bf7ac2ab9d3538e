/**
 * What lies in the small storage goes into the database: once from the time before there was one, and again after a time in
 * which the database did not open. Stopped at any point, each thing is in one of the two places or in both, never in none.
 */
import { type Database, STORE, settle } from './database.ts';
import { newId } from './ids.ts';
import { readValue } from './keeper-small.ts';

const MOVES = ['job.', 'note.'] as const;

/**
 * @param of what the names start with in the small storage
 * @throws when the database does not take it; then all of it lies where it lay
 */
export async function carryOver(database: Database, of: string): Promise<void> {
  const found = Object.keys(localStorage).flatMap((key) => {
    const name = key.startsWith(of) ? key.slice(of.length) : '';
    const text = MOVES.some((start) => name.startsWith(start)) ? localStorage.getItem(key) : null;
    return text === null ? [] : [{ key, name, text }];
  });
  await putInto(
    database,
    found.map(({ name, text }) => ({ name, value: readValue(text) })),
  );
  // Only what is in the database by now, and only as it was read: a window with an older site may have written since.
  for (const { key, text } of found) if (localStorage.getItem(key) === text) localStorage.removeItem(key);
}

/** Puts things into the database in one transaction; what differs from what is there stands beside it under a new name. */
export async function putInto(
  database: Database,
  found: readonly { name: string; value: unknown }[],
): Promise<void> {
  if (found.length === 0) return;
  const transaction = database.transaction(STORE, 'readwrite', { durability: 'strict' });
  await settle(transaction, async () => {
    for (const { name, value } of found) {
      const place = placeFor(name, value, await transaction.store.get(name));
      if (place) await transaction.store.put(place.value, place.name);
    }
  });
}

/** Where a thing goes: what is there already under its name stays, and one that differs stands beside it under a new one. */
function placeFor(
  name: string,
  value: unknown,
  there: unknown,
): { name: string; value: unknown } | undefined {
  if (there === undefined) return { name, value };
  if (JSON.stringify(there) === JSON.stringify(value)) return undefined;
  const id = newId(name.split('.')[0] ?? '');
  const start = name.slice(0, name.indexOf('.') + 1);
  const own = typeof value === 'object' && value !== null ? { ...value, id } : value;
  return { name: start + id, value: own };
}
