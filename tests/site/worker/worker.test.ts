/** The two halves of the service worker, on a store in memory and a server that misbehaves on purpose. */
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { answer, hashesByPath, listedPath } from '../../../src/site/worker/answer.ts';
import type { FileList } from '../../../src/site/worker/file-list.ts';
import { hashOf } from '../../../src/site/worker/hash.ts';
import { BadFile, installFiles } from '../../../src/site/worker/install.ts';
import type { Store } from '../../../src/site/worker/store.ts';

const SCOPE = 'https://shop.example/shelf/';
const NAMES = ['404.html', 'a.html', 'b.html', 'c.html', 'd.html', 'symptoms/index.html', 'x.html'];

const bytes = (text: string) => new TextEncoder().encode(text) as Uint8Array<ArrayBuffer>;

let served: Map<string, Uint8Array<ArrayBuffer>>;
let asked: string[];
let list: FileList;

beforeEach(async () => {
  served = new Map(NAMES.map((name) => [name, bytes(`content of ${name}`)]));
  asked = [];
  list = { version: 'v', files: [], packs: [{ path: 'offline/1.pack', files: NAMES.length }] };
  for (const name of NAMES) {
    const content = served.get(name) ?? bytes('');
    list.files.push({ path: name, hash: await hashOf(content), size: content.length });
  }
  served.set(
    'offline/1.pack',
    new Uint8Array(gzipSync(Buffer.concat(NAMES.map((name) => served.get(name) ?? bytes(''))))),
  );
  vi.stubGlobal('fetch', async (request: URL | Request) => {
    const path = (request instanceof Request ? request.url : request.href).slice(SCOPE.length);
    asked.push(path);
    const content = served.get(path);
    return content ? new Response(content) : new Response(null, { status: 404 });
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

function memory(): Store & { files: Map<string, string> } {
  const files = new Map<string, string>();
  return {
    files,
    read: async (hash) => (files.has(hash) ? new Response(files.get(hash)) : undefined),
    write: async (_path, hash, content) => {
      files.set(hash, new TextDecoder().decode(content));
    },
    held: async () => new Set(files.keys()),
    remove: async (hash) => {
      files.delete(hash);
    },
  };
}

const install = (store: Store) => installFiles(list, store, SCOPE, () => undefined);

describe('installing', () => {
  test('a first install asks for packs alone', async () => {
    const store = memory();
    await install(store);
    expect(asked).toEqual(['offline/1.pack']);
    expect([...store.files.values()].sort()).toEqual(NAMES.map((name) => `content of ${name}`).sort());
  });

  test('each pack holds the files that follow those of the pack before', async () => {
    const more = Array.from({ length: 5 }, (_, at) => `more/${at}.html`);
    for (const path of more) {
      const content = bytes(`content of ${path}`);
      list.files.push({ path, hash: await hashOf(content), size: content.length });
    }
    served.set(
      'offline/2.pack',
      new Uint8Array(gzipSync(Buffer.concat(more.map((path) => bytes(`content of ${path}`))))),
    );
    list.packs.push({ path: 'offline/2.pack', files: more.length });
    const store = memory();
    await install(store);
    expect(asked).toEqual(['offline/1.pack', 'offline/2.pack']);
    expect(store.files.size).toBe(NAMES.length + more.length);
  });

  test('a pack with one wrong byte is no loss: what is not the listed file is fetched by itself', async () => {
    const whole = Buffer.concat(NAMES.map((name) => served.get(name) ?? bytes('')));
    whole[whole.length - 1] = (whole.at(-1) ?? 0) ^ 1;
    served.set('offline/1.pack', new Uint8Array(gzipSync(whole)));
    const store = memory();
    await install(store);
    expect([...store.files.values()].sort()).toEqual(NAMES.map((name) => `content of ${name}`).sort());
    expect(asked).toEqual(['offline/1.pack', 'x.html']);
  });

  test('an update asks for the files that changed, one by one when they are few', async () => {
    const store = memory();
    await install(store);
    asked = [];
    const changed = bytes('new');
    served.set('b.html', changed);
    list.files[2] = { path: 'b.html', hash: await hashOf(changed), size: changed.length };
    await install(store);
    expect(asked).toEqual(['b.html']);
  });

  test.each([
    ['is missing', () => served.delete('offline/1.pack')],
    [
      'is cut short',
      () => served.set('offline/1.pack', (served.get('offline/1.pack') ?? bytes('')).slice(0, 20)),
    ],
    ['is something else', () => served.set('offline/1.pack', bytes('<!doctype html>'))],
  ])('a pack that %s is made up for by the files', async (_what, spoil) => {
    spoil();
    const store = memory();
    await install(store);
    expect(store.files.size).toBe(NAMES.length);
    expect(asked.slice(1).sort()).toEqual([...NAMES].sort());
  });

  test('a file that is not the listed one is refused by name, and what was good is kept for the next try', async () => {
    served.delete('offline/1.pack');
    served.set('d.html', bytes('half of'));
    const store = memory();
    await expect(install(store)).rejects.toThrow(BadFile);
    await expect(install(store)).rejects.toThrow('d.html: is not the file this version lists');
    served.set('d.html', bytes('content of d.html'));
    asked = [];
    await install(store);
    expect(asked).toEqual(['d.html']);
  });

  test('a lost connection and a full device are told as they are', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    await expect(install(memory())).rejects.toThrow(TypeError);
    vi.unstubAllGlobals();
    vi.stubGlobal(
      'fetch',
      async (address: URL) => new Response(served.get(address.href.slice(SCOPE.length)) ?? null),
    );
    const full = { ...memory(), write: () => Promise.reject(new DOMException('', 'QuotaExceededError')) };
    await expect(install(full)).rejects.toMatchObject({ name: 'QuotaExceededError' });
  });

  test('files that vanish while the rest is fetched are noticed', async () => {
    const forgetful = { ...memory(), held: async () => new Set<string>() };
    await expect(install(forgetful)).rejects.toThrow('was thrown away');
  });
});

describe('answering', () => {
  test.each([
    ['', undefined],
    ['a.html', 'a.html'],
    ['a.html?q=1#top', 'a.html'],
    ['a', 'a.html'],
    ['symptoms/', 'symptoms/index.html'],
    ['symptoms', 'symptoms/index.html'],
    ['%E0%A4%A', undefined],
    ['nothing.html', undefined],
  ])('%s is %s', (address, path) => {
    expect(listedPath(SCOPE + address, SCOPE, hashesByPath(list))).toBe(path);
  });

  const get = (path: string, store: Store) =>
    answer(new Request(SCOPE + path), SCOPE, hashesByPath(list), store);

  test('comes from the store without asking', async () => {
    const store = memory();
    await install(store);
    asked = [];
    expect(await (await get('b.html', store)).text()).toBe('content of b.html');
    expect(asked).toEqual([]);
  });

  test('a lost file is fetched and held again, but only the very one', async () => {
    const store = memory();
    expect(await (await get('b.html', store)).text()).toBe('content of b.html');
    expect(store.files.size).toBe(1);
    served.set('c.html', bytes('of another version'));
    expect(await (await get('c.html', store)).text()).toBe('of another version');
    expect(store.files.size).toBe(1);
  });

  test('a device without room answers all the same', async () => {
    const full = { ...memory(), write: () => Promise.reject(new DOMException('', 'QuotaExceededError')) };
    expect(await (await get('b.html', full)).text()).toBe('content of b.html');
  });

  test('without a network an unknown page is sent to the one that says so; a script is told of the loss', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    // Only a browser makes a request for a page.
    const page = Object.defineProperty(new Request(`${SCOPE}new.html`), 'mode', { value: 'navigate' });
    const sent = await answer(page, SCOPE, hashesByPath(list), memory());
    expect(sent.headers.get('location')).toBe(`${SCOPE}404.html`);
    await expect(get('new.js', memory())).rejects.toThrow(TypeError);
    await expect(answer(page, SCOPE, new Map(), memory())).rejects.toThrow(TypeError);
  });

  test('what is not of the site is asked of the network', async () => {
    await get('offline/1.pack', memory());
    expect(asked).toEqual(['offline/1.pack']);
  });
});
