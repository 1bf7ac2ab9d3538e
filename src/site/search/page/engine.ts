/** Answers a reader's question from the index: pagefind's client behind the words of find.ts. */
import { options, type PagefindResult, search } from 'pagefind-client';
import shelfKinds from 'shelf-kinds';
import names from 'shelf-names';
import { showDecimals } from '../decimals.ts';
import { excerptOf, type MarkedText } from './excerpt.ts';
import { find, type Hit, type Index, type PageHits, type WordHit } from './find.ts';
import { isNamed, matchedName } from './matched-name.ts';
import { INDEX_FOLDER } from './read-index-file.ts';
import { ROOT } from './root.ts';

export interface Question {
  query: string;
  /** Only pages of this kind, unless there are none; '' for all. */
  kind: string;
  /** Results to show at most. */
  limit: number;
}

export interface SearchAnswer extends Pick<PageHits, 'mended' | 'unknown'> {
  /** The best first. None when another question came meanwhile: nobody waits for them. */
  results: SearchResult[];
  /** Pages found, shown or not. */
  count: number;
  /** The kind they are of, '' for all. */
  kind: string;
  /** Pages found of each kind, and of all under ''. */
  kinds: Map<string, number>;
}

/** What a result shows. */
export interface SearchResult {
  title: string;
  kind: string;
  href: string;
  /** The other name that was meant, with how it is called. */
  name: { how: string; text: string } | undefined;
  excerpt: MarkedText[];
  /** One of its names alone answers every word. */
  isNamed: boolean;
}

interface OpenIndex extends Index {
  /** Every page by its id; through it the page's text is fetched. */
  pages: ReadonlyMap<string, PagefindResult>;
}

/** Other names before running text; the kind is shown, never searched. */
const WEIGHTS = { title: 6, said: 8, trade: 6, slips: 6, codes: 10, kind: 0 };

/** As many as are shown at first, so that none moves when more are asked for. */
const BEST = 6;

const opening = open();
/** What the index said to the words of this question and the last: while one types, most are asked for again. */
let said = new Map<string, WordHit[]>();
let saidBefore = said;
let asked = 0;

/**
 * Answers a search: how many and of which kinds, with as many of the best as asked for. Overtaken by a later one
 * it brings none.
 */
export async function ask({ query, kind, limit }: Question): Promise<SearchAnswer> {
  const turn = ++asked;
  saidBefore = said;
  said = new Map();
  const index = await opening;
  const { hits, words, mended, unknown } = await find(query, index);
  const kinds = new Map([['', hits.length]]);
  for (const hit of hits) kinds.set(hit.kind, (kinds.get(hit.kind) ?? 0) + 1);
  const inForce = kinds.has(kind) ? kind : '';
  const ofKind = inForce === '' ? hits : hits.filter((hit) => hit.kind === inForce);
  const shown = turn === asked ? ofKind.slice(0, limit) : [];
  const results = await Promise.all(shown.map((hit) => resultOf(hit, words, index)));
  // Among the best, what is called so comes first; names are only known of what is shown.
  const best = results.slice(0, BEST).sort((a, b) => Number(b.isNamed) - Number(a.isNamed));
  results.splice(0, best.length, ...best);
  return { results, count: ofKind.length, kind: inForce, kinds, mended, unknown };
}

async function open(): Promise<OpenIndex> {
  await options({ basePath: INDEX_FOLDER, noWorker: true, ranking: { metaWeights: WEIGHTS } });
  const { results } = await search(null);
  const pages = new Map(results.map((page) => [page.id, page]));
  const kinds = new Map<string, string>();
  for (const [at, id] of [...pages.keys()].sort().entries())
    kinds.set(id, shelfKinds.kinds[shelfKinds.ofPages[at] ?? -1] ?? 'page');
  return {
    size: pages.size,
    kindOf: (id) => kinds.get(id) ?? 'page',
    exactly: (word) => lookUp(`"${word}"`),
    beginning: lookUp,
    names,
    pages,
  };
}

async function lookUp(term: string): Promise<WordHit[]> {
  const known = said.get(term) ?? saidBefore.get(term) ?? (await lookInside(term));
  // Nothing may also mean that a part of the index could not be fetched: the next key asks again.
  if (known.length > 0) said.set(term, known);
  return known;
}

async function lookInside(term: string): Promise<WordHit[]> {
  const { results } = await search(term);
  return results.map(({ id, score, words, matchedMetaFields }) => ({
    id,
    score,
    fields: matchedMetaFields ?? [],
    locations: words,
  }));
}

async function resultOf(hit: Hit, words: readonly string[], { pages }: OpenIndex): Promise<SearchResult> {
  const page = pages.get(hit.id);
  if (!page) throw new Error(`The index has no page ${hit.id}`);
  const { meta, raw_url, raw_content } = await page.data();
  const fields = hit.words.flatMap((word) => word.fields);
  const locations = new Set(hit.words.flatMap((word) => word.locations));
  return {
    title: showDecimals(meta.title ?? raw_url),
    kind: hit.kind,
    href: new URL(raw_url.replace(/^\//, ''), ROOT).href,
    name: matchedName(meta, fields, words),
    isNamed: isNamed(meta, words),
    excerpt: excerptOf(
      raw_content,
      [...locations].sort((a, b) => a - b),
      meta.title,
    ),
  };
}
