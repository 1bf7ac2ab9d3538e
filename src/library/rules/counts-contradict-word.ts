import { type CauseWeights, countsContradict, exactInterval, nearestWord } from '../../diagnosis/counted.ts';
import { LIKELIHOOD_WORDS, PRIOR_WORDS } from '../../diagnosis/words.ts';
import { byWords } from '../case.ts';
import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/**
 * A frequency word that what the shop has counted speaks against. The better word is offered and never written: that is a change
 * for somebody to review, who knows which cars came in.
 */
export const countsContradictWord: ShelfRule = {
  id: 'counts-contradict-word',
  level: 'warning',
  on: 'shelf',
  check: (shelf) => [...causeFaults(shelf), ...readingFaults(shelf)],
};

function causeFaults({ records, counts }: DraftShelf): Fault[] {
  return Object.entries(counts.causes).flatMap(([symptom, counted]) => {
    const entry = records.symptom.get(symptom);
    if (!entry) return [];
    const weighed = byWords(entry.data);
    const of = sum(Object.values(counted));
    return [...weighed.weights.keys()].flatMap((cause): Fault[] => {
      const n = counted[cause] ?? 0;
      const better = nearestWord(sharesByWord(weighed, cause), n, of);
      const word = entry.data.causes[cause];
      if (better === undefined || better === word) return [];
      if (!countsContradict(shareOf(weighed, cause), n, of)) return [];
      return [
        fault({ file: entry.file, path: ['causes', cause] }, `It was behind ${n} of ${of} finished jobs`, {
          n,
          of,
          word: String(word),
          share: shareOf(weighed, cause),
          better,
        }),
      ];
    });
  });
}

function readingFaults({ records, counts }: DraftShelf): Fault[] {
  const words = Object.entries(LIKELIHOOD_WORDS).filter(([, chance]) => chance > 0 && chance < 1);
  return Object.entries(counts.readings).flatMap(([cause, tests]) =>
    Object.entries(tests).flatMap(([id, counted]) => {
      const test = records.test.get(id);
      const of = sum(Object.values(counted));
      return Object.entries(test?.data.evidence[cause] ?? {}).flatMap(([outcome, written]): Fault[] => {
        const share = typeof written === 'number' ? written : LIKELIHOOD_WORDS[written];
        const n = counted[outcome] ?? 0;
        const better = nearestWord(words, n, of);
        if (!test || better === undefined || better === written || !countsContradict(share, n, of)) return [];
        return [
          fault(
            { file: test.file, path: ['evidence', cause, outcome] },
            `It was seen on ${n} of ${of} finished jobs with this cause`,
            { n, of, word: String(written), share, better },
          ),
        ];
      });
    }),
  );
}

interface Contradiction {
  n: number;
  of: number;
  word: string;
  share: number;
  better: string;
}

function fault(at: Fault['at'], says: string, { n, of, word, share, better }: Contradiction): Fault {
  const { low, high } = exactInterval(n, of);
  return {
    at,
    found: `${says}; "${word}" means ${percent(share)} here.`,
    expected: `So many jobs allow ${percent(low)} to ${percent(high)} (95 % interval, also with any one job left out). "${better}" is nearest.`,
    byHand: `propose "${better}" with these counts in the text, or say in a note why the cars of this shop are others`,
  };
}

/** Share of all cars with the complaint, something else included. */
function shareOf({ weights, somethingElse }: CauseWeights, cause: string): number {
  return ((weights.get(cause) ?? 0) / sum(weights.values())) * (1 - somethingElse);
}

/** What each word would make of a cause's share, the other words as they are. */
function sharesByWord({ weights, somethingElse }: CauseWeights, cause: string) {
  const others = sum(weights.values()) - (weights.get(cause) ?? 0);
  return Object.entries(PRIOR_WORDS).map(
    ([word, weight]) => [word, (weight / (weight + others)) * (1 - somethingElse)] as const,
  );
}

function percent(share: number): string {
  const value = share * 100;
  return `${value < 10 ? value.toFixed(1) : value.toFixed(0)} %`;
}

function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
