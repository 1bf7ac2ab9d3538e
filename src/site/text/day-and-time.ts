/** Dates and times as they are written everywhere on the site: 2026-11-25, 17:48; of the place where it is read. */
import { dayText, twoDigits } from '../../model/day.ts';

/** @param moment a date, or a moment in ISO form */
export function timeText(moment: Date | string): string {
  const at = new Date(moment);
  return `${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
}

/** Day and time here, such as 2026-11-25 14:10. */
export function dayAndTimeText(moment: Date | string): string {
  return `${dayText(moment)} ${timeText(moment)}`;
}
