/**
 * From a reader's sentence to ranked pages, on top of an index that answers for one word at a time.
 *
 * The index alone wants every word of a query on the page, which no customer's sentence survives. Here each telling word is
 * looked up by itself and the answers are merged: a page's scores add up, and count in the square of how much of the sentence
 * it answers, rare words more than common ones. The order is the same on every device.
 */

import { tellingWords } from '../words.ts';
import { nearestWord } from './spelling.ts';

/** One page that holds one word. */
export interface WordHit {
  id: string;
  score: number;
  /** The marked fields the word was found in: title, said, trade, slips, codes. */
  fields: readonly string[];
  /** Where the word stands in the text of the page, counted in words. */
  locations: readonly number[];
}

export interface Index {
  /** Pages of the whole index. */
  size: number;
  /** Which kind a page is, in the words of the shelf. */
  kindOf(id: string): string;
  /** Pages with this very word, whatever its ending. */
  exactly(word: string): Promise<readonly WordHit[]>;
  /** Pages with this word or one that begins with it. */
  beginning(word: string): Promise<readonly WordHit[]>;
  /** Words of titles and other names, most used first. */
  names: readonly string[];
}

export interface Hit {
  id: string;
  kind: string;
  score: number;
  /** One for each word the page has. */
  words: readonly WordHit[];
}

export interface PageHits {
  hits: Hit[];
  /** The words that were looked for, after mending. */
  words: string[];
  mended: { from: string; to: string }[];
  /** Words that are on no page and like none that is. */
  unknown: string[];
}

/** What a symptom gains when all the words are those customers use for it. */
const CUSTOMER_BONUS = 0.5;

/** Pages that hold fewer of the words than this share of what the fullest page holds are left out. */
const ENOUGH = 0.4;

interface PageScore {
  words: WordHit[];
  score: number;
  told: number;
  said: number;
}

/** Pages for a query, the best first, with what was read differently and what no page has. */
export async function find(query: string, index: Index): Promise<PageHits> {
  const { answers, mended, unknown } = await lookUpAll(tellingWords(query), index);
  const weights = answers.map(({ hits }) => Math.log(1 + index.size / hits.length));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const pages = new Map<string, PageScore>();
  answers.forEach(({ hits }, at) => {
    for (const hit of hits) gather(pages, hit, weights[at] ?? 0);
  });
  let most = 0;
  for (const { words } of pages.values()) most = Math.max(most, words.length);
  const hits: Hit[] = [];
  for (const [id, page] of pages) {
    if (page.words.length < ENOUGH * most) continue;
    const kind = index.kindOf(id);
    hits.push({ id, kind, score: rank(page, whole, kind), words: page.words });
  }
  hits.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  return {
    hits,
    words: answers.map(({ word }) => word),
    mended,
    unknown,
  };
}

function rank(page: PageScore, whole: number, kind: string): number {
  const bonus = kind === 'symptom' ? CUSTOMER_BONUS * (page.said / whole) : 0;
  return page.score * (page.told / whole) ** 2 * (1 + bonus);
}

function gather(pages: Map<string, PageScore>, hit: WordHit, weight: number): void {
  let page = pages.get(hit.id);
  if (!page) {
    page = { words: [], score: 0, told: 0, said: 0 };
    pages.set(hit.id, page);
  }
  page.words.push(hit);
  page.score += hit.score;
  page.told += weight;
  if (hit.fields.includes('said')) page.said += weight;
}

interface AnswerPerWord {
  word: string;
  hits: readonly WordHit[];
}

interface Answers {
  answers: AnswerPerWord[];
  mended: PageHits['mended'];
  unknown: string[];
}

async function lookUpAll(words: readonly string[], index: Index): Promise<Answers> {
  // All at once: the parts of the index they need are on their way together.
  const each = await Promise.all(words.map((word) => lookUp(word, index)));
  return {
    answers: each.flatMap(({ answers }) => answers),
    mended: each.flatMap(({ mended }) => mended),
    unknown: each.flatMap(({ unknown }) => unknown),
  };
}

async function lookUp(word: string, index: Index): Promise<Answers> {
  // Most words that are asked for stand in a name: then one look into the index is enough.
  const isName = index.names.some((name) => name.startsWith(word));
  const exact = isName ? [] : await index.exactly(word);
  if (isName || exact.some((hit) => !isSlip(hit)))
    return { answers: [{ word, hits: await index.beginning(word) }], mended: [], unknown: [] };
  if (word.includes('-')) {
    const parts = word.split('-').filter((text) => text !== '');
    return lookUpAll(parts, index);
  }
  return lookUpMended(word, exact, index);
}

/** The word stands on this page only in its list of usual misspellings. */
function isSlip({ fields, locations }: WordHit): boolean {
  return locations.length === 0 && fields.every((field) => field === 'slips');
}

/** What is called otherwise across the ocean, and would be taken for a slip. */
const HERE = new Map([
  ['hood', 'bonnet'],
  ['windshield', 'windscreen'],
  ['gasoline', 'petrol'],
  ['muffler', 'silencer'],
]);

/** @param slips pages that list the word as a usual misspelling */
async function lookUpMended(word: string, slips: readonly WordHit[], index: Index): Promise<Answers> {
  const mended = HERE.get(word) ?? nearestWord(word, index.names);
  const known = mended === undefined ? [] : await index.beginning(mended);
  if (mended !== undefined && known.length > 0) {
    const ids = new Set(known.map(({ id }) => id));
    const hits = [...known, ...slips.filter(({ id }) => !ids.has(id))];
    return { answers: [{ word: mended, hits }], mended: [{ from: word, to: mended }], unknown: [] };
  }
  if (slips.length > 0) return { answers: [{ word, hits: slips }], mended: [], unknown: [] };
  return { answers: [], mended: [], unknown: [word] };
}
