/** Serves a finished site from a folder: read only, this machine only. */
import { createHash } from 'node:crypto';
import { constants, open, realpath } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { RESPONSE_HEADERS } from './response-headers.ts';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

/** @param folder the built site; files changed there later are served as changed */
export function createStaticServer(folder: string): Server {
  return createServer((request, response) => {
    answer(folder, request, response).catch((error: unknown) => {
      response
        .writeHead(500, { 'content-type': 'text/plain; charset=utf-8' })
        .end(`The file cannot be read: ${error}`);
    });
  });
}

async function answer(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const found = await findFile(folder, request.url ?? '/');
  const { content, path } = found ?? (await lostPage(folder));
  const tag = `"${createHash('sha256').update(content).digest('base64url').slice(0, 22)}"`;
  const headers = {
    ...RESPONSE_HEADERS,
    'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
    // Asked for anew each time, answered from the browser's copy when nothing changed.
    'cache-control': 'no-cache',
    etag: tag,
  };
  if (found && request.headers['if-none-match'] === tag) response.writeHead(304, headers).end();
  else response.writeHead(found ? 200 : 404, headers).end(request.method === 'HEAD' ? undefined : content);
}

interface FoundFile {
  path: string;
  content: Buffer;
}

/** The file itself, a folder's index, or a page named without its ending. */
async function findFile(folder: string, address: string): Promise<FoundFile | undefined> {
  const path = inside(folder, address);
  if (path === undefined) return undefined;
  const candidates = path.endsWith(sep)
    ? [`${path}index.html`]
    : [path, `${path}.html`, join(path, 'index.html')];
  for (const candidate of candidates) {
    const content = await contentOf(folder, candidate).catch(() => undefined);
    if (content) return { path: candidate, content };
  }
  return undefined;
}

/**
 * A plain file that lies in the folder: a link could lead anywhere on this machine, and a pipe has no end.
 * @throws when it is none
 */
async function contentOf(folder: string, path: string): Promise<Buffer | undefined> {
  const [top, real] = await Promise.all([realpath(folder), realpath(path)]);
  if (!real.startsWith(top + sep)) return undefined;
  const file = await open(real, constants.O_RDONLY | constants.O_NONBLOCK);
  try {
    return (await file.stat()).isFile() ? await file.readFile() : undefined;
  } finally {
    await file.close();
  }
}

/** @returns nothing for an address that climbs out of the folder or cannot be read */
function inside(folder: string, address: string): string | undefined {
  try {
    const path = normalize(join(folder, decodeURIComponent(address.replace(/[?#].*$/, ''))));
    return path.startsWith(normalize(folder + sep)) && !path.includes('\0') ? path : undefined;
  } catch {
    return undefined;
  }
}

async function lostPage(folder: string): Promise<FoundFile> {
  const content =
    (await contentOf(folder, join(folder, '404.html')).catch(() => undefined)) ??
    Buffer.from('No such page.');
  return { path: '404.html', content };
}
