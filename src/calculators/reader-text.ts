/** A metric figure written in a text, such as a hint, in the units this reader has. */
import { type Habit, METRIC } from '../model/habit.ts';
import { findUnit, toSI } from '../model/units.ts';
import type { Shower } from './declaration.ts';
import { showerFor } from './reader-units.ts';

const NUMBER = '[−-]?\\d+(?:\\.\\d+)?';
/** A number or a range with a unit that some reader has another for. A unit with a stroke or a power behind it is another unit. */
const FIGURE = new RegExp(
  `(?<![\\p{L}\\d.])(${NUMBER})(?:( to )(${NUMBER}))?[ \\u00a0](K|°C|bar|N·m|mm|l)(?![\\p{L}\\d·/²³])`,
  'gu',
);

/** The text with its metric figures turned into the reader's; unchanged for a metric reader. A step no finer than written. */
export function textFor(text: string, habit: Habit): string {
  if (habit === METRIC) return text;
  const show = showerFor(habit);
  return text.replace(
    FIGURE,
    (_, first: string, to: string | undefined, second: string | undefined, unit: string) => {
      const decimals = Math.max(...[first, second ?? ''].map((each) => each.split('.')[1]?.length ?? 0));
      const ends = to === undefined ? [first] : [first, second ?? first];
      return shown(ends.map(numberIn), unit, decimals, show);
    },
  );
}

function shown(ends: number[], unit: string, decimals: number, show: Shower): string {
  const [low = 0, high = low] = ends;
  if (unit === 'K') {
    const [a, b] = [low, high].map((each) => show.difference(each, decimals));
    return a === b ? `${a}` : `${a?.replace(/\u00a0.*/, '')} to ${b}`;
  }
  const known = findUnit(unit);
  return known
    ? show.range(toSI(low, known), toSI(high, known), unit, decimals)
    : `${low} to ${high} ${unit}`;
}

function numberIn(text: string): number {
  return Number(text.replace('−', '-'));
}
