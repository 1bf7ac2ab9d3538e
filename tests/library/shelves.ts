/** The sound shelf, and faulty ones made of it by replacing or adding files. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { RawFile, UnreadableReason } from '../../src/library/source-file.ts';

export const FAULTY = join(import.meta.dirname, 'faulty');

/** What a faulty shelf's folder holds besides its records. */
export const EXPECTED = 'expected.txt';

/** Lists paths of the sound shelf that this faulty one lacks. */
const WITHOUT = 'without.txt';

/** Lists what the disk would not hand over, a line each: why, and its path. */
const UNREAD = 'unread.txt';

export function soundShelf(): RawFile[] {
  return filesIn(join(import.meta.dirname, 'sound'));
}

export function faultyShelf(name: string): RawFile[] {
  const found = filesIn(join(FAULTY, name));
  const changed = found.filter(({ path }) => ![EXPECTED, WITHOUT, UNREAD].includes(path));
  const paths = new Set([...changed.map((file) => file.path), ...linesOf(found, WITHOUT)]);
  const unread = linesOf(found, UNREAD).map((line): RawFile => {
    const [why = '', path = ''] = line.split(' ');
    return { path, bytes: new Uint8Array(), unread: why as UnreadableReason };
  });
  return [...soundShelf().filter((file) => !paths.has(file.path)), ...changed, ...unread];
}

function linesOf(files: readonly RawFile[], path: string): string[] {
  const text = new TextDecoder().decode(files.find((file) => file.path === path)?.bytes);
  return text.split('\n').filter((line) => line !== '');
}

/** Names of the faulty shelves: the rule, or the rule, a point and what is special about it. */
export function faultyNames(): string[] {
  return readdirSync(FAULTY, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

function filesIn(folder: string): RawFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return { path: relative(folder, path).split(sep).join('/'), bytes: readFileSync(path) };
    });
}
