/** What a device keeps, and devices that keep nothing: their storage is full, or the browser forbids it. */
import type { Page } from 'playwright-core';

/** What lies under a name in the database; null if nothing does. */
export function keptInDatabase(page: Page, name: string): Promise<unknown> {
  return page.evaluate(
    (key) =>
      new Promise((resolve, reject) => {
        // A site in a folder has the folder in its name.
        const { pathname } = window.headertank.root;
        const opening = indexedDB.open(pathname === '/' ? 'headertank' : `headertank${pathname}`);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const done = (value: unknown) => {
            database.close();
            resolve(value ?? null);
          };
          if (!database.objectStoreNames.contains('kept')) return done(null);
          const asked = database.transaction('kept').objectStore('kept').get(key);
          asked.onsuccess = () => done(asked.result);
          asked.onerror = () => reject(asked.error);
        };
      }),
    name,
  );
}

/** Leaves no room for even a few letters more. The database of a real browser takes some more yet: it says so in its place. */
export async function fillStorage(page: Page): Promise<void> {
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    for (const size of [100_000, 1000, 10])
      try {
        for (let at = 0; ; at++) localStorage.setItem(`filler${size}-${at}`, 'x'.repeat(size));
      } catch {}
  });
}

/** From the next page on. */
export async function forbidStorage(page: Page): Promise<void> {
  await page.addInitScript(() => {
    for (const name of ['localStorage', 'indexedDB'])
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('blocked', 'SecurityError');
        },
      });
  });
}
