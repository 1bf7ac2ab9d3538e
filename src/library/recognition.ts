/** What the search learns from the shelf, and how often it is right. */
import { weightOf } from '../diagnosis/words.ts';
import type { Words } from '../model/words.ts';
import { byStem } from '../recogniser/known-words.ts';
import { guessesOf, type LearntWords, learn } from '../recogniser/learn.ts';
import type { SymptomTexts } from '../recogniser/phrasings.ts';
import { leaveEachOut, type PhrasingResult } from '../recogniser/proof.ts';
import type { Knowledge } from '../recogniser/recogniser.ts';
import { clausesOf } from '../recogniser/words.ts';
import { entriesOf } from './draft.ts';
import type { Records } from './shelf.ts';
import { textsIn } from './strings.ts';

/** How often a complaint comes in that does not say so. */
const USUAL = 'occasional';

export interface SymptomsAndWords {
  records: Records;
  words: Words;
}

/** What the shelf teaches about its complaints. */
export function learntFrom({ records, words }: SymptomsAndWords): LearntWords {
  return learn(toldBy(records), words);
}

/** All that is needed to recognise a complaint. */
export function knowledgeOf(shelf: SymptomsAndWords): Knowledge {
  const learnt = learntFrom(shelf);
  return {
    counts: learnt.counts,
    thesaurus: learnt.thesaurus,
    guesses: guessesOf(learnt),
    others: byStem(otherWords(shelf.records)),
    codes: new Set(shelf.records.code.keys()),
  };
}

/** Every phrasing of the shelf left out in turn and looked for. */
export function proofOf(shelf: SymptomsAndWords): PhrasingResult[] {
  return leaveEachOut(learntFrom(shelf), otherWords(shelf.records));
}

function toldBy(records: Records): SymptomTexts[] {
  return [...records.symptom.values()].map(({ id, data }) => ({
    id,
    title: data.title,
    weight: weightOf(data['comes-in'] ?? USUAL),
    said: [...data.said, ...(data.also?.said ?? [])],
    heard: data.heard ?? [],
    trade: data.also?.trade ?? [],
    slips: data.also?.slips ?? [],
    codes: data.codes,
  }));
}

/** Words of all records but what is learnt of the complaints: written as they should be, so never mended. */
function otherWords(records: Records): Set<string> {
  const words = new Set<string>();
  for (const { kind, data } of entriesOf(records)) {
    // What a reader left in a note is spelt as it came.
    if (kind === 'note') continue;
    const slips = new Set<string>('also' in data ? data.also?.slips : []);
    // A complaint's phrasings are learnt; its summary is only spelt right.
    for (const { text } of textsIn('noticed-at' in data ? data.summary : data)) {
      if (slips.has(text)) continue;
      for (const { word } of clausesOf(text).flat()) words.add(word);
    }
  }
  return words;
}
