/** The small storage as a keeper, for a browser that has no database or does not open it. */
import type { Keeper } from './keeper.ts';
import { siteName } from './site-name.ts';
import { keptNames, prefix, storedText } from './storage.ts';

export const smallStorage: Keeper = {
  kind: 'small storage',
  async all(start) {
    return keptNames(start).flatMap((name) => {
      const text = storedText(name);
      return text === undefined ? [] : [[name, readValue(text)] satisfies [string, unknown]];
    });
  },
  async get(name) {
    return readValue(storedText(name));
  },
  change: (name, change, others = new Map()) =>
    alone(() => {
      const before = storedText(name);
      write(name, change(readValue(before)));
      try {
        for (const [each, value] of others) write(each, value);
      } catch (error) {
        // Storage has no transactions: what was written before the one that failed is put back.
        writeText(name, before);
        throw error;
      }
    }),
};

/** Windows take turns where the browser can make them; everywhere what is read is written back at once. */
async function alone(work: () => void): Promise<void> {
  if (navigator.locks) await navigator.locks.request(siteName(), async () => work());
  else work();
}

function write(name: string, value: unknown): void {
  if (value instanceof Blob || (typeof value === 'object' && value !== null && 'blob' in value))
    throw new DOMException('Pictures need the database', 'QuotaExceededError');
  writeText(name, value === undefined ? undefined : JSON.stringify(value));
}

function writeText(name: string, text: string | undefined): void {
  if (text === undefined) localStorage.removeItem(prefix() + name);
  else localStorage.setItem(prefix() + name, text);
}

/** What a kept text says; one that is damaged is the text itself, so that it can be rescued. */
export function readValue(text: string | undefined): unknown {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}
