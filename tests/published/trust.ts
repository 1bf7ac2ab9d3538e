import { type Comparison, compare } from './compare.ts';
import { OURS } from './ours/all.ts';
import { TABLES } from './tables.ts';

/** How near ours comes to one source for one quantity. */
export interface TrustLine {
  readonly quantity: string;
  readonly source: string;
  readonly kind: Comparison['kind'];
  /** Unit of the deviations. */
  readonly unit: string;
  /** Outside figures compared. */
  readonly n: number;
  /** Of the deviations without sign. */
  readonly mean: number;
  /** Nine in ten are at most this. */
  readonly p90: number;
  readonly largest: number;
  /** Largest that passes. */
  readonly accept: number;
  /** Why that much. */
  readonly why: string;
  /** What is said of the figures that miss it; empty when none does. */
  readonly explained: string;
}

/** Every outside figure beside ours. */
export function compareAll(): readonly Comparison[] {
  return TABLES.flatMap((table) => compare(table, OURS));
}

/** One line per quantity and source, in order of the tables. */
export function summarise(comparisons: readonly Comparison[]): readonly TrustLine[] {
  const groups = new Map<string, Comparison[]>();
  for (const comparison of comparisons) {
    const { quantity, source, kind, unit } = comparison;
    const key = [quantity, source, kind, unit].join('\n');
    groups.set(key, [...(groups.get(key) ?? []), comparison]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first ? [lineOf(first, group)] : [];
  });
}

function lineOf(first: Comparison, group: readonly Comparison[]): TrustLine {
  const sizes = group.map(({ deviation }) => Math.abs(deviation)).toSorted((a, b) => a - b);
  const missed = group.filter((c) => Math.abs(c.deviation) > c.accept);
  return {
    quantity: first.quantity,
    source: first.source,
    kind: first.kind,
    unit: first.unit,
    n: group.length,
    mean: rounded(sizes.reduce((sum, size) => sum + size, 0) / sizes.length),
    p90: rounded(sizes[Math.ceil(0.9 * sizes.length) - 1] ?? 0),
    largest: rounded(sizes.at(-1) ?? 0),
    accept: Math.max(...group.map(({ accept }) => accept)),
    why: [...new Set(group.map(({ why }) => why))].join('; '),
    explained: [...new Set(missed.map(({ explained }) => explained?.why ?? 'not explained'))].join('; '),
  };
}

/** Two digits, and nothing where only the last bits of a double differ, so that machines agree on the file. */
function rounded(value: number): number {
  return value < 1e-7 ? 0 : Number(value.toPrecision(2));
}
