/** walks/<complaint>.js: the sections of walks/<complaint>.html as a script, since a folder opened from file:// cannot fetch a page. */
import { basename } from 'node:path';
import { cutSections } from '../walk/cut-sections.ts';
import { writeScript } from './islands.ts';
import type { Output } from './output.ts';

const WALK_PAGE = /^walks\/[a-z0-9-]+\.html$/;

/**
 * The steps of a walk as a script that hands them to the page.
 * @param name file name of the page
 */
export function walkScript(page: string, name: string): string {
  return `headertank.receiveWalkParts(${JSON.stringify(cutSections(page, name))});\n`;
}

/** Writes such a script beside each page of a walk, for where pages cannot be fetched. */
export async function writeWalkParts(output: Output): Promise<void> {
  for (const [address, page] of output.pages) {
    if (!WALK_PAGE.test(address)) continue;
    await writeScript(output, address.replace(/html$/, 'js'), walkScript(page, basename(address)));
  }
}
