/** The service worker with the list of every file of this version, and the packs a first install fetches. */
import { hash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { FileList, ListedFile, Pack } from '../worker/file-list.ts';
import { bundleScript } from './bundle-script.ts';
import type { Output } from './output.ts';

/** Bytes before compression, at most about: what is fetched again when a connection breaks. */
const PACK_SIZE = 2 ** 21;
/**
 * Only a stick needs them, and a stick has no worker; the worker itself is kept by the browser; the whole shelf as one file is
 * for other programs, and the pages hold all that is in it.
 */
const NOT_HELD = /^(?:scripts\/search-files\.js|walks\/.*\.js|worker\.js|shelf(?:\.schema)?\.json)$/;

/** @param source src/site, where the worker is */
export async function writeOffline(output: Output, source: string): Promise<FileList> {
  await rm(join(output.folder, 'offline'), { recursive: true, force: true });
  await mkdir(join(output.folder, 'offline'), { recursive: true });
  const paths = [...output.pages.keys(), ...output.others].filter(isHeld).sort();
  const list: FileList = { version: '', files: [], packs: [] };
  const packs: Promise<Pack>[] = [];
  let open: { files: ListedFile[]; contents: Buffer[]; size: number } = { files: [], contents: [], size: 0 };
  const close = () => {
    if (open.files.length > 0) packs.push(writePack(output.folder, open.files, open.contents));
    open = { files: [], contents: [], size: 0 };
  };
  const held = paths.map((path) => {
    const page = output.pages.get(path);
    return {
      path,
      content: page === undefined ? readFileSync(join(output.folder, path)) : Buffer.from(page),
    };
  });
  const total = held.reduce((sum, { content }) => sum + content.length, 0);
  // Alike in size, so that no rest of a few files is left over.
  const enough = total / Math.ceil(total / PACK_SIZE);
  for (const { path, content } of held) {
    const file = { path, hash: hashOf(content), size: content.length };
    list.files.push(file);
    open.files.push(file);
    open.contents.push(content);
    open.size += file.size;
    if (open.size >= enough) close();
  }
  close();
  list.packs = await Promise.all(packs);
  list.version = hashOf(JSON.stringify(list.files));
  await writeFile(join(output.folder, 'worker.js'), await bundleWorker(source, list));
  return list;
}

/** Packs of a run before are gone by now. */
function isHeld(path: string): boolean {
  return !NOT_HELD.test(path) && !path.startsWith('offline/');
}

/** Packed beside the work that goes on here. */
async function writePack(folder: string, files: ListedFile[], contents: Buffer[]): Promise<Pack> {
  const path = `offline/${hashOf(files.map(({ hash }) => hash).join())}.pack`;
  await writeFile(join(folder, path), await promisify(gzip)(Buffer.concat(contents), { level: 9 }));
  return { path, files: files.length };
}

function bundleWorker(source: string, list: FileList): Promise<string> {
  return bundleScript(join(source, 'worker/worker.ts'), {
    minify: true,
    modules: { 'headertank-files': { text: JSON.stringify(list), loader: 'json' } },
  });
}

function hashOf(content: Buffer | string): string {
  return hash('sha256', content, 'buffer').subarray(0, 16).toString('base64url');
}
