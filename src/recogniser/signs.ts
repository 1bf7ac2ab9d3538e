/** What a sentence gives the recogniser to count: stems, word groups, pairs of them, and what is denied. */

import { stemOf } from './stem.ts';
import type { Thesaurus } from './thesaurus.ts';
import { isNegation, isSmall, type Word } from './words.ts';

export interface Sign {
  /** "needl", "@gauge", "@fall+@fast-road", "!warm" */
  id: string;
  /** How much it counts beside a whole word, 0 to 1. */
  weight: number;
  /** Places of the words that made it, counted over the whole sentence. */
  from: readonly number[];
}

const OF_SMALL_WORD = 0.5;
/** Words that tell something, between the two of a pair, at most. */
const PAIR_REACH = 5;
/** Words after a negation that it turns round. */
const NEGATION_REACH = 3;

/** Words that belong together, and what they are counted as. */
interface Piece {
  tokens: readonly string[];
  from: readonly number[];
}

/** The signs of a sentence, each once; of two alike the heavier stays. */
export function signsOf(clauses: readonly (readonly Word[])[], thesaurus: Thesaurus): Sign[] {
  const signs = new Map<string, Sign>();
  const put = (id: string, weight: number, from: readonly number[]): void => {
    const known = signs.get(id);
    if (!known || known.weight < weight) signs.set(id, { id, weight, from });
  };
  let start = 0;
  for (const clause of clauses) {
    const stems = clause.map(({ word }) => stemOf(word));
    for (const [at, { word }] of clause.entries())
      put(stems[at] ?? word, isSmall(word) ? OF_SMALL_WORD : 1, [start + at]);
    const pieces = piecesOf(clause, stems, thesaurus, start);
    for (const { tokens, from } of pieces)
      for (const token of tokens) if (token.startsWith('@')) put(token, 1, from);
    putPairs(pieces, put);
    putDenied(clause, pieces, start, put);
    start += clause.length;
  }
  return [...signs.values()];
}

type Put = (id: string, weight: number, from: readonly number[]) => void;

/** A clause's telling words and phrases in their order. */
function piecesOf(
  clause: readonly Word[],
  stems: readonly string[],
  thesaurus: Thesaurus,
  start: number,
): Piece[] {
  const pieces: Piece[] = [];
  for (let at = 0; at < clause.length; ) {
    const match = thesaurus.at(stems, at);
    const length = match?.length ?? 1;
    const from = Array.from({ length }, (_, next) => start + at + next);
    const word = clause[at]?.word ?? '';
    if (match) pieces.push({ tokens: match.groups.map((group) => `@${group}`), from });
    else if (!isSmall(word) && !isNegation(word)) pieces.push({ tokens: [stems[at] ?? word], from });
    at += length;
  }
  return pieces;
}

function putPairs(pieces: readonly Piece[], put: Put): void {
  for (const [at, one] of pieces.entries())
    for (const other of pieces.slice(at + 1, at + 1 + PAIR_REACH))
      for (const a of one.tokens)
        for (const b of other.tokens)
          if (a !== b) put(a < b ? `${a}+${b}` : `${b}+${a}`, 1, [...one.from, ...other.from]);
}

function putDenied(clause: readonly Word[], pieces: readonly Piece[], start: number, put: Put): void {
  for (const [at, { word }] of clause.entries()) {
    if (!isNegation(word)) continue;
    const denied = pieces.filter(({ from }) => (from[0] ?? 0) > start + at).slice(0, NEGATION_REACH);
    for (const { tokens, from } of denied)
      for (const token of tokens) put(`!${token}`, 1, [start + at, ...from]);
  }
}
