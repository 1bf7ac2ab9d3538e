/** Devices that keep nothing: their storage is full, or the browser forbids it. */
import type { Page } from 'playwright-core';

/** Leaves no room for even a few letters more. */
export async function fillStorage(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const size of [100_000, 1000, 10])
      try {
        for (let at = 0; ; at++) localStorage.setItem(`filler${size}-${at}`, 'x'.repeat(size));
      } catch {}
  });
}

/** From the next page on. */
export async function forbidStorage(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
}
