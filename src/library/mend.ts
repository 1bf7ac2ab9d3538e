/** What `--mend` does: the mends the findings carry, and nothing else. */
import { readFile, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { applyEdits } from './apply-edits.ts';
import type { Edit, Finding } from './finding.ts';

/**
 * Writes the mends of a check's findings into the files.
 * Only for findings of a check made just now: a file changed since then would be mended in the wrong place.
 * @returns how many findings were mended
 */
export async function mendFiles(findings: readonly Finding[]): Promise<number> {
  const byFile = new Map<string, Edit[]>();
  let count = 0;
  for (const { place, mend } of findings) {
    if (!mend) continue;
    count += 1;
    byFile.set(place.file, [...(byFile.get(place.file) ?? []), ...mend]);
  }
  for (const [file, edits] of byFile) {
    const path = resolve(file);
    // The byte-order mark counts as the first character, as it did in the check.
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(path));
    await writeFile(path, applyEdits(text, edits));
  }
  return count;
}
