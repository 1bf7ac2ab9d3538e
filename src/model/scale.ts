/**
 * Outcomes that are cut from a scale: each has a band of it, from one limit to the next. A limit is written as a
 * quantity (`15 K`), or as a figure of the vehicle, with a factor or an offset where it is not the figure itself:
 * `{fan.on}`, `{thermostat.opens} - 5 K`, `0.75 × {fan.current}`.
 */
import { type Quantity, type QuantityFault, readQuantity } from './quantity.ts';
import { type Dimension, findUnit } from './units.ts';

/** A limit of a band: factor × figure + offset, or the offset alone where no figure is named. */
export interface Limit {
  /** As written. */
  text: string;
  /** Path of a figure of the vehicle. */
  figure?: string;
  /** What the figure is multiplied with; 1 where nothing is written. */
  times: number;
  /** SI. The value itself where no figure is named. */
  plus: number;
  /** What stands behind the number; a figure by itself has none. */
  unit?: string;
}

export type LimitResult = { ok: true; limit: Limit } | { ok: false; fault: QuantityFault };

const FIGURE_LIMIT = /^(?:(\d+(?:\.\d+)?)\s*[×x*]\s*)?\{\s*([^{}]+?)\s*\}\s*(?:([+\-−])\s*(.+))?$/;
const WRITTEN_UNIT = /\d\s*(\D*)$/;

/** What a limit may look like, for messages. */
const FORMS = 'a quantity such as 15 K, or a figure of the vehicle such as {thermostat.opens} - 5 K';

/** Reads one limit. Whether its figure exists and fits the scale is not looked at here. */
export function readLimit(text: string): LimitResult {
  const written = text.trim();
  const [match, factor, figure, sign, offset] = FIGURE_LIMIT.exec(written) ?? [];
  if (match === undefined) {
    const read = readSingle(written);
    return 'fault' in read ? { ok: false, fault: read.fault } : limit(written, { times: 1, ...read });
  }
  const times = factor === undefined ? 1 : Number(factor);
  if (!(times > 0)) return unreadable(`"${written}" multiplies with nothing.`);
  if (offset === undefined) return limit(written, { figure, times, plus: 0 });
  const read = readSingle(offset);
  if ('fault' in read) return { ok: false, fault: read.fault };
  // A temperature is not an amount to go up or down by.
  if (findUnit(read.unit)?.dimension === 'temperature')
    return {
      ok: false,
      fault: {
        rule: 'wrong-unit',
        found: `"${written}" goes up or down by a temperature.`,
        expected: 'the difference in K, such as {thermostat.opens} - 5 K',
      },
    };
  return limit(written, { figure, times, ...read, plus: sign === '+' ? read.plus : -read.plus });
}

/** One number with its unit, whatever it measures. */
function readSingle(text: string): { plus: number; unit: string } | { fault: QuantityFault } {
  const unit = findUnit(WRITTEN_UNIT.exec(text)?.[1] ?? '');
  const dimension: Dimension = unit?.dimension ?? 'plain';
  const read = readQuantity(text, dimension);
  if (!read.ok) return { fault: { ...read.fault, expected: FORMS } };
  const { low, high } = read.quantity;
  if (low !== high) return unreadable(`"${text}" is a range, and a limit is one number.`);
  return { plus: low, unit: read.quantity.unit };
}

function limit(text: string, parts: Omit<Limit, 'text' | 'figure'> & { figure?: string | undefined }) {
  const { figure, ...rest } = parts;
  return { ok: true as const, limit: { text, ...(figure !== undefined && { figure }), ...rest } };
}

function unreadable(found: string): { ok: false; fault: QuantityFault } {
  return { ok: false, fault: { rule: 'unreadable-quantity', found, expected: FORMS } };
}

/** A figure of the vehicle, or the general range where the vehicle has none of its own. */
export interface FoundFigure {
  quantity: Quantity;
  /** The range usual over all vehicles, not this one's. */
  isGeneral: boolean;
}

/** Looks a figure up by its path; undefined where neither the vehicle nor the shelf has one. */
export type FigureLookup = (path: string) => FoundFigure | undefined;

/** Where a limit lies, SI: low and high differ where only the general range of its figure is known. */
export interface LimitValue {
  low: number;
  high: number;
  /** Path of the figure that would have to be known of this vehicle. */
  needs?: string;
}

/**
 * The value of a limit. A vehicle's own figure that is a range counts as its middle; a general range stays a range,
 * since this vehicle's figure may lie anywhere in it; a figure that nobody knows lies anywhere at all.
 */
export function limitValue({ figure, times, plus }: Limit, lookup: FigureLookup): LimitValue {
  if (figure === undefined) return { low: plus, high: plus };
  const found = lookup(figure);
  if (!found) return { low: -Infinity, high: Infinity, needs: figure };
  const { low, high } = found.quantity;
  if (found.isGeneral) return { low: times * low + plus, high: times * high + plus, needs: figure };
  const value = (times * (low + high)) / 2 + plus;
  return { low: value, high: value };
}

/** What the outcomes of a test say of its scale. */
export interface ScaledTest {
  outcomes: Readonly<Record<string, { from?: Limit | undefined; to?: Limit | undefined }>>;
}

/** The outcomes of a test that are cut from its scale, in the order they stand. */
export function bandsOf({ outcomes }: ScaledTest): { outcome: string; from?: Limit; to?: Limit }[] {
  return Object.entries(outcomes).flatMap(([outcome, { from, to }]) =>
    from || to ? [{ outcome, ...(from && { from }), ...(to && { to }) }] : [],
  );
}

export type ReadingAnswer =
  /** `general` names figures taken from their general range; wherever in it they lie, the answer is the same. */
  | { is: 'outcome'; outcome: string; general: string[] }
  /** The reading may be either of these: it depends on figures of the vehicle that are not known. */
  | { is: 'needs figures'; between: string[]; figures: string[] }
  /** The test has no scale. */
  | { is: 'no scale' };

/**
 * The outcome that a reading falls into. A limit belongs to the band it starts.
 * @param test its outcomes with their limits; limits that tile the scale give exactly one outcome
 * @param valueSI the reading, SI (a temperature in kelvin)
 */
export function outcomeOfReading(test: ScaledTest, valueSI: number, lookup: FigureLookup): ReadingAnswer {
  const bands = bandsOf(test).map(({ outcome, from, to }) => ({
    outcome,
    from: from && limitValue(from, lookup),
    to: to && limitValue(to, lookup),
  }));
  const fits = bands.filter(
    ({ from, to }) => valueSI >= (from?.low ?? -Infinity) && valueSI < (to?.high ?? Infinity),
  );
  const needed = [...new Set(fits.flatMap(({ from, to }) => [from?.needs ?? [], to?.needs ?? []].flat()))];
  const [first, ...others] = fits;
  if (!first) return { is: 'no scale' };
  if (others.length > 0)
    return { is: 'needs figures', between: fits.map(({ outcome }) => outcome), figures: needed };
  return { is: 'outcome', outcome: first.outcome, general: needed };
}
