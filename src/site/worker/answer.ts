/** What a page or script is answered with: the held file of this version, else the network. */
import type { FileList } from './file-list.ts';
import { hashOf } from './hash.ts';
import type { Store } from './store.ts';

/** Finds the listed file behind an address: itself, a folder's index, a page named without its ending. */
export function listedPath(
  address: string,
  scope: string,
  paths: ReadonlyMap<string, string>,
): string | undefined {
  const path = decoded(address.slice(scope.length).replace(/[?#].*$/, ''));
  const candidates =
    path === '' || path.endsWith('/') ? [`${path}index.html`] : [path, `${path}.html`, `${path}/index.html`];
  return candidates.find((candidate) => paths.has(candidate));
}

/** An address with a stray percent sign is no listed one. */
function decoded(path: string): string {
  try {
    return decodeURI(path);
  } catch {
    return path;
  }
}

/** Hash of each file of a version, by its path. */
export function hashesByPath(list: FileList): Map<string, string> {
  return new Map(list.files.map(({ path, hash }) => [path, hash]));
}

/**
 * A file that should be held and is not (the browser may have thrown it away) is asked of the network and held again. A page
 * that is not of this version is asked of the network too; without one, the page that says so is shown.
 */
export async function answer(
  request: Request,
  scope: string,
  paths: ReadonlyMap<string, string>,
  store: Store,
): Promise<Response> {
  const path = listedPath(request.url, scope, paths);
  const hash = path === undefined ? undefined : paths.get(path);
  const held = hash === undefined ? undefined : await store.read(hash);
  if (held) return held;
  try {
    const fetched = await fetch(request);
    if (path !== undefined && hash !== undefined && fetched.ok)
      await holdAgain(path, hash, fetched.clone(), store);
    return fetched;
  } catch (error) {
    // Sent on rather than answered with, so that the page's relative addresses hold.
    if (request.mode !== 'navigate' || !paths.has('404.html')) throw error;
    return Response.redirect(new URL('404.html', scope).href);
  }
}

/** Only the very file of this version; a device without room goes on unheld. */
async function holdAgain(path: string, hash: string, fetched: Response, store: Store): Promise<void> {
  const content = new Uint8Array(await fetched.arrayBuffer());
  if ((await hashOf(content)) === hash) await store.write(path, hash, content).catch(() => undefined);
}
