/** Answering a question of the walk as a reader does, who does not answer again before the next question is there. */
import type { Locator, Page } from 'playwright-core';

/** @param row the answer's row; only one of the question that is asked now will do */
export async function giveAnswer(page: Page, row: Locator): Promise<void> {
  await page.locator('ht-walk[data-live]').waitFor();
  const key = await row.getAttribute('data-key');
  await row.click();
  // The other questions come with the first answer; until then the answered one stays in sight.
  await page.locator('ht-walk:not([aria-busy])').waitFor();
  // The address is written after the next question is on the screen.
  await page.waitForFunction((given) => new URLSearchParams(location.hash.slice(1)).has(given), key ?? '');
}

/** A row of the question that is asked now. */
export function answerRow(page: Page, { key, value }: { key: string; value: string }): Locator {
  return page.locator(`.step[data-now] .answer[data-key="${key}"][data-value="${value}"]`).first();
}
