/**
 * The files this device holds, each under the hash of its content.
 *
 * A version of the site is a list of hashes. A new version adds what is not there yet and touches nothing that is, so the
 * version in use stays whole whatever happens to an update, and an update that was cut off goes on where it stopped.
 */

const TYPES: Record<string, string> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  json: 'application/json',
  svg: 'image/svg+xml',
  png: 'image/png',
  webp: 'image/webp',
  webmanifest: 'application/manifest+json',
};

export interface Store {
  read(hash: string): Promise<Response | undefined>;
  /** @throws DOMException QuotaExceededError when the device has no room */
  write(path: string, hash: string, content: BufferSource): Promise<void>;
  /** Hashes of all that is held. */
  held(): Promise<Set<string>>;
  remove(hash: string): Promise<void>;
}

/** @param scope address of the site's root; sites beside each other on one host do not share a store */
export async function openStore(scope: string): Promise<Store> {
  const cache = await caches.open(`headertank ${scope}`);
  const folder = `${scope}held/`;
  return {
    read: (hash) => cache.match(folder + hash),
    write: (path, hash, content) =>
      cache.put(folder + hash, new Response(content, { headers: { 'content-type': typeOf(path) } })),
    held: async () => new Set((await cache.keys()).map(({ url }) => url.slice(folder.length))),
    remove: async (hash) => {
      await cache.delete(folder + hash);
    },
  };
}

function typeOf(path: string): string {
  return TYPES[path.slice(path.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
}
