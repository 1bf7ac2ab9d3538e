/**
 * walks/<complaint>.js: the sections of walks/<complaint>.html for the live walk, as a script, since a folder opened
 * from file:// cannot fetch a page. Cut from the finished page, so each step is written once.
 */
import { basename } from 'node:path';
import { writeScript } from './islands.ts';
import type { Output } from './output.ts';

const WALK_PAGE = /^walks\/[a-z0-9-]+\.html$/;
const SECTION = /<section class="step"[^>]*? data-(step|spare|proof)="([^"]+)"[^>]*>[\s\S]*?<\/section>/g;

/**
 * @param page a finished walks page, its links relative
 * @param name its file name; links within the page get it, since the sections move to another page of the same depth
 * @returns section as markup, by what it is and whose: "step level", "spare code-read", "proof coolant-low"
 * @throws Error when a section holds another, which would be cut in two
 */
export function cutSections(page: string, name: string): Record<string, string> {
  const parts: Record<string, string> = {};
  for (const [section, kind, id] of page.matchAll(SECTION)) {
    if (section.lastIndexOf('<section') > 0)
      throw new Error(`${name}: the ${kind} ${id} has a section inside`);
    parts[`${kind} ${id}`] = section.replaceAll('href="#', `href="../walks/${name}#`);
  }
  return parts;
}

export function walkScript(page: string, name: string): string {
  return `headertank.receiveWalkParts(${JSON.stringify(cutSections(page, name))});\n`;
}

export async function writeWalkParts(output: Output): Promise<void> {
  for (const [address, page] of output.pages) {
    if (!WALK_PAGE.test(address)) continue;
    await writeScript(output, address.replace(/html$/, 'js'), walkScript(page, basename(address)));
  }
}
