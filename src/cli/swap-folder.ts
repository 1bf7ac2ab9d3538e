/** A folder is replaced as a whole: until the new one is complete, the old one stays where it is. */
import { existsSync, lstatSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Refusal } from './command.ts';

/** Where the next version is made, beside the folder so that a rename is enough. */
export function nextFolder(folder: string): string {
  return beside(folder, 'next');
}

/**
 * Clears up after a run that was cut off: a half-made next version goes, and a version that was set aside comes back.
 * @throws Refusal when something other than a folder lies where the site belongs
 */
export function prepareSwap(folder: string): void {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (found && !found.isDirectory())
    throw new Refusal(
      `${folder} is ${found.isSymbolicLink() ? 'a link' : 'a file'}; the site needs a folder of its own there. Move it away and build again.`,
    );
  const before = beside(folder, 'before');
  if (!found && existsSync(before)) renameSync(before, folder);
  rmSync(before, { recursive: true, force: true });
  rmSync(nextFolder(folder), { recursive: true, force: true });
}

/** Puts the complete next version in the folder's place: two renames, then what was there is removed. */
export function swapIn(folder: string): void {
  const before = beside(folder, 'before');
  if (existsSync(folder)) renameSync(folder, before);
  renameSync(nextFolder(folder), folder);
  rmSync(before, { recursive: true, force: true });
}

function beside(folder: string, which: 'next' | 'before'): string {
  return join(dirname(folder), `.${basename(folder)}-${which}`);
}
