/**
 * The search as files of the site.
 *
 * scripts/search-start.js   pagefind's client with all that every search needs, names and kinds of the shelf too: one request
 * pagefind/…                the rest of the index, asked for word by word
 * scripts/search-files.js   that rest once more as text, loaded only from file://, where nothing can be asked for
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type BundleOptions, bundleScript } from './bundle-script.ts';
import { writeScript } from './islands.ts';
import type { Output } from './output.ts';
import { type IndexFiles, indexPages } from './search-index.ts';
import { kindsOfPages } from './search-kinds.ts';
import { collectWords } from './vocabulary.ts';

/** Fetched by every search, so it travels with the client. */
const CORE = /^pagefind-entry\.json$|\.pf_meta$|\.pagefind$/;

/** @param source src/site, where the client's own side is */
export async function writeSearch(output: Output, source: string): Promise<void> {
  const { files, client } = await indexPages(output.pages);
  const core = new Map([...files].filter(([name]) => CORE.test(name)));
  const rest = new Map([...files].filter(([name]) => !CORE.test(name)));
  for (const [name, bytes] of rest) {
    const address = `pagefind/${name}`;
    await mkdir(dirname(join(output.folder, address)), { recursive: true });
    await writeFile(join(output.folder, address), bytes);
    output.others.add(address);
  }
  await writeScript(
    output,
    'scripts/search-start.js',
    await bundleStart(source, {
      'pagefind-client': { text: client, loader: 'js' },
      'pagefind-core': { text: asText(core), loader: 'json' },
      'shelf-names': { text: JSON.stringify(collectWords(output)), loader: 'json' },
      'shelf-kinds': { text: JSON.stringify(kindsOfPages(rest)), loader: 'json' },
    }),
  );
  await writeScript(output, 'scripts/search-files.js', `headertankIndexFiles=${asText(rest)}`);
}

/** The names a page is found by are in the index; readers need not fetch them with the page. */
export function dropSearchTerms(output: Output): void {
  for (const [name, page] of output.pages)
    output.pages.set(
      name,
      page.replace(/<div hidden data-pagefind-ignore data-search-terms>[\s\S]*?<\/div>/, ''),
    );
}

async function bundleStart(source: string, modules: NonNullable<BundleOptions['modules']>): Promise<string> {
  return bundleScript(join(source, 'search/start.ts'), {
    minify: true,
    modules,
    // The client asks for its files here instead of over the network, and never looks for its own address.
    define: { fetch: 'readIndexFile', 'import.meta.url': '""' },
    inject: [join(source, 'search/read-index-file.ts')],
  });
}

function asText(files: IndexFiles): string {
  const entries = [...files].map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')]);
  return JSON.stringify(Object.fromEntries(entries));
}
