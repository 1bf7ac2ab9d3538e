/**
 * The search as files of the site.
 *
 * scripts/search-start.js   pagefind's client with all that every search needs, names and kinds of the shelf too: one request
 * pagefind/…                the rest of the index, asked for word by word
 * scripts/search-files.js   that rest once more as text, loaded only from file://, where nothing can be asked for
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type BundleOptions, bundleScript } from './bundle-script.ts';
import type { Output } from './output.ts';
import { attributeOf, type PageElement } from './read-page.ts';
import type { PageEdit, Scanned, ScanResult } from './scanned.ts';
import { writeScript } from './scripts.ts';
import type { IndexFiles, SearchIndex } from './search-index.ts';
import { kindsOfPages } from './search-kinds.ts';

/** Fetched by every search, so it travels with the client. */
const CORE = /^pagefind-entry\.json$|\.pf_meta$|\.pagefind$/;

/** What indexing came to, and the words of the shelf's names. */
export interface SearchParts extends SearchIndex {
  words: readonly string[];
}

/** @param source src/site, where the client's own side is */
export async function writeSearch(
  output: Output,
  source: string,
  { files, client, words }: SearchParts,
): Promise<void> {
  const core = new Map([...files].filter(([name]) => CORE.test(name)));
  // By name: pagefind gives them in another order each time.
  const rest = new Map([...files].filter(([name]) => !CORE.test(name)).sort(([a], [b]) => (a < b ? -1 : 1)));
  const addresses = [...rest].map(([name, bytes]) => ({ address: `pagefind/${name}`, bytes }));
  for (const folder of new Set(addresses.map(({ address }) => dirname(address))))
    mkdirSync(join(output.folder, folder), { recursive: true });
  for (const { address, bytes } of addresses) {
    writeFileSync(join(output.folder, address), bytes);
    output.others.add(address);
  }
  await writeScript(
    output,
    'scripts/search-start.js',
    await bundleStart(source, {
      'pagefind-client': { text: client, loader: 'js' },
      'pagefind-core': { text: asText(core), loader: 'json' },
      'shelf-names': { text: JSON.stringify(words), loader: 'json' },
      'shelf-kinds': { text: JSON.stringify(kindsOfPages(rest)), loader: 'json' },
    }),
  );
  await writeScript(output, 'scripts/search-files.js', `headertankIndexFiles=${asText(rest)}`);
}

/** The names a page is found by are in the index; readers need not fetch them with the page. */
export function dropSearchTerms(scanned: Scanned): ScanResult {
  const isTerms = (element: PageElement) => attributeOf(element, 'data-search-terms') !== undefined;
  const edits = [...scanned].map(([name, { elements }]): [string, PageEdit[]] => [
    name,
    elements.filter(isTerms).map(({ start, end }) => ({ start, end, text: '' })),
  ]);
  return { edits: new Map(edits), faults: [] };
}

async function bundleStart(source: string, modules: NonNullable<BundleOptions['modules']>): Promise<string> {
  return bundleScript(join(source, 'search/page/start.ts'), {
    minify: true,
    modules,
    // The client asks for its files here instead of over the network, and never looks for its own address.
    define: { fetch: 'readIndexFile', 'import.meta.url': '""' },
    inject: [join(source, 'search/page/read-index-file.ts')],
  });
}

function asText(files: IndexFiles): string {
  const entries = [...files].map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')]);
  return JSON.stringify(Object.fromEntries(entries));
}
