/** The full-text index of the finished pages, by pagefind. */
import { close, createIndex, type PagefindIndex } from 'pagefind';
import { keepDecimals } from '../search/decimals.ts';
import { attributeOf } from './read-page.ts';
import { edited, type Scanned, type ScannedPage } from './scanned.ts';

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
 * @throws Error with pagefind's own words when a page cannot be read
 */
export async function indexPages(scanned: Scanned): Promise<SearchIndex> {
  try {
    const { index, errors } = await createIndex({
      forceLanguage: 'en',
      keepIndexUrl: true,
      excludeSelectors: ELSEWHERE,
    });
    if (!index) throw new Error(`The search index cannot be made: ${errors.join(' ')}`);
    const faults = await Promise.all([...scanned].map(([name, page]) => addPage(index, name, page)));
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

/** What stands in these beside each other is not one word. */
const APART = new Set(['td', 'th', 'dt', 'dd', 'label', 'summary', 'button', 'legend', 'span', 'text']);

async function addPage(
  index: PagefindIndex,
  url: string,
  { text, elements }: ScannedPage,
): Promise<string[]> {
  const main = elements.find(
    (element) => element.name === 'main' && attributeOf(element, 'data-pagefind-body') !== undefined,
  );
  if (!main) return [];
  const ends = elements.filter(({ name, end }) => APART.has(name) && end > main.start && end < main.end);
  const spaces = ends.map(({ end }) => ({ start: end - main.start, end: end - main.start, text: ' ' }));
  const parted = edited(text.slice(main.start, main.end), spaces);
  const content = `<html lang="en"><body>${keepDecimals(parted)}</body></html>`;
  return (await index.addHTMLFile({ url, content })).errors;
}
