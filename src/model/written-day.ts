/** Days as people write them: 30.11.2026, 30/11/2026, 11/30/2026, 2026/11/30. */

const YEAR_FIRST = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/;
const YEAR_LAST = /^(\d{1,2})([-./])(\d{1,2})\2(\d{4})$/;

/** What a text is read as, or the two days that it could be. */
export type WrittenDay = { day: string } | { either: [string, string] };

/**
 * A day written with its year in full, as 2026-11-30. Points stand between day and month in that order; with a stroke either
 * order is in use, and where both are days of the calendar nothing is guessed.
 * @returns undefined for what is no day
 */
export function writtenDay(text: string): WrittenDay | undefined {
  const plain = text.trim();
  const first = YEAR_FIRST.exec(plain);
  if (first) return only(dayOf(first[1], first[2], first[3]));
  const last = YEAR_LAST.exec(plain);
  if (!last) return undefined;
  const [, one, mark, other, year] = last;
  const dayFirst = dayOf(year, other, one);
  if (mark === '.') return only(dayFirst);
  const monthFirst = dayOf(year, one, other);
  if (dayFirst === undefined || monthFirst === undefined || dayFirst === monthFirst)
    return only(dayFirst ?? monthFirst);
  return { either: [dayFirst, monthFirst] };
}

function only(day: string | undefined): WrittenDay | undefined {
  return day === undefined ? undefined : { day };
}

/** Undefined for a day that the calendar does not have. */
function dayOf(year = '', month = '', day = ''): string | undefined {
  const text = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const at = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(at.getTime()) || at.toISOString().slice(0, 10) !== text ? undefined : text;
}
