/**
 * From a reader's sentence to ranked pages, on top of an index that answers for one word at a time.
 *
 * The index alone wants every word of a query on the page, which no customer's sentence survives. Here each telling word is
 * looked up by itself and the answers are merged: a page's scores add up, and count in the square of how much of the sentence
 * it answers, rare words more than common ones. The order is the same on every device.
 */
import { nearestWord } from './spelling.ts';
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

/** Pages that hold fewer of the words than this share of what the fullest page holds are left out. */
const ENOUGH = 0.4;

interface Gathered {
  words: number;
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
  const most = Math.max(...[...pages.values()].map(({ words }) => words));
  const telling = [...pages].filter(([, { words }]) => words >= ENOUGH * most);
  const hits = telling.map(([id, page]) => ({
    id,
    kind: index.kindOf(id),
    score: rank(page, whole, index.kindOf(id)),
    fields: [...page.fields].sort(),
    locations: [...page.locations].sort((a, b) => a - b),
  }));
  hits.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  return {
    hits,
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
  const page = pages.get(hit.id) ?? {
    words: 0,
    score: 0,
    told: 0,
    said: 0,
    fields: new Set(),
    locations: new Set(),
  };
  page.words += 1;
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
    // Most words that are asked for stand in a name: then one look into the index is enough.
    const isName = index.names.some((name) => name.startsWith(word));
    const exact = isName ? [] : await index.exactly(word);
    if (isName || exact.some((hit) => !isSlip(hit)))
      all.answers.push({ word, hits: await index.beginning(word) });
    else if (word.includes('-')) await lookUpParts(word, index, all);
    else await lookUpMended(word, exact, index, all);
  }
  return all;
}

/** The word stands on this page only in its list of usual misspellings. */
function isSlip({ fields, locations }: WordHit): boolean {
  return locations.length === 0 && fields.every((field) => field === 'slips');
}

async function lookUpParts(word: string, index: Index, all: Answers): Promise<void> {
  const parts = await lookUpAll(
    word.split('-').filter((text) => text !== ''),
    index,
  );
  all.answers.push(...parts.answers);
  all.mended.push(...parts.mended);
  all.unknown.push(...parts.unknown);
}

/** @param slips pages that list the word as a usual misspelling */
async function lookUpMended(
  word: string,
  slips: readonly WordHit[],
  index: Index,
  all: Answers,
): Promise<void> {
  const mended = nearestWord(word, index.names);
  const known = mended === undefined ? [] : await index.beginning(mended);
  if (mended !== undefined && known.length > 0) {
    all.mended.push({ from: word, to: mended });
    all.answers.push({
      word: mended,
      hits: [...known, ...slips.filter(({ id }) => !known.some((hit) => hit.id === id))],
    });
  } else if (slips.length > 0) all.answers.push({ word, hits: slips });
  else all.unknown.push(word);
}
