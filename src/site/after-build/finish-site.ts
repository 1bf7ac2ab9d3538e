/** From Astro's output to the finished site: one folder that works hosted, installed and from file:// alike. */
import { NOT_FOUND, notFoundScript } from './not-found.ts';
import { writeOffline } from './offline.ts';
import { type Output, readOutput, writePages } from './output.ts';
import { policies } from './policy.ts';
import { relativeLinks } from './relative-links.ts';
import { applyEdits, type Scanned, scan } from './scanned.ts';
import { writeScripts } from './scripts.ts';
import { indexPages } from './search-index.ts';
import { dropSearchTerms, writeSearch } from './search-scripts.ts';
import { SiteError } from './site-error.ts';
import { collectWords } from './vocabulary.ts';
import { writeWalkSections } from './walk-sections.ts';

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
  const scanned = scan(output);
  const words = collectWords(scanned);
  // Indexing runs in a process of its own, beside all the rest, so it begins first and is waited for last.
  const [index] = await Promise.all([indexPages(scanned), finishPages(output, scanned, source)]);
  await writeSearch(output, source, { ...index, words });
  const { files, version } = await writeOffline(output, source);
  return { pages: output.pages.size, files: files.length, version };
}

/** The scripts the pages ask for, then everything that the pages hold. */
async function finishPages(output: Output, scanned: Scanned, source: string): Promise<void> {
  const [ownScript] = await Promise.all([notFoundScript(source), writeScripts(output, source)]);
  const outcomes = [
    relativeLinks(output, scanned),
    policies(scanned, new Map([[NOT_FOUND, ownScript]])),
    dropSearchTerms(scanned),
  ];
  const faults = outcomes.flatMap((outcome) => outcome.faults);
  if (faults.length > 0) throw new SiteError(faults);
  applyEdits(output, outcomes);
  writePages(output);
  await writeWalkSections(output);
}
