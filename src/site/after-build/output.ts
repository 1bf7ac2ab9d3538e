/** The built folder in memory: its pages as text, the names of everything else. */
import { readFileSync, writeFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

export interface Output {
  folder: string;
  /** Address from the root of the site, without a leading stroke -> page. */
  pages: Map<string, string>;
  /** Every other file, same form of address. */
  others: Set<string>;
}

/** Reads what Astro has built: pages with their text, all else by name. */
export async function readOutput(folder: string): Promise<Output> {
  const output: Output = { folder, pages: new Map(), others: new Set() };
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
  for (const name of names) {
    if (name.endsWith('.html')) output.pages.set(name, readFileSync(join(folder, name), 'utf8'));
    else output.others.add(name);
  }
  return output;
}

/** Thousands of small files are read and written soonest without waiting for each. */
export function writePages(output: Output): void {
  for (const [name, page] of output.pages) writeFileSync(join(output.folder, name), page);
}
