/** A made shelf as the files of content/. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { stringify } from 'yaml';
import { KINDS } from '../../../../src/model/kinds.ts';
import type { MadeRecord } from './shelf.ts';

const SHOP = {
  name: 'Bench Workshop',
  invented: true,
  units: 'metric',
  currency: 'EUR',
  'labour-rate': 60,
  'review-every': 120,
  'sheet-footer': 'An invented workshop for measuring. Nobody is to work by this sheet.',
};

/** Path within the shelf -> YAML, the workshop's own file included. */
export function shelfFiles(records: readonly MadeRecord[]): Map<string, string> {
  const files = new Map([['shop.yaml', stringify(SHOP)]]);
  for (const { kind, id, data } of records) {
    const year = kind === 'note' ? '2026/' : '';
    files.set(`${KINDS[kind].folder}/${year}${id}.yaml`, stringify(data));
  }
  return files;
}

export async function writeFiles(folder: string, files: ReadonlyMap<string, string>): Promise<void> {
  for (const directory of new Set([...files.keys()].map((path) => dirname(join(folder, path)))))
    await mkdir(directory, { recursive: true });
  await Promise.all([...files].map(([path, text]) => writeFile(join(folder, path), text)));
}
