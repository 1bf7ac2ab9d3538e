/** The search engine, loaded with the first search: pagefind's client behind the words of find.ts. */
import { filters, options, type PagefindResult, search } from 'pagefind-client';
import names from 'shelf-names';
import '../page-globals.ts';
import { showDecimals } from './decimals.ts';
import { excerptOf, type Marked } from './excerpt.ts';
import { type Found, find, type Hit, type Index } from './find.ts';
import { matchedName } from './matched-name.ts';
import { INDEX_FOLDER } from './read-index-file.ts';

/** What a result shows. */
export interface Result {
  title: string;
  kind: string;
  href: string;
  /** The other name that was meant, with how it is called. */
  name: { how: string; text: string } | undefined;
  excerpt: Marked[];
}

export interface SearchEngine {
  find(query: string): Promise<Found>;
  show(hit: Hit, words: readonly string[]): Promise<Result>;
}

declare global {
  var headertankSearch: SearchEngine | undefined;
}

/** Other names before running text; the kind is shown, never searched. */
const WEIGHTS = { title: 6, said: 8, trade: 6, slips: 6, codes: 10, kind: 0 };

/** The last answer for each page: through it the page's text is fetched. */
const answers = new Map<string, PagefindResult>();
let opening: Promise<Index> | undefined;

globalThis.headertankSearch = {
  async find(query) {
    opening ??= open();
    return find(query, await opening);
  },
  async show(hit, words) {
    const answer = answers.get(hit.id);
    if (!answer) throw new Error(`No search has found the page ${hit.id}`);
    const { meta, raw_url, raw_content } = await answer.data();
    return {
      title: showDecimals(meta.title ?? raw_url),
      kind: hit.kind,
      href: new URL(raw_url.replace(/^\//, ''), window.headertank.root).href,
      name: matchedName(meta, hit.fields, words),
      excerpt: excerptOf(raw_content, hit.locations, meta.title),
    };
  },
};

async function open(): Promise<Index> {
  await options({ basePath: INDEX_FOLDER, noWorker: true, ranking: { metaWeights: WEIGHTS } });
  const kinds = new Map<string, string>();
  for (const kind of Object.keys((await filters()).kind ?? {})) {
    for (const { id } of (await search(null, { filters: { kind } })).results) kinds.set(id, kind);
  }
  return {
    size: kinds.size,
    kindOf: (id) => kinds.get(id) ?? 'page',
    exactly: (word) => lookUp(`"${word}"`),
    beginning: lookUp,
    names,
  };
}

async function lookUp(term: string) {
  const { results } = await search(term);
  for (const result of results) answers.set(result.id, result);
  return results.map(({ id, score, words, matchedMetaFields }) => ({
    id,
    score,
    fields: matchedMetaFields ?? [],
    locations: words,
  }));
}
