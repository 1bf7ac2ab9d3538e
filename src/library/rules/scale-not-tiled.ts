import { figureLookup, generalRange } from '../../model/figure-lookup.ts';
import { layoutAllows } from '../../model/layout.ts';
import { bandsOf, type FigureLookup, type Limit, limitValue } from '../../model/scale.ts';
import type { Test } from '../../model/test.ts';
import { type Dimension, findUnit } from '../../model/units.ts';
import type { Vehicle } from '../../model/vehicle.ts';
import type { Fault, Path } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';
import type { Entry } from '../shelf.ts';

/** Outcomes cut from a scale: every reading falls into exactly one of them, on every vehicle, and in the scale's unit. */
export const scaleNotTiled: ShelfRule = {
  id: 'scale-not-tiled',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    const vehicles = [...records.vehicle.values()];
    return [...records.test.values()].flatMap((test) => faultsOf(test, vehicles).slice(0, 1));
  },
};

type Band = ReturnType<typeof bandsOf>[number];

/** In the order in which one is the reason for the next: only the first is worth reading. */
function faultsOf({ file, data }: Entry<'test'>, vehicles: readonly Entry<'vehicle'>[]): Fault[] {
  const bands = bandsOf(data);
  const at = (path: Path) => ({ at: { file, path } });
  if (!data.scale)
    return bands.slice(0, 1).map(({ outcome, from }) => ({
      ...at(['outcomes', outcome, from ? 'from' : 'to']),
      found: 'This outcome has a limit, and the test has no scale.',
      byHand: 'write what is measured and its unit as "scale:", or take the limit out',
    }));
  if (bands.length < 2)
    return [
      {
        ...at(['scale']),
        found: `The test has a scale, and ${bands.length === 0 ? 'no outcome has' : 'one outcome only has'} limits on it.`,
        byHand: 'give the outcomes "from:" and "to:", or take the scale out',
      },
    ];
  const misfits = bands.flatMap((band) =>
    (['from', 'to'] as const).flatMap((end) => {
      const found = misfitOf(band[end], data.scale?.unit ?? '');
      const path = ['outcomes', band.outcome, end];
      return found ? [{ ...at(path), found, byHand: `write the limit in ${data.scale?.unit}` }] : [];
    }),
  );
  if (misfits.length > 0) return misfits;
  const { order, fault } = inOrder(bands);
  if (fault)
    return [
      {
        ...at(['outcomes', fault.outcome, ...(fault.end ? [fault.end] : [])]),
        found: fault.found,
        expected:
          'Bands lie end to end: one has no "from", one has no "to", and each other limit ends one band and starts the next.',
        byHand: 'move the limit, or give the piece that belongs to nothing an outcome of its own',
      },
    ];
  return downwards(data, order, vehicles).map(({ outcome, ...rest }) => ({
    ...at(['outcomes', outcome, 'to']),
    ...rest,
    expected: 'Limits rise from one outcome to the next on every vehicle.',
    byHand: 'choose other limits, or look at the figure of that vehicle',
  }));
}

/** Why a limit does not fit the scale's unit. */
function misfitOf(limit: Limit | undefined, symbol: string): string | undefined {
  if (!limit) return undefined;
  const wanted = findUnit(symbol)?.dimension;
  const amount: Dimension | undefined = wanted === 'temperature' ? 'temperature difference' : wanted;
  const { figure, text, times, unit } = limit;
  if (figure === undefined)
    return unit === symbol ? undefined : `"${text}" is not written in ${symbol}, the unit of the scale.`;
  const dimension = generalRange(figure)?.quantity.dimension;
  if (dimension !== wanted) return `"${text}" is a ${dimension}, and the scale is read in ${symbol}.`;
  if (wanted === 'temperature' && times !== 1) return `"${text}" is a multiple of a temperature.`;
  const offsetIsIn = amount === wanted ? symbol : 'K';
  if (unit !== undefined && unit !== offsetIsIn)
    return `"${text}" goes up or down by ${unit}, and the scale by ${offsetIsIn}.`;
  return undefined;
}

interface OrderFault {
  outcome: string;
  end?: 'from' | 'to';
  found: string;
}

/** The bands from the lowest upwards, by limits that are written alike; the fault where they do not lie end to end. */
function inOrder(bands: readonly Band[]): { order: Band[]; fault?: OrderFault } {
  const order: Band[] = [];
  const lowest = bands.filter(({ from }) => !from);
  const [first, second] = lowest;
  if (!first)
    return {
      order,
      fault: {
        outcome: bands[0]?.outcome ?? '',
        found: 'Every band has a "from": what reads lower is no outcome.',
      },
    };
  if (second) {
    const found = `"${first.outcome}" and "${second.outcome}" both reach down without end.`;
    return { order, fault: { outcome: second.outcome, end: 'to', found } };
  }
  for (let band: Band = first; ; ) {
    order.push(band);
    const { to, outcome } = band;
    const next = to && bands.filter(({ from }) => from && isSame(from, to));
    if (!to || !next) break;
    const [one, other] = next;
    if (!one) return { order, fault: { outcome, end: 'to', found: gapText(band, to, bands) } };
    if (other) {
      const found = `"${one.outcome}" and "${other.outcome}" both start at ${to.text}.`;
      return { order, fault: { outcome: other.outcome, end: 'from', found } };
    }
    if (order.includes(one)) {
      const found = `"${outcome}" ends where "${one.outcome}" starts, which lies below it.`;
      return { order, fault: { outcome, end: 'to', found } };
    }
    band = one;
  }
  const left = bands.find((band) => !order.includes(band));
  if (!left) return { order };
  const found = `"${left.outcome}" overlaps the outcomes that already reach from end to end.`;
  return { order, fault: { outcome: left.outcome, ...(left.from && { end: 'from' as const }), found } };
}

/** What lies at a limit that no band starts at: a hole up to the next band, or a piece that two bands have. */
function gapText({ outcome }: Band, to: Limit, bands: readonly Band[]): string {
  const general = figureLookup({}, {});
  const value = middle(to, general);
  const starts = bands
    .flatMap(({ from, outcome: other }) => (from ? [{ from, other, value: middle(from, general) }] : []))
    .sort((a, b) => Math.abs(a.value - value) - Math.abs(b.value - value));
  const [nearest] = starts;
  if (!nearest) return `"${outcome}" ends at ${to.text}, and nothing follows.`;
  if (nearest.value > value)
    return `What reads from ${to.text} to ${nearest.from.text} is no outcome: a hole between "${outcome}" and "${nearest.other}".`;
  return `What reads from ${nearest.from.text} to ${to.text} is both "${nearest.other}" and "${outcome}".`;
}

function middle(limit: Limit, lookup: FigureLookup): number {
  const { low, high } = limitValue(limit, lookup);
  return (low + high) / 2;
}

function isSame(one: Limit, other: Limit): boolean {
  return one.figure === other.figure && one.times === other.times && Math.abs(one.plus - other.plus) < 1e-9;
}

/** The first place where limits do not rise, on a vehicle the test can be done on or by the general ranges. */
function downwards(
  test: Test,
  order: readonly Band[],
  vehicles: readonly Entry<'vehicle'>[],
): { outcome: string; found: string }[] {
  const who = [
    { name: 'By the general ranges', own: {}, layout: {} },
    ...vehicles
      .filter(({ data }) => layoutAllows(test.layout, data.layout))
      .map(({ id, data }) => ({
        name: `On ${id}`,
        own: data.figures satisfies Vehicle['figures'],
        layout: data.layout,
      })),
  ];
  for (const { name, own, layout } of who) {
    const lookup = figureLookup(own, layout);
    for (const { outcome, from, to } of order)
      if (from && to && middle(from, lookup) >= middle(to, lookup))
        return [{ outcome, found: `${name} the limit ${to.text} does not lie above ${from.text}.` }];
  }
  return [];
}
