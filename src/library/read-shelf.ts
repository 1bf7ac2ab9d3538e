/** The shelf from the disk. */
import { type Dirent, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { checkFiles } from './check-files.ts';
import type { Finding } from './finding.ts';
import { openMemory } from './memory.ts';
import type { Shelf } from './shelf.ts';
import { LARGEST_FILE } from './size-limits.ts';
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
  const { shelf, findings, count } = withPlainEnvironment(() =>
    checkFiles(shownName(folder), filesOf(folder), { memory }),
  );
  await memory.keep();
  return { shelf, findings, count };
}

/**
 * The yaml package looks into the environment at every token, whether to log it, and each look asks the system. A copy
 * answers at once: a tenth of the reading.
 */
function withPlainEnvironment<T>(work: () => T): T {
  const { env } = process;
  process.env = { ...env };
  try {
    return work();
  } finally {
    process.env = env;
  }
}

/** How a folder is shown to people: from where they stand, with forward slashes. */
export function shownName(folder: string): string {
  const shown = relative(process.cwd(), resolve(folder));
  return (shown.startsWith('..') ? resolve(folder) : shown).split(sep).join('/');
}

/**
 * Every file under a folder but what begins with a dot. Links are never followed: a shelf is what lies in its folder, and
 * a link could lead anywhere on the machine or round in a circle. Read one after the other: a file that is opened through
 * the pool of threads costs three times as much as its few kilobytes.
 */
export function filesOf(folder: string): RawFile[] {
  const files: RawFile[] = [];
  const open = [folder];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const entry of readdirSync(at, { withFileTypes: true })) {
      if (entry.name.startsWith('.')) continue;
      const path = join(at, entry.name);
      if (entry.isDirectory()) open.push(path);
      else files.push({ path: relative(folder, path).split(sep).join('/'), ...contentOf(path, entry) });
    }
  }
  return files;
}

const NOTHING = new Uint8Array();

function contentOf(path: string, entry: Dirent): Pick<RawFile, 'bytes' | 'unread'> {
  if (entry.isSymbolicLink()) return { bytes: NOTHING, unread: 'link' };
  if (!entry.isFile()) return { bytes: NOTHING, unread: 'no-file' };
  if (statSync(path).size > LARGEST_FILE) return { bytes: NOTHING, unread: 'too-large' };
  return { bytes: readFileSync(path) };
}
