/**
 * From a reader's sentence to ranked pages, on top of an index that answers for one word at a time.
 *
 * The index alone wants every word of a query on the page, which no customer's sentence survives. Here each telling word is
 * looked up by itself and the answers are merged: a page's scores add up, and count in the square of how much of the sentence
 * it answers, rare words more than common ones. The order is the same on every device.
 */
import { tellingWords } from './words.ts';

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
  lookUp(word: string): Promise<readonly WordHit[]>;
  /** The nearest known word to one that is on no page. */
  mend(word: string): Promise<string | undefined>;
}

export interface Hit {
  id: string;
  kind: string;
  score: number;
  fields: readonly string[];
  locations: readonly number[];
}

export interface Found {
  hits: Hit[];
  /** The words that were looked for, after mending. */
  words: string[];
  mended: { from: string; to: string }[];
  /** Words that are on no page and like none that is. */
  unknown: string[];
}

/** What a symptom gains when all the words are those customers use for it. */
const CUSTOMER_BONUS = 0.5;

/** Pages that answer less of the sentence than this share of what the best page answers are left out. */
const ENOUGH = 0.4;

interface Gathered {
  score: number;
  told: number;
  said: number;
  fields: Set<string>;
  locations: Set<number>;
}

export async function find(query: string, index: Index): Promise<Found> {
  const { answers, mended, unknown } = await lookUpAll(tellingWords(query), index);
  const weights = answers.map(({ hits }) => Math.log(1 + index.size / hits.length));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const pages = new Map<string, Gathered>();
  answers.forEach(({ hits }, at) => {
    for (const hit of hits) gather(pages, hit, weights[at] ?? 0);
  });
  const most = Math.max(...[...pages.values()].map(({ told }) => told));
  const tells = (id: string) => (pages.get(id)?.told ?? 0) >= ENOUGH * most;
  const hits = [...pages].map(([id, page]) => ({
    id,
    kind: index.kindOf(id),
    score: rank(page, whole, index.kindOf(id)),
    fields: [...page.fields].sort(),
    locations: [...page.locations].sort((a, b) => a - b),
  }));
  hits.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  return {
    hits: hits.filter(({ id }) => tells(id)),
    words: answers.map(({ word }) => word),
    mended,
    unknown,
  };
}

function rank(page: Gathered, whole: number, kind: string): number {
  const bonus = kind === 'symptom' ? CUSTOMER_BONUS * (page.said / whole) : 0;
  return page.score * (page.told / whole) ** 2 * (1 + bonus);
}

function gather(pages: Map<string, Gathered>, hit: WordHit, weight: number): void {
  const page = pages.get(hit.id) ?? { score: 0, told: 0, said: 0, fields: new Set(), locations: new Set() };
  page.score += hit.score;
  page.told += weight;
  if (hit.fields.includes('said')) page.said += weight;
  for (const field of hit.fields) page.fields.add(field);
  for (const location of hit.locations) page.locations.add(location);
  pages.set(hit.id, page);
}

interface Answer {
  word: string;
  hits: readonly WordHit[];
}

interface Answers {
  answers: Answer[];
  mended: Found['mended'];
  unknown: string[];
}

async function lookUpAll(words: readonly string[], index: Index): Promise<Answers> {
  const all: Answers = { answers: [], mended: [], unknown: [] };
  for (const word of words) {
    const hits = await index.lookUp(word);
    if (hits.some((hit) => !isSlip(hit))) all.answers.push({ word, hits });
    else if (word.includes('-')) await lookUpParts(word, index, all);
    else await lookUpMended(word, hits, index, all);
  }
  return all;
}

/** The word stands on this page only in its list of usual misspellings. */
function isSlip({ fields, locations }: WordHit): boolean {
  return locations.length === 0 && fields.every((field) => field === 'slips');
}

async function lookUpParts(word: string, index: Index, all: Answers): Promise<void> {
  for (const part of word.split('-').filter((text) => text !== '')) {
    const hits = await index.lookUp(part);
    if (hits.length > 0) all.answers.push({ word: part, hits });
    else all.unknown.push(part);
  }
}

/** @param slips pages that list the word as a usual misspelling */
async function lookUpMended(
  word: string,
  slips: readonly WordHit[],
  index: Index,
  all: Answers,
): Promise<void> {
  const mended = await index.mend(word);
  const known = mended === undefined ? [] : await index.lookUp(mended);
  const hits = [...slips.filter(({ id }) => !known.some((hit) => hit.id === id)), ...known];
  if (hits.length === 0) {
    all.unknown.push(word);
    return;
  }
  if (mended !== undefined && known.length > 0) all.mended.push({ from: word, to: mended });
  all.answers.push({ word: known.length > 0 ? (mended ?? word) : word, hits });
}
