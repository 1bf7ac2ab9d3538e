/** scripts/<name>.js is made from src/site/islands/<name>.ts when some page asks for it. */
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { bundleScript } from './bundle-script.ts';
import type { Output } from './output.ts';
import { attributeOf } from './page-tags.ts';
import type { Scanned } from './scanned.ts';

const SCRIPT = /^\/scripts\/([a-z0-9-]+)\.js$/;

/** Islands that no page names, since they are fetched when they are wanted. */
const FETCHED = ['new-version', 'renamed', 'step-ticks', 'top-menu', 'vehicle-choice', 'vehicle-chosen'].map(
  (name) => `/scripts/${name}.js`,
);

/** What the first script of every page has already, so that no other brings it again; it is in PageGlobals as well. */
const ON_PAGE = {
  'browser/element.ts': ['element', 'button'],
  'browser/load-script.ts': ['loadScript'],
};

/**
 * An island as one script.
 * @param file its source
 * @throws Error with the bundler's message
 */
export function bundleIsland(file: string, minify: boolean): Promise<string> {
  return bundleScript(file, { minify, ...(basename(file) !== 'page.ts' && { onPage: ON_PAGE }) });
}

/** The island behind an address, if there is one. */
export function islandOf(address: string, islands: string): string | undefined {
  const name = SCRIPT.exec(address)?.[1];
  const file = name === undefined ? '' : join(islands, `${name}.ts`);
  return name !== undefined && existsSync(file) ? file : undefined;
}

/** Bundles the islands the pages name, and those fetched by others, once each. */
export async function writeIslands(output: Output, scanned: Scanned, islands: string): Promise<void> {
  const scripts = [...scanned.values()].flatMap(({ tags }) => tags.filter((tag) => tag.name === 'script'));
  const addresses = new Set([...FETCHED, ...scripts.flatMap((tag) => attributeOf(tag, 'src') ?? [])]);
  // The bundler has a process of its own: asked for all at once, it is not kept waiting.
  const bundled = await Promise.all(
    [...addresses].sort().map(async (address) => {
      const file = islandOf(address, islands);
      return file && { name: address.slice(1), text: await bundleIsland(file, true) };
    }),
  );
  for (const script of bundled) if (script) await writeScript(output, script.name, script.text);
}

/**
 * Writes a script into the output.
 * @param name its path there
 */
export async function writeScript(output: Output, name: string, text: string): Promise<void> {
  await mkdir(dirname(join(output.folder, name)), { recursive: true });
  await writeFile(join(output.folder, name), text);
  output.others.add(name);
}
