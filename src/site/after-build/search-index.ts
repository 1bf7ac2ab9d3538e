/** The full-text index of the finished pages, by pagefind. */
import { close, createIndex, type PagefindIndex } from 'pagefind';
import { keepDecimals } from '../search/decimals.ts';

/** Name under pagefind/ -> bytes, packed by pagefind itself. */
export type IndexFiles = Map<string, Uint8Array>;

/** The index files and pagefind's client, without the search boxes it also brings. */
export interface SearchIndex {
  files: IndexFiles;
  client: string;
}

const WANTED = /^pagefind-entry\.json$|\.pf_(meta|index|fragment)$|^wasm\.en\.pagefind$/;

/**
 * What has a page of its own and stands on others as well: the tests of a walk, the cautions at a step, the names of what is
 * linked. Quoted as what a page says, they would only hide it.
 */
const ELSEWHERE = ['ht-walk', '.caution', '.kind', '.linked', '[data-start-ranking]', '.origin'];

/**
 * Indexes every page that marks its text with data-pagefind-body.
 * @param pages address from the root -> page
 * @throws Error with pagefind's own words when a page cannot be read
 */
export async function indexPages(pages: ReadonlyMap<string, string>): Promise<SearchIndex> {
  try {
    const { index, errors } = await createIndex({
      forceLanguage: 'en',
      keepIndexUrl: true,
      excludeSelectors: ELSEWHERE,
    });
    if (!index) throw new Error(`The search index cannot be made: ${errors.join(' ')}`);
    const faults = await Promise.all([...pages].map(([name, page]) => addPage(index, name, page)));
    const made = await index.getFiles();
    const all = [...errors, ...faults.flat(), ...made.errors];
    if (all.length > 0) throw new Error(`The search index cannot be made: ${all.join(' ')}`);
    const client = made.files.find((file) => file.path === 'pagefind.js');
    if (!client) throw new Error('pagefind brought no client; its version is not the one in package.json.');
    const files = made.files.filter((file) => WANTED.test(file.path));
    return {
      files: new Map(files.map(({ path, content }) => [path, content])),
      client: new TextDecoder().decode(client.content),
    };
  } finally {
    await close();
  }
}

async function addPage(index: PagefindIndex, url: string, page: string): Promise<string[]> {
  const main = /<main[^>]*\sdata-pagefind-body[\s>][\s\S]*<\/main>/.exec(page)?.[0];
  if (main === undefined) return [];
  // What stands in cells and labels beside each other is not one word.
  const parted = main.replace(/<\/(?:td|th|dt|dd|label|summary|button|legend|span|text)>/g, '$& ');
  const content = `<html lang="en"><body>${keepDecimals(parted)}</body></html>`;
  return (await index.addHTMLFile({ url, content })).errors;
}
