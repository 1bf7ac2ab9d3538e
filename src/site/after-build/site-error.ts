/** A fault in the built site, told as: page, what stands there, what would be right. */

export interface SiteFault {
  page: string;
  /** As it stands in the page. */
  found: string;
  message: string;
}

/** Stops the build with every fault in one text; the same fault on many pages is told once. */
export class SiteError extends Error {
  constructor(faults: readonly SiteFault[]) {
    const told = new Map<string, string[]>();
    for (const { page, found, message } of faults) {
      const text = `  ${found}\n  ${message}\n`;
      told.set(text, [...(told.get(text) ?? []), page]);
    }
    const texts = [...told].map(([text, pages]) => `${placeOf(pages)}\n${text}`);
    super(`${texts.join('\n')}\n${count(told.size, 'fault')}; the site is not finished.`);
    this.name = 'SiteError';
  }
}

function placeOf([first = '', ...others]: string[]): string {
  return others.length === 0 ? first : `${first} and ${count(others.length, 'more page')}`;
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? '' : 's'}`;
}
