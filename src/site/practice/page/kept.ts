/** What the device keeps of practice. */
import { dayText } from '../../../model/day.ts';
import { keep, kept } from '../../browser/storage.ts';
import { type Practice, readPractice } from '../results.ts';

/** As it lies there now: another window may have written it. */
export function keptPractice(): Practice {
  return readPractice(kept('practice', (value): value is unknown => value !== undefined));
}

/** @returns whether the device keeps it */
export function keepPractice(practice: Practice): boolean {
  return keep('practice', practice);
}

/** Today where the device is, such as 2026-11-30. */
export function today(now = new Date()): string {
  return dayText(now);
}
