/** Packages that are no part of the project: fetched for the bench alone, into a folder outside it, kept for the next run. */
import { cp, mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { runMeasured } from './run-measured.ts';

/**
 * A folder with the packages that a package.json names, and nothing else in it.
 * @param source folder of the package.json
 * @param minutes after which fetching is given up
 * @throws Error when they cannot be fetched
 */
export async function fetchPackages(source: string, place: string, minutes: number): Promise<void> {
  await mkdir(place, { recursive: true });
  const manifest = join(place, 'package.json');
  const before = await readFile(manifest, 'utf8').catch(() => '');
  const now = await readFile(join(source, 'package.json'), 'utf8');
  if (before !== now) {
    await empty(place);
    await cp(join(source, 'package.json'), manifest);
    const installed = await runMeasured(['npm', 'install', '--no-audit', '--no-fund'], place, minutes);
    if (!installed.ok) {
      await rm(manifest);
      throw new Error(`its packages cannot be fetched: ${installed.why}`);
    }
  }
  await clear(place);
}

export async function empty(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
}

/** Names and versions in a package.json, as a reader wants them. @param source folder of the package.json */
export async function versionsOf(source: string): Promise<string> {
  const manifest: unknown = JSON.parse(await readFile(join(source, 'package.json'), 'utf8'));
  const named =
    typeof manifest === 'object' && manifest !== null && 'dependencies' in manifest
      ? manifest.dependencies
      : {};
  return Object.entries(named ?? {})
    .map(([name, version]) => `${name} ${version}`)
    .join(', ');
}

/** Removes everything but the packages that were fetched into it. */
async function clear(folder: string): Promise<void> {
  const kept = new Set(['node_modules', 'package.json', 'package-lock.json']);
  for (const name of await readdir(folder))
    if (!kept.has(name)) await rm(join(folder, name), { recursive: true });
  for (const name of ['.astro', '.vite', '.cache'])
    await rm(join(folder, 'node_modules', name), { recursive: true, force: true });
}
