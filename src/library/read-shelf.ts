/** The shelf from the disk. */
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { checkFiles } from './check-files.ts';
import type { Finding } from './finding.ts';
import { openMemory } from './memory.ts';
import type { Shelf } from './shelf.ts';
import type { RawFile } from './source-file.ts';

/**
 * Reads, links and checks the shelf in a folder.
 * @returns the records that are right, every finding, and how many record files were looked at
 * @throws when the folder cannot be read
 */
export async function readShelf(
  folder: string,
): Promise<{ shelf: Shelf; findings: Finding[]; count: number }> {
  const memory = await openMemory(resolve(folder));
  const { shelf, findings, count } = checkFiles(shownName(folder), await filesOf(folder), { memory });
  await memory.keep();
  return { shelf, findings, count };
}

/** How a folder is shown to people: from where they stand, with forward slashes. */
export function shownName(folder: string): string {
  const shown = relative(process.cwd(), resolve(folder));
  return (shown.startsWith('..') ? resolve(folder) : shown).split(sep).join('/');
}

/** Every file under a folder but those whose names begin with a dot. */
export async function filesOf(folder: string): Promise<RawFile[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => join(entry.parentPath, entry.name));
  return Promise.all(
    paths.map(async (path) => ({
      path: relative(folder, path).split(sep).join('/'),
      bytes: await readFile(path),
    })),
  );
}
