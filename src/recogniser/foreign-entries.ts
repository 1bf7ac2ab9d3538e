/** Entries of a word group that the complaints use for something else than the rest of the group. */
import type { LearntWords } from './learn.ts';
import { stemOf } from './stem.ts';
import type { WordGroups } from './thesaurus.ts';
import { clausesOf } from './words.ts';

export interface ForeignEntry {
  group: string;
  entry: string;
  /** Its place in the group. */
  at: number;
  /** Texts it stands in. */
  used: number;
  /** The complaint that the rest of the group is met with most. */
  home: string;
}

/** Fewer texts may lie where they lie by chance. */
const LEAST_TEXTS = 4;
const LEAST_TEXTS_OF_REST = 12;
/** A complaint that has less than this share of the group's texts is none that the group is met with. */
const HARDLY = 0.02;
/** Share of an entry's texts that lie with such complaints. */
const FOREIGN = 0.75;

/** Texts by complaint. */
type Uses = Map<number, number>;

/** Entries that are used mostly where the rest of their group is hardly met, in the order of the groups. */
export function foreignEntries(
  { texts, counts, thesaurus }: LearntWords,
  groups: WordGroups,
): ForeignEntry[] {
  const uses = usesOf({ texts, counts, thesaurus });
  return Object.entries(groups).flatMap(([group, entries]) => {
    const whole: Uses = new Map();
    for (const entry of entries)
      for (const [column, n] of uses.get(`${group}/${entry}`) ?? []) add(whole, column, n);
    return entries.flatMap((entry, at) => {
      const own = uses.get(`${group}/${entry}`);
      if (!own) return [];
      const used = sumOf(own);
      const ofRest = sumOf(whole) - used;
      if (used < LEAST_TEXTS || ofRest < LEAST_TEXTS_OF_REST) return [];
      const rest = new Map([...whole].map(([column, n]) => [column, n - (own.get(column) ?? 0)]));
      const abroad = [...own].filter(([column]) => (rest.get(column) ?? 0) / ofRest < HARDLY);
      if (sumOf(new Map(abroad)) / used < FOREIGN) return [];
      const [home] = [...rest].sort(([, a], [, b]) => b - a)[0] ?? [];
      return [{ group, entry, at, used, home: counts.classes[home ?? -1] ?? '' }];
    });
  });
}

/** "group/entry" -> its texts by complaint. */
function usesOf({
  texts,
  counts,
  thesaurus,
}: Pick<LearntWords, 'texts' | 'counts' | 'thesaurus'>): Map<string, Uses> {
  const uses = new Map<string, Uses>();
  for (const { text, column } of texts) {
    if (column === counts.classes.length) continue;
    for (const name of entriesIn(text, thesaurus)) {
      const known = uses.get(name) ?? new Map<number, number>();
      add(known, column, 1);
      uses.set(name, known);
    }
  }
  return uses;
}

function entriesIn(text: string, thesaurus: LearntWords['thesaurus']): Set<string> {
  const found = new Set<string>();
  for (const clause of clausesOf(text)) {
    const stems = clause.map(({ word }) => stemOf(word));
    for (let at = 0; at < stems.length; ) {
      const match = thesaurus.at(stems, at);
      for (const { group, text: entry } of match?.entries ?? []) found.add(`${group}/${entry}`);
      at += match?.length ?? 1;
    }
  }
  return found;
}

function add(uses: Uses, column: number, n: number): void {
  uses.set(column, (uses.get(column) ?? 0) + n);
}

function sumOf(uses: Uses): number {
  return [...uses.values()].reduce((a, b) => a + b, 0);
}
