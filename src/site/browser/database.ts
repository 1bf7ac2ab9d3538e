/** What is true of the database whoever uses it. */
import type { IDBPDatabase } from 'idb';

export const STORE = 'kept';

export type Database = IDBPDatabase<unknown>;

/** Does the work and waits until the transaction is over. @throws what went wrong; then nothing of the work is kept */
export async function settle(
  transaction: { readonly done: Promise<void>; abort(): void },
  work: () => Promise<void>,
): Promise<void> {
  try {
    await work();
  } catch (error) {
    transaction.done.catch(() => undefined);
    try {
      transaction.abort();
    } catch {
      // It has been given up already.
    }
    throw error;
  }
  await transaction.done;
}
