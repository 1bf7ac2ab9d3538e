/**
 * `npm run own-from-clone`: README's "Make it your own" from a clone of what is committed to pages that a browser gets: own shelf,
 * one own car, one note, checked, built, served. Some minutes, mostly the build, so it is no part of `npm test`, which goes as far
 * as the check (own-shelf.test.ts). The packages are those of this folder: `npm ci` is npm's.
 *
 *     npm run own-from-clone
 *     npm run own-from-clone -- --tests     also the unit tests that read the shelf, on the own one
 */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createStaticServer } from '../../src/cli/static-server.ts';
import { WHO, writeOwnCar } from './own-car.ts';

const clone = mkdtempSync(join(tmpdir(), 'own-from-clone-'));
try {
  await makeItYourOwn();
} finally {
  rmSync(clone, { recursive: true, force: true });
}

async function makeItYourOwn(): Promise<void> {
  timed('clone', () => {
    run('git', 'clone', '--quiet', '--depth=1', `file://${process.cwd()}`, clone);
    cpSync('node_modules', join(clone, 'node_modules'), { recursive: true, verbatimSymlinks: true });
  });
  timed('own shelf, car and note', () => {
    inClone('src/cli/own-shelf.ts', ...WHO);
    writeOwnCar(join(clone, 'content'), inClone);
  });
  timed('check', () => inClone('src/cli/check.ts'));
  timed('build', () => run('npm', 'run', 'build'));
  await served();
  if (process.argv.includes('--tests'))
    timed('tests that read the shelf', () =>
      run('npx', 'vitest', 'run', '--config', '.vitest.config.ts', '--project', 'unit', 'tests/shelf/'),
    );
}

/** Pages as a browser gets them, and nothing of the invented workshop on any. */
async function served(): Promise<void> {
  const dist = join(clone, 'dist');
  const server = createStaticServer(dist);
  await new Promise<void>((listening) => server.listen(0, 'localhost', listening));
  const { port } = server.address() as AddressInfo;
  const page = async (path: string): Promise<string> => {
    const response = await fetch(`http://localhost:${port}/${path}`);
    assert.equal(response.status, 200, path);
    return response.text();
  };
  assert.match(await page('index.html'), /Quay Street Garage/);
  assert.match(await page('vehicles/sedge-van.html'), /Sedge van/);
  assert.match(await page('notes/stamp-of-the-van.html'), /Stamp of the van/);
  assert.deepEqual(Object.keys(JSON.parse(await page('shelf.json')).records.vehicle), ['sedge-van']);
  server.close();
  const pages = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  const invented = pages.filter((name) =>
    /saltmarsh|aldermoor|vehicles here are invented/i.test(readFileSync(join(dist, name), 'utf8')),
  );
  assert.deepEqual(invented, []);
  process.stdout.write(`${pages.length} pages served, nothing of the invented workshop on any.\n`);
}

function inClone(file: string, ...words: string[]): void {
  run(process.execPath, file, ...words);
}

/** @throws Error with what the command said when it fails */
function run(command: string, ...words: string[]): void {
  const { status, stdout, stderr } = spawnSync(command, words, {
    cwd: clone,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (status !== 0)
    throw new Error(`${command} ${words.join(' ')}\n${stdout.slice(-4000)}\n${stderr.slice(-4000)}`);
}

function timed(what: string, work: () => void): void {
  const began = performance.now();
  work();
  process.stdout.write(`${what}: ${((performance.now() - began) / 1000).toFixed(1)} s\n`);
}
