import { OutOfRange, within } from './out-of-range.ts';

/** A visit that lies so shortly before the change is the change: days of three months, metres of 5,000 km. Common practice, no source. */
export const AT_THIS_VISIT = { months: 3, distance: 5e6 } as const;

const MILLISECONDS = 86_400_000;
/** Days of the Julian year, over which a pace is spread. */
const YEAR_DAYS = 365.25;
/** Shorter than this nothing is said of a pace, days. */
const LEAST_DAYS = 30;
/** Nor of a car that hardly moved, m. */
const LEAST_DRIVEN = 1e3;
/** A car driven faster than this is a slip of the pen, m in a year. */
const MOST_A_YEAR = 400e6;

/** A day of the calendar, as 2026-11-30. */
export type Day = string;

/** @throws OutOfRange for what is no day of the calendar */
function numberOf(day: Day): number {
  const at = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(at)) throw new OutOfRange('day', Number.NaN, [1980, 2100], 'year');
  return at / MILLISECONDS;
}

function dayOf(number: number): Day {
  return new Date(number * MILLISECONDS).toISOString().slice(0, 10);
}

/** Days from one to the other; negative when the other lies before. @throws OutOfRange for what is no day */
export function daysBetween(from: Day, to: Day): number {
  return numberOf(to) - numberOf(from);
}

/**
 * The same day so many months on; the last of the month where that has no such day.
 *
 * Gregorian calendar, as ISO 8601.
 * @param months whole, −1,200 to 1,200
 * @throws OutOfRange for what is no day, or for months that are not whole
 */
export function monthsAfter(day: Day, months: number): Day {
  const by = within('months', months, -1200, 1200, '1');
  if (!Number.isInteger(by)) throw new OutOfRange('months', months, [-1200, 1200], '1');
  const from = new Date(numberOf(day) * MILLISECONDS);
  const [year, month, date] = [from.getUTCFullYear(), from.getUTCMonth() + by, from.getUTCDate()];
  const lastOfMonth = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return dayOf(Date.UTC(year, month, Math.min(date, lastOfMonth)) / MILLISECONDS);
}

/** What is known of the last change and of the interval. */
export interface ChangeInterval {
  readonly last: Day;
  /** Whole months, 1 to 240. */
  readonly months: number;
  /** Metres that the interval allows besides. */
  readonly distance?: number;
  /** Metres driven in a year. */
  readonly pace?: number;
  /** The last look at its odometer: what was driven since the change, in metres. */
  readonly seen?: { readonly day: Day; readonly driven: number };
}

/** When coolant is due. */
export interface NextChange {
  /** By the calendar. */
  readonly byCalendar: Day;
  /** When the distance is driven at the pace; absent where either is not known. */
  readonly byDistance?: Day;
  /** The earlier of them. */
  readonly first: Day;
}

/**
 * The day on which coolant is to be changed: months or distance, whichever comes first.
 *
 * The maker's interval from the day of the last change. The day of the distance is as good as the pace: a tenth more a year is a tenth sooner.
 * @throws OutOfRange on any figure
 */
export function nextChange({ last, months, distance, pace, seen }: ChangeInterval): NextChange {
  const byCalendar = monthsAfter(last, within('interval', months, 1, 240, 'months'));
  if (distance === undefined || pace === undefined) return { byCalendar, first: byCalendar };
  // What the odometer shows goes before any pace: only what is left is reckoned with it.
  const { day, driven } = seen ?? { day: last, driven: 0 };
  const left =
    within('interval', distance, 1e6, 2e9, 'm') - within('distance driven', driven, 0, Infinity, 'm');
  const years = left / within('distance a year', pace, 1, MOST_A_YEAR, 'm');
  // A car that hardly moves is not waited for past the calendar of this century.
  const byDistance = dayOf(numberOf(day) + Math.round(Math.max(-100, Math.min(years, 100)) * YEAR_DAYS));
  // Days written year first sort as they come.
  const [first = byCalendar] = [byCalendar, byDistance].toSorted();
  return { byCalendar, byDistance, first };
}

/**
 * Metres a year from two readings of the odometer; undefined where they lie less than 30 days or 1 km apart.
 *
 * @param driven 0 m and more
 * @throws OutOfRange on a distance below nought, or more than 400,000 km a year
 */
export function paceOf(from: Day, to: Day, driven: number): number | undefined {
  const days = daysBetween(from, to);
  const metres = within('distance driven', driven, 0, Infinity, 'm');
  if (days < LEAST_DAYS || metres < LEAST_DRIVEN) return undefined;
  return within('distance a year', (metres / days) * YEAR_DAYS, 0, MOST_A_YEAR, 'm');
}
