/** A fault in the built site, told as: page, what stands there, what would be right. */

export interface SiteFault {
  page: string;
  /** As it stands in the page. */
  found: string;
  message: string;
}

/** Stops the build with every fault in one text. */
export class SiteError extends Error {
  constructor(faults: readonly SiteFault[]) {
    const pages = new Set(faults.map((fault) => fault.page)).size;
    const told = faults.map(({ page, found, message }) => `${page}\n  ${found}\n  ${message}\n`);
    super(
      `${told.join('\n')}\n${count(faults.length, 'fault')} on ${count(pages, 'page')}; the site is not finished.`,
    );
    this.name = 'SiteError';
  }
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? '' : 's'}`;
}
