/** How often each sign is met with each complaint: all that the recogniser learns. */

export interface Counts {
  /** Ids of the complaints, in the order of the columns; the last column is the heap of what is none of them. */
  readonly classes: readonly string[];
  /** How often each complaint comes in beside the others, in the order of the columns. */
  readonly comesIn: readonly number[];
  /** Sign -> weight by column; columns without it are left out. */
  readonly ofSign: Map<string, Map<number, number>>;
  /** Weight of all signs of a column. */
  readonly total: number[];
  /** Sign -> texts that have it. */
  readonly texts: Map<string, number>;
  /** Signs there are. */
  vocabulary: number;
}

/** A pair with a plain word in it that one text alone has tells about that text and nothing else. */
const LEAST_TEXTS_OF_PAIR = 2;
const PAIR_OF_GROUPS = /^@[^+]+\+@/;

/** Whether a sign is met often enough to be reckoned with. */
export function isTelling(counts: Counts, id: string): boolean {
  return !id.includes('+') || PAIR_OF_GROUPS.test(id) || (counts.texts.get(id) ?? 0) >= LEAST_TEXTS_OF_PAIR;
}

/** @param complaints in the order of the columns; one column more is added for what is none of them */
export function emptyCounts(complaints: readonly { id: string; weight: number }[]): Counts {
  return {
    classes: complaints.map(({ id }) => id),
    comesIn: complaints.map(({ weight }) => weight),
    vocabulary: 0,
    ofSign: new Map(),
    texts: new Map(),
    total: Array.from({ length: complaints.length + 1 }, () => 0),
  };
}

/** Adds a text's signs, or takes them off again when the weight is below nothing. */
export function count(counts: Counts, column: number, ids: Iterable<string>, weight: number): void {
  const { ofSign, total, texts } = counts;
  for (const id of ids) {
    const left = (texts.get(id) ?? 0) + Math.sign(weight);
    if (left > 0) texts.set(id, left);
    else texts.delete(id);
    let columns = ofSign.get(id);
    if (!columns) {
      columns = new Map();
      ofSign.set(id, columns);
    }
    const now = (columns.get(column) ?? 0) + weight;
    // What was put on is taken off in the same steps: next to nothing is nothing.
    if (now > 1e-9) columns.set(column, now);
    else columns.delete(column);
    if (columns.size === 0) ofSign.delete(id);
    total[column] = (total[column] ?? 0) + weight;
  }
  counts.vocabulary = ofSign.size;
}
