/** Fetches what a version needs and the device does not hold yet, and lets nothing in whose content is not the listed one. */
import type { FileList, ListedFile, Pack } from './file-list.ts';
import { hashOf } from './hash.ts';
import type { Store } from './store.ts';

/** With fewer files missing from a pack than this they are fetched one by one. */
const WORTH_A_PACK = 5;
const AT_ONCE = 8;

/** The server has another content than listed, or none. */
export class BadFile extends Error {
  readonly path: string;
  constructor(path: string, reason: string) {
    super(`${path}: ${reason}`);
    this.path = path;
  }
}

type Keep = (file: ListedFile, content: Uint8Array<ArrayBuffer>) => Promise<void>;

/**
 * @param scope address of the site's root
 * @param told called with the number of files held so far
 * @throws BadFile when the server has another content than listed, or none
 * @throws TypeError when the connection is lost
 * @throws DOMException QuotaExceededError when the device has no room
 */
export async function installFiles(
  list: FileList,
  store: Store,
  scope: string,
  told: (held: number) => void,
): Promise<void> {
  const held = await store.held();
  let count = list.files.filter(({ hash }) => held.has(hash)).length;
  const keep: Keep = async (file, content) => {
    if (held.has(file.hash)) return;
    if ((await hashOf(content)) !== file.hash)
      throw new BadFile(file.path, 'is not the file this version lists');
    await store.write(file.path, file.hash, content);
    held.add(file.hash);
    count += 1;
    told(count);
  };
  told(count);
  const missing = (files: readonly ListedFile[]) => files.filter(({ hash }) => !held.has(hash));
  for (const { pack, files } of packsOf(list)) {
    if (missing(files).length >= WORTH_A_PACK) await installPack(pack, files, scope, keep);
    await inTurns(missing(files), async (file) => keep(file, await fetchBytes(file.path, scope)));
  }
  const stored = await store.held();
  const lost = list.files.find(({ hash }) => !stored.has(hash));
  if (lost) throw new BadFile(lost.path, 'was thrown away while the rest was fetched');
}

function packsOf(list: FileList): { pack: Pack; files: ListedFile[] }[] {
  let from = 0;
  return list.packs.map((pack) => {
    const files = list.files.slice(from, from + pack.files);
    from += pack.files;
    return { pack, files };
  });
}

/** A pack that cannot be used is no loss: its files are then fetched one by one. */
async function installPack(
  pack: Pack,
  files: readonly ListedFile[],
  scope: string,
  keep: Keep,
): Promise<void> {
  const content = await unpack(pack, scope);
  if (content?.length !== files.reduce((sum, { size }) => sum + size, 0)) return;
  let from = 0;
  for (const file of files) {
    try {
      await keep(file, content.slice(from, from + file.size));
    } catch (error) {
      // Right in length and wrong in content: the rest of it is not believed either.
      if (error instanceof BadFile) return;
      throw error;
    }
    from += file.size;
  }
}

async function unpack(pack: Pack, scope: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (!('DecompressionStream' in globalThis)) return undefined;
  try {
    const packed = await fetchBytes(pack.path, scope);
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  } catch {
    return undefined;
  }
}

async function fetchBytes(path: string, scope: string): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await fetch(new URL(path, scope), { cache: 'no-cache' });
  if (!answer.ok) throw new BadFile(path, `the server answers ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** After a failure nothing more is begun, and what is on its way is waited for: it is kept for the next try. */
async function inTurns<T>(items: readonly T[], work: (item: T) => Promise<void>): Promise<void> {
  const queue = [...items];
  const lane = async () => {
    for (let item = queue.shift(); item !== undefined; item = queue.shift()) {
      try {
        await work(item);
      } catch (error) {
        queue.length = 0;
        throw error;
      }
    }
  };
  const lanes = await Promise.allSettled(Array.from({ length: AT_ONCE }, lane));
  for (const each of lanes) if (each.status === 'rejected') throw each.reason;
}
