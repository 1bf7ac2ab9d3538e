/** The timers of this device. They are changed by a press only, so that windows do not write over each other's shoulder. */
import { forget, keep, kept } from '../../browser/storage.ts';
import { readTimers, type Timer } from '../timers.ts';

const isAny = (value: unknown): value is unknown => value !== undefined;

/** In this window too where the device keeps nothing. */
let here: Timer[] | undefined;

/** The timers that run or are over and not done with, of this device. */
export function timers(): Timer[] {
  return here ?? readTimers(kept('timers', isAny));
}

/** @returns whether the device keeps them; without it they run as long as this page is open */
export function changeTimers(change: (before: Timer[]) => Timer[]): boolean {
  const after = change(timers());
  if (after.length === 0) forget('timers');
  const stays = after.length === 0 || keep('timers', after);
  here = stays ? undefined : after;
  return stays;
}
