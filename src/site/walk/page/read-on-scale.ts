/** A typed reading on the scale of a test: the answer it chooses, or why it cannot. Pure. */
import { figureLookup, generalRange } from '../../../model/figure-lookup.ts';
import type { Habit } from '../../../model/habit.ts';
import type { Layout } from '../../../model/layout.ts';
import { type Quantity, readQuantity } from '../../../model/quantity.ts';
import { outcomeOfReading, readLimit, type ScaledTest } from '../../../model/scale.ts';
import { quantityText, showQuantity } from '../../../model/show-quantity.ts';
import { findUnit } from '../../../model/units.ts';
import type { ReadingScale } from '../reading-scale.ts';

export type ReadOnScale =
  /** `reading` as it is kept: number and unit. */
  { ok: true; outcome: string; reading: string; general: string[] } | { ok: false; says: string };

/** What is known of the vehicle: its figures by path and its layout. */
export interface VehicleFigures {
  figures: Readonly<Record<string, { quantity: Quantity }>>;
  layout: Partial<Layout>;
}

/** The unit beside the field: the test's own, or the reader's for what it measures. */
export function unitShown({ unit }: ReadingScale, habit: Habit): string {
  const { dimension } = findUnit(unit) ?? { dimension: 'plain' as const };
  return showQuantity({ dimension, low: 0, high: 0, unit, decimals: 1 }, habit).unit;
}

/**
 * @param typed a number, with its unit or without
 * @param label of an outcome, for the sentence that says what the reading lies between
 */
export function readOnScale(
  scale: ReadingScale,
  typed: string,
  habit: Habit,
  vehicle: VehicleFigures | undefined,
  label: (outcome: string) => string,
): ReadOnScale {
  const unit = unitShown(scale, habit);
  const { dimension } = findUnit(scale.unit) ?? { dimension: 'plain' as const };
  const read = readQuantity(typed, dimension, unit);
  if (!read.ok) return { ok: false, says: `${read.fault.found} Type ${read.fault.expected}.` };
  const { quantity } = read;
  if (quantity.low !== quantity.high) return { ok: false, says: 'Type one number, the one that was read.' };
  const own = Object.fromEntries(
    Object.entries(vehicle?.figures ?? {}).map(([path, figure]) => [path, { is: figure.quantity }]),
  );
  const answer = outcomeOfReading(bandedOf(scale), quantity.low, figureLookup(own, vehicle?.layout ?? {}));
  if (answer.is === 'outcome')
    return {
      ok: true,
      outcome: answer.outcome,
      reading: quantityText(quantity).replaceAll('\u00a0', ' '),
      general: answer.general.map(nameOf),
    };
  if (answer.is === 'no scale')
    return { ok: false, says: 'No answer takes this reading: choose one yourself.' };
  const between = answer.between.map((outcome) => `“${label(outcome)}”`).join(' or ');
  const figures = answer.figures.map(nameOf).join(' and ');
  return {
    ok: false,
    says: `${between}: that depends on this vehicle’s ${figures}, which is not known here. Choose the answer yourself.`,
  };
}

function bandedOf({ bands }: ReadingScale): ScaledTest {
  const limitOf = (text: string | undefined) => {
    const read = text === undefined ? undefined : readLimit(text);
    return read?.ok ? read.limit : undefined;
  };
  return {
    outcomes: Object.fromEntries(
      Object.entries(bands).map(([outcome, { from, to }]) => [
        outcome,
        { from: limitOf(from), to: limitOf(to) },
      ]),
    ),
  };
}

function nameOf(path: string): string {
  const label = generalRange(path)?.label ?? path;
  return label.charAt(0).toLowerCase() + label.slice(1);
}
