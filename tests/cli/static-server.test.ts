import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { type IncomingHttpHeaders, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { headerFiles, RESPONSE_HEADERS } from '../../src/cli/response-headers.ts';
import { createStaticServer } from '../../src/cli/static-server.ts';

let folder: string;
let server: Server;

beforeAll(async () => {
  const parent = await mkdtemp(join(tmpdir(), 'headertank-'));
  folder = join(parent, 'site');
  await mkdir(join(folder, 'tests'), { recursive: true });
  await writeFile(join(parent, 'secret.txt'), 'secret');
  await mkdir(join(parent, 'site-beside'));
  await writeFile(join(parent, 'site-beside', 'x.html'), 'secret');
  for (const name of [
    'index.html',
    'tests/index.html',
    'tests/x.html',
    '404.html',
    'a b.svg',
    'licences.txt',
  ])
    await writeFile(join(folder, name), name);
  await symlink(join(parent, 'secret.txt'), join(folder, 'link.txt'));
  await symlink(parent, join(folder, 'up'));
  spawnSync('mkfifo', [join(folder, 'pipe.txt')]);
  server = createStaticServer(folder);
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
});
afterAll(async () => {
  server.close();
  await rm(join(folder, '..'), { recursive: true });
});

interface Answer {
  status: number;
  type: string | undefined;
  tag: string | undefined;
  headers: IncomingHttpHeaders;
  text: string;
}

/** Sends the path as it is; fetch would tidy it first. */
function ask(path: string, method = 'GET', headers: Record<string, string> = {}): Promise<Answer> {
  const { port } = server.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const sent = request({ host: 'localhost', port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () => {
        const { 'content-type': type, etag: tag } = response.headers;
        const text = Buffer.concat(parts).toString();
        resolve({ status: response.statusCode ?? 0, type, tag, headers: response.headers, text });
      });
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('finds', () => {
  test.each([
    ['/', 'index.html'],
    ['/tests/', 'tests/index.html'],
    ['/tests', 'tests/index.html'],
    ['/tests/x', 'tests/x.html'],
    ['/tests/x.html?q=1', 'tests/x.html'],
    ['/a%20b.svg', 'a b.svg'],
  ])('%s', async (path, text) => {
    expect(await ask(path)).toMatchObject({ status: 200, text });
  });
  test('and says what it is', async () => {
    expect((await ask('/')).type).toBe('text/html; charset=utf-8');
    expect((await ask('/a%20b.svg')).type).toBe('image/svg+xml');
    expect((await ask('/licences.txt')).type).toBe('text/plain; charset=utf-8');
  });
});

describe('gives nothing but the folder', () => {
  test.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/../site-beside/x.html',
    '/%00',
    '/%E0%A4%A',
    '/nothing',
    '/link.txt',
    '/up/secret.txt',
    '/pipe.txt',
  ])('%s', async (path) => {
    expect(await ask(path)).toMatchObject({ status: 404, text: '404.html' });
  });
});

test('a file that has not changed is not sent again', async () => {
  const { tag } = await ask('/');
  expect(await ask('/', 'GET', { 'if-none-match': tag ?? '' })).toMatchObject({ status: 304, text: '' });
});

test('what a page cannot say itself goes with every file, and stands in the files for other hosts', async () => {
  for (const path of ['/', '/a%20b.svg', '/nothing'])
    expect((await ask(path)).headers).toMatchObject(RESPONSE_HEADERS);
  expect(RESPONSE_HEADERS).toMatchObject({
    'x-content-type-options': 'nosniff',
    'content-security-policy': "frame-ancestors 'none'",
  });
  for (const text of Object.values(headerFiles()))
    for (const [name, value] of Object.entries(RESPONSE_HEADERS))
      expect(text).toMatch(new RegExp(`${name}:? "?${value.replaceAll(/[()*]/g, '\\$&')}"?\\n`));
});

test('only reading is allowed', async () => {
  expect((await ask('/', 'POST')).status).toBe(405);
  expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, text: '' });
});
