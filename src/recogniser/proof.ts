/**
 * How often the recogniser is right: each phrasing is left out in turn, with the words that stand nowhere else, and read as a
 * customer's sentence.
 */
import { count } from './counts.ts';
import { byStem, type KnownWords, knownWords } from './known-words.ts';
import { guessesOf, idsOf, type LearntText, type LearntWords } from './learn.ts';
import type { Field } from './phrasings.ts';
import { read } from './read.ts';
import { allGains, scoresOf } from './score.ts';

/** What became of one phrasing. */
export interface PhrasingResult {
  text: string;
  field: Field;
  complaint: string;
  /** Complaints that came before its own, 0 when it was found first. */
  before: number;
  /** The one that came first. */
  first: string;
}

/** Shares of phrasings, 0 to 1. */
export interface Rate {
  count: number;
  first: number;
  firstThree: number;
}

/** Of more phrasings than these every second, third … is tried: shares of so many are within two in a hundred. */
const MOST_TRIED = 1_500;

/** @param words those of the shelf's other records: right, and telling nothing */
export function leaveEachOut(learnt: LearntWords, words: Iterable<string>): PhrasingResult[] {
  const others = byStem(words);
  const all = knownWords(guessesOf(learnt), others);
  const phrasings = learnt.texts.filter(({ isPhrasing }) => isPhrasing);
  const step = Math.ceil(phrasings.length / MOST_TRIED);
  return phrasings.filter((_, at) => at % step === 0).map((text) => leaveOut(text, learnt, others, all));
}

function leaveOut(
  left: LearntText,
  learnt: LearntWords,
  others: ReadonlyMap<string, string>,
  all: KnownWords,
): PhrasingResult {
  const { counts, thesaurus } = learnt;
  const ids = idsOf(left.signs);
  count(counts, left.column, ids, -left.weight);
  const known = withoutWordsOf(left, learnt, others, all);
  const { signs } = read(`${left.text} `, thesaurus, known);
  const scores = scoresOf(allGains(signs, counts), counts);
  count(counts, left.column, ids, left.weight);
  const own = scores[left.column] ?? 0;
  const complaints = scores.slice(0, -1);
  return {
    text: left.text,
    field: left.field,
    complaint: counts.classes[left.column] ?? '',
    before: complaints.filter((score) => score > own).length,
    first: counts.classes[complaints.indexOf(Math.max(...complaints))] ?? '',
  };
}

/** Most phrasings have no word of their own; then nothing is forgotten. */
function withoutWordsOf(
  { field, stems }: LearntText,
  learnt: LearntWords,
  others: ReadonlyMap<string, string>,
  all: KnownWords,
): KnownWords {
  const own = stems.filter(
    (stem) => field !== 'slips' && learnt.uses.get(stem)?.texts === 1 && !learnt.thesaurus.words.has(stem),
  );
  if (own.length === 0) return all;
  const guesses = guessesOf(learnt);
  for (const stem of own) guesses.delete(stem);
  return knownWords(guesses, others);
}

/** How many of the phrasings were found first, and among the first three. */
export function rateOf(tried: readonly PhrasingResult[]): Rate {
  const share = (most: number): number =>
    tried.filter(({ before }) => before < most).length / Math.max(tried.length, 1);
  return { count: tried.length, first: share(1), firstThree: share(3) };
}

/** Complaints with their rates, the weakest first. */
export function weakest(tried: readonly PhrasingResult[]): { complaint: string; rate: Rate }[] {
  const ids = [...new Set(tried.map(({ complaint }) => complaint))];
  return ids
    .map((complaint) => ({ complaint, rate: rateOf(tried.filter((each) => each.complaint === complaint)) }))
    .sort((a, b) => a.rate.first - b.rate.first || a.rate.firstThree - b.rate.firstThree);
}

/** Pairs of complaints taken for each other, either way, the most often first. */
export function takenForEachOther(
  tried: readonly PhrasingResult[],
): { pair: [string, string]; times: number }[] {
  const times = new Map<string, { pair: [string, string]; times: number }>();
  for (const { complaint, first, before } of tried) {
    if (before === 0) continue;
    const pair: [string, string] = complaint < first ? [complaint, first] : [first, complaint];
    const known = times.get(pair.join('/'));
    if (known) known.times += 1;
    else times.set(pair.join('/'), { pair, times: 1 });
  }
  return [...times.values()].sort((a, b) => b.times - a.times);
}
