import { within } from './out-of-range.ts';

/**
 * Shares under the best (compression) or lost (leak-down): even below the first, one is low from the second on. The records of
 * both tests go by the same. Common practice, no source.
 */
export const EVEN_BELOW = 0.15;
export const LOW_FROM = 0.25;
/** A gauge or a tester is read to this share, twice. Common practice, no source. */
export const READ_TO = 0.02;
/** One that stands so far above the middle of the others has liquid in it, as a share. Common practice, no source. */
const TOO_HIGH = 0.15;
/**
 * Compression of an engine in order, Pa: one above others below the least stands out because they are poor. One that is
 * itself within the most is good and the others low, as soon as they are low by their share. Common practice, no source.
 */
export const IN_ORDER = {
  petrol: { least: 8e5, most: 14e5 },
  diesel: { least: 18e5, most: 34e5 },
} as const;
/** An even engine over the most in order by this share reads too high to be petrol or diesel as said, as a share. Common practice, no source. */
export const TOO_GOOD = 0.15;
/** Leak-down of all cylinders within this of each other is one cause for all of them, as a share. Common practice, no source. */
const LEAK_DOWN_ALIKE = 0.1;
const SLACK = 1e-9;

export interface CylinderSpread {
  /** Share by which each is under the best, or lost by it; 0 to 1, in the order given. */
  readonly under: readonly number[];
  /** The largest of them. */
  readonly worst: number;
  readonly verdict: 'even' | 'undecided' | 'low';
  /** Places, from 0, of those that are low; where none is, of those that are in doubt. */
  readonly low: readonly number[];
  /** Of the low ones, the first two that lie beside each other. */
  readonly neighbours?: readonly [number, number];
  /** The place of one that stands far above the others. */
  readonly high?: number;
  /** Three or more are in doubt or low, every one of them by about the same. */
  readonly alike?: true;
}

/**
 * How far the cylinders are apart by their compression.
 *
 * Share under the best. Absolute pressure says little: battery, throttle and gauge move all of them alike.
 * @param pressures gauge at the end of cranking, two to twelve in the order of the engine, 0 to 10 MPa, the best above 0.1 MPa
 * @param inOrder compression of such an engine in order
 * @throws OutOfRange on any figure
 */
export function compressionSpread(
  pressures: readonly number[],
  inOrder: { readonly least: number; readonly most: number } = IN_ORDER.petrol,
): CylinderSpread {
  within('number of cylinders', pressures.length, 2, 12, '1');
  const read = pressures.map((each) => within('compression', each, 0, 10e6, 'Pa'));
  const best = within('best compression', Math.max(...read), 0.1e6, 10e6, 'Pa');
  const spread = spreadOf(read.map((each) => 1 - each / best));
  const high = best <= inOrder.most && spread.verdict === 'low' ? undefined : highOne(read, inOrder.least);
  return {
    ...spread,
    ...(high !== undefined && { high }),
  };
}

/**
 * Leak-down: what each cylinder loses, held against the same limits.
 *
 * @param losses shares of the air fed in, two to twelve in the order of the engine, 0 to 1
 * @throws OutOfRange on any figure
 */
export function leakDownSpread(losses: readonly number[]): CylinderSpread {
  within('number of cylinders', losses.length, 1, 12, '1');
  const spread = spreadOf(losses.map((each) => within('loss', each, 0, 1, '1')));
  const alike =
    losses.length > 2 &&
    Math.min(...losses) >= EVEN_BELOW - SLACK &&
    spread.worst - Math.min(...losses) <= LEAK_DOWN_ALIKE + SLACK;
  return { ...spread, ...(alike && { alike }) };
}

function spreadOf(under: readonly number[]): CylinderSpread {
  const worst = Math.max(...under);
  const verdict = worst >= LOW_FROM - SLACK ? 'low' : worst >= EVEN_BELOW - SLACK ? 'undecided' : 'even';
  const from = verdict === 'low' ? LOW_FROM : verdict === 'undecided' ? EVEN_BELOW : Number.POSITIVE_INFINITY;
  const low = under.flatMap((each, at) => (each >= from - SLACK ? [at] : []));
  const first = low.find((at) => low.includes(at + 1));
  return {
    under,
    worst,
    verdict,
    low,
    ...(first !== undefined && { neighbours: [first, first + 1] as const }),
  };
}

/** The one that stands above all others, by more than they differ among themselves, they being in order. */
function highOne(read: readonly number[], leastInOrder: number): number | undefined {
  if (read.length < 3) return undefined;
  const best = Math.max(...read);
  const others = read.toSpliced(read.indexOf(best), 1);
  const [second, least] = [Math.max(...others), Math.min(...others)];
  if (second <= leastInOrder) return undefined;
  return best >= second * (1 + TOO_HIGH) - SLACK && least >= second * (1 - EVEN_BELOW)
    ? read.indexOf(best)
    : undefined;
}
