/**
 * The service worker: holds one whole version of the site and answers from it.
 *
 * A new version is a new worker. It fetches into the same store beside the version in use and takes over only when it is
 * whole and the reader says so, or when no page is open.
 */
import list from 'headertank-files';
import { answer, hashesByPath } from './answer.ts';
import { BadFile, installFiles } from './install.ts';
import type { FromPage, FromWorker } from './messages.ts';
import { openStore } from './store.ts';
import type { WorkerScope } from './worker-scope.ts';

const worker = globalThis as unknown as WorkerScope;
const scope = worker.registration.scope;
const paths = hashesByPath(list);
const store = openStore(scope);

worker.addEventListener('install', (event) => event.waitUntil(install()));
worker.addEventListener('activate', (event) => event.waitUntil(activate()));
worker.addEventListener('message', ({ data }: MessageEvent<FromPage>) => {
  if (data.kind === 'use-new-version') worker.skipWaiting();
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope)) return;
  event.respondWith(store.then((open) => answer(request, scope, paths, open)));
});

async function install(): Promise<void> {
  const of = list.files.length;
  let toldAt = 0;
  try {
    await installFiles(list, await store, scope, (done) => {
      if (done < of && Date.now() - toldAt < 200) return;
      toldAt = Date.now();
      tell({ kind: 'storing', done, of });
    });
  } catch (error) {
    await tell(reasonOf(error));
    throw error;
  }
  await tell({ kind: 'stored' });
}

/** Old files go, unless a newer version is being fetched: it may count on them. */
async function activate(): Promise<void> {
  const { installing, waiting } = worker.registration;
  if (!installing && !waiting) await removeOld();
  await worker.clients.claim();
}

async function removeOld(): Promise<void> {
  const open = await store;
  const wanted = new Set(paths.values());
  for (const hash of await open.held()) if (!wanted.has(hash)) await open.remove(hash);
}

function reasonOf(error: unknown): FromWorker {
  if (error instanceof BadFile) return { kind: 'not-stored', because: 'changed', file: error.path };
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  return { kind: 'not-stored', because: full ? 'no-room' : 'cut-off' };
}

async function tell(message: FromWorker): Promise<void> {
  for (const client of await worker.clients.matchAll({ includeUncontrolled: true }))
    client.postMessage(message);
}
