/** One server for all the sites: plain files, gzip for what is text, an entity tag, and a list of what was asked for. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.wasm': 'application/wasm',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};
const PACKED = new Set(['.png', '.woff2']);

export interface Asked {
  path: string;
  /** Bytes of the body as sent. */
  bytes: number;
  /** A service worker asked, or was asked for: nothing that the page in front of the reader waits for. */
  byWorker: boolean;
}

export interface CountingServer {
  root: string;
  asked: Asked[];
  stop(): Promise<void>;
}

interface Ready {
  headers: Record<string, string>;
  body: Buffer;
  tag: string;
}

export async function serveCounting(folder: string): Promise<CountingServer> {
  const asked: Asked[] = [];
  const ready = new Map<string, Ready>();
  const server = createServer(async (request, response) => {
    const path = (request.url ?? '/').replace(/[?#].*$/, '');
    const found = ready.get(path) ?? (await prepare(folder, path));
    const byWorker =
      request.headers['service-worker'] === 'script' || /\/worker\.js$/.test(request.headers.referer ?? '');
    if (!found) {
      asked.push({ path, bytes: 0, byWorker });
      response.writeHead(404).end();
      return;
    }
    ready.set(path, found);
    if (request.headers['if-none-match'] === found.tag) {
      asked.push({ path, bytes: 0, byWorker });
      response.writeHead(304, { etag: found.tag, 'cache-control': 'no-cache' }).end();
      return;
    }
    asked.push({ path, bytes: found.body.length, byWorker });
    response.writeHead(200, found.headers).end(found.body);
  });
  await new Promise<void>((listening) => server.listen(0, 'localhost', listening));
  const { port } = server.address() as AddressInfo;
  return { root: `http://localhost:${port}/`, asked, stop: () => stop(server) };
}

async function prepare(folder: string, path: string): Promise<Ready | undefined> {
  const whole = normalize(join(folder, decodeURIComponent(path)));
  if (!whole.startsWith(normalize(folder + sep))) return undefined;
  const candidates = whole.endsWith(sep)
    ? [`${whole}index.html`]
    : [whole, `${whole}.html`, join(whole, 'index.html')];
  for (const candidate of candidates) {
    const content = await readFile(candidate).catch(() => undefined);
    if (!content) continue;
    const ending = extname(candidate);
    const type = TYPES[ending];
    const packs = type !== undefined && !PACKED.has(ending);
    const body = packs ? gzipSync(content, { level: 9 }) : content;
    const tag = `"${createHash('sha256').update(content).digest('base64url').slice(0, 22)}"`;
    return {
      body,
      tag,
      headers: {
        'content-type': type ?? 'application/octet-stream',
        'content-length': String(body.length),
        'cache-control': 'no-cache',
        etag: tag,
        ...(packs && { 'content-encoding': 'gzip' }),
      },
    };
  }
  return undefined;
}

function stop(server: Server): Promise<void> {
  return new Promise((stopped) => {
    server.close(() => stopped());
    server.closeAllConnections();
  });
}
