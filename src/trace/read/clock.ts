/**
 * The time column: seconds, milliseconds, minutes, hh:mm:ss, ISO 8601, Unix epoch, spreadsheet days. A time of day
 * goes on past midnight; only ISO dates are counted as days, because 3/4 is two days in two countries.
 */
import { type DecimalMark, readNumber } from './number-text.ts';
import { type LogUnit, unitNamed, unitsFor } from './roles.ts';

export type ClockForm =
  /** Seconds are value × factor. */
  | { kind: 'count'; unit: LogUnit }
  /** Unix epoch; each value is so many seconds. */
  | { kind: 'epoch'; factor: number }
  /** h:mm:ss somewhere in the cell. */
  | { kind: 'time of day' }
  /** m:ss, or h:mm when each is 60 s. */
  | { kind: 'two parts'; smaller: 1 | 60 }
  | { kind: 'iso date' };

const THREE_PARTS = /(?:^|[^\d:])(\d{1,3}):(\d{2}):(\d{2}(?:[.,:]\d+)?)\s*([ap]\.?m\.?)?/i;
const TWO_PARTS = /^\s*(\d{1,3}):(\d{2}(?:[.,]\d+)?)\s*$/;
const ISO =
  /^\s*(\d{4})-(\d{2})-(\d{2})[T ](\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*(Z|[+-]\d{2}:?\d{2})?\s*$/i;

/** Seconds of one cell by a form. @returns NaN when it cannot be read so */
export function readClock(text: string, form: ClockForm, mark: DecimalMark): number {
  switch (form.kind) {
    case 'count':
      return readNumber(text, mark) * form.unit.factor;
    case 'epoch':
      return readNumber(text, mark) * form.factor;
    case 'two parts': {
      const match = TWO_PARTS.exec(text);
      if (!match) return readClock(text, { kind: 'time of day' }, mark);
      return (Number(match[1]) * 60 + Number(match[2]?.replace(',', '.'))) * form.smaller;
    }
    case 'time of day': {
      const match = THREE_PARTS.exec(text);
      if (!match) return Number.NaN;
      const half = match[4]?.toLowerCase().startsWith('p') ? 12 : 0;
      const hours = match[4] ? (Number(match[1]) % 12) + half : Number(match[1]);
      return hours * 3600 + Number(match[2]) * 60 + Number(match[3]?.replace(/[,:]/, '.'));
    }
    case 'iso date': {
      const match = ISO.exec(text);
      if (!match) return Number.NaN;
      const [, year, month, day, hour, minute, second = '0', zone = 'Z'] = match;
      const date = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute));
      const east = /^[+-]/.test(zone) ? zoneSeconds(zone) : 0;
      return date / 1000 + Number(second.replace(',', '.')) - east;
    }
  }
}

function zoneSeconds(zone: string): number {
  const digits = zone.replace(/\D/g, '');
  const size = Number(digits.slice(0, 2)) * 3600 + Number(digits.slice(2)) * 60;
  return zone.startsWith('-') ? -size : size;
}

/**
 * The form most cells of a column have, or undefined when it is no time column.
 * @param unitText unit from the header or the line under it, or as the person says
 */
export function clockFormOf(
  cells: readonly string[],
  unitText: string,
  mark: DecimalMark,
): ClockForm | undefined {
  const filled = cells.filter((cell) => cell.trim() !== '');
  const most = (test: (cell: string) => boolean) =>
    filled.length > 1 && filled.filter(test).length > 0.6 * filled.length;
  if (most((cell) => ISO.test(cell))) return { kind: 'iso date' };
  if (most((cell) => THREE_PARTS.test(cell))) return { kind: 'time of day' };
  if (most((cell) => TWO_PARTS.test(cell)))
    return { kind: 'two parts', smaller: /h+:m+|^min|^h/i.test(unitText) ? 60 : 1 };
  const numbers = filled.map((cell) => readNumber(cell, mark)).filter(Number.isFinite);
  if (!most((cell) => Number.isFinite(readNumber(cell, mark)))) return undefined;
  return numberForm(numbers, unitText);
}

function numberForm(numbers: readonly number[], unitText: string): ClockForm {
  const [second, ...others] = unitsFor('time');
  if (!second) throw new Error('There is no unit of time');
  const named = unitNamed('time', unitText);
  const middle = median(numbers);
  if (middle > 1e17) return { kind: 'epoch', factor: 1e-9 };
  if (middle > 1e14) return { kind: 'epoch', factor: 1e-6 };
  if (middle > 1e11) return { kind: 'epoch', factor: 1e-3 };
  if (middle > 4e8) return { kind: 'epoch', factor: 1 };
  if (named) return { kind: 'count', unit: named };
  const steps = numbers.slice(1).map((value, at) => value - (numbers[at] ?? value));
  const step = median(steps.filter((each) => each > 0));
  const unitCalled = (symbol: string) => others.find((each) => each.symbol === symbol) ?? second;
  // Spreadsheets count days; a step far under a thousandth is a few seconds.
  if (middle > 20000 && middle < 80000 && step < 0.002) return { kind: 'count', unit: unitCalled('days') };
  // A sample every two minutes and more, in whole numbers, is milliseconds.
  const whole = numbers.every(Number.isInteger);
  return { kind: 'count', unit: whole && step > 120 ? unitCalled('ms') : second };
}

/** The middle value, of an even number the mean of the middle two; NaN of none. */
export function median(values: readonly number[]): number {
  if (values.length === 0) return Number.NaN;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}

/** How a form is said to the person. */
export function clockWords(form: ClockForm): string {
  switch (form.kind) {
    case 'count':
      return { s: 'seconds', ms: 'milliseconds', min: 'minutes', h: 'hours' }[form.unit.symbol] ?? 'days';
    case 'epoch':
      return 'Unix time';
    case 'time of day':
      return 'time of day or stopwatch, h:mm:ss';
    case 'two parts':
      return form.smaller === 1 ? 'minutes and seconds, m:ss' : 'hours and minutes, h:mm';
    case 'iso date':
      return 'date and time';
  }
}
