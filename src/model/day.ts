/** The day of the place where it is asked, not of Greenwich. */

/** A number with two digits at least, as in a time: 7 is 07. */
export const twoDigits = (value: number) => String(value).padStart(2, '0');

/** The day, such as 2026-11-25. @param moment a date, or a moment in ISO form */
export function dayText(moment: Date | string): string {
  const at = new Date(moment);
  return `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`;
}
