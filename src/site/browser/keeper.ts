/** Where the device keeps what may not be lost, whatever it is. */
import type { DatabaseName, DatabaseStart } from './storage-names.ts';

export interface Keeper {
  readonly kind: 'database' | 'small storage';
  /** Everything under names that start so. What cannot be read as JSON comes as the text it is. */
  all(start: DatabaseStart): Promise<[name: string, value: unknown][]>;
  get(name: DatabaseName): Promise<unknown>;
  /**
   * Reads, changes and writes in one transaction: another window comes before it or after it, never between.
   * @param change what is kept, or undefined -> what is to be kept; undefined takes it away
   * @param others more to be kept in the same transaction, or, undefined, to be taken away
   * @throws when the device does not take it; then it has kept nothing of it
   */
  change(
    name: DatabaseName,
    change: (now: unknown) => unknown,
    others?: ReadonlyMap<DatabaseName, unknown>,
  ): Promise<void>;
}
