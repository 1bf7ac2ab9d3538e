/** From Astro's output to the finished site: one folder that works hosted, installed and from file:// alike. */
import { join } from 'node:path';
import { writeIslands } from './islands.ts';
import { writeLostPage } from './lost-page.ts';
import { writeOffline } from './offline.ts';
import { type Output, readOutput, writePages } from './output.ts';
import { fitStyles } from './page-styles.ts';
import { policies } from './policy.ts';
import { relativeLinks } from './relative-links.ts';
import { applyEdits, scan } from './scanned.ts';
import { indexPages } from './search-index.ts';
import { dropSearchTerms, writeSearch } from './search-scripts.ts';
import { shortenPaths } from './short-paths.ts';
import { SiteError } from './site-error.ts';
import { collectWords } from './vocabulary.ts';
import { writeWalkParts } from './walk-parts.ts';

export interface FinishedSite {
  pages: number;
  files: number;
  /** The version the service worker knows this site by. */
  version: string;
}

/**
 * @param folder Astro's output, changed in place
 * @param source src/site
 * @throws SiteError with every link to nowhere and everything the policy would switch off
 */
export async function finishSite(folder: string, source: string): Promise<FinishedSite> {
  const output = await readOutput(folder);
  const words = collectWords(output);
  // Indexing runs in a process of its own, beside all the rest, so it begins first and is waited for last.
  const [index] = await Promise.all([indexPages(new Map(output.pages)), finishPages(output, source)]);
  await writeSearch(output, source, { ...index, words });
  const { files, version } = await writeOffline(output, source);
  return { pages: output.pages.size, files: files.length, version };
}

/** Everything that a page holds, and the scripts it asks for. */
async function finishPages(output: Output, source: string): Promise<void> {
  const scanned = scan(output);
  await writeIslands(output, scanned, join(source, 'islands'));
  // The policy is made of the styles as they are then.
  const outcomes = [
    fitStyles(output, scanned),
    shortenPaths(scanned),
    relativeLinks(output, scanned),
    policies(scanned),
  ];
  const faults = outcomes.flatMap((outcome) => outcome.faults);
  if (faults.length > 0) throw new SiteError(faults);
  applyEdits(output, outcomes);
  await writeLostPage(output, source);
  dropSearchTerms(output);
  writePages(output);
  await writeWalkParts(output);
}
