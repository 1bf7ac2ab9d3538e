/** The day of the place where it is asked, not of Greenwich. */

const two = (value: number) => String(value).padStart(2, '0');

/** The day, such as 2026-11-25. @param moment a date, or a moment in ISO form */
export function dayText(moment: Date | string): string {
  const at = new Date(moment);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
