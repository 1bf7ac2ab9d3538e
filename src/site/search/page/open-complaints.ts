/** The page's way to the recogniser of complaints. */
import { loadScript } from '../../browser/load-script.ts';
import type { ComplaintData } from '../complaint-data.ts';
import type { ComplaintFinder } from './complaints.ts';

declare global {
  /** There once scripts/recognise.js is loaded. */
  var headertankFinder: ((data: ComplaintData) => ComplaintFinder) | undefined;
  /** There once data/complaints.js is loaded. */
  var headertankComplaints: ComplaintData | undefined;
}

let opening: Promise<ComplaintFinder> | undefined;

/**
 * Fetches it with the first call. It runs in the page: an answer takes less than a frame, so that it comes with the key.
 * @throws Error when it cannot be fetched; the next call tries again
 */
export function openComplaints(): Promise<ComplaintFinder> {
  opening ??= open().catch((error: unknown) => {
    opening = undefined;
    throw error;
  });
  return opening;
}

async function open(): Promise<ComplaintFinder> {
  await Promise.all([loadScript('recognise'), loadScript('../data/complaints')]);
  if (!globalThis.headertankFinder || !globalThis.headertankComplaints)
    throw new Error('scripts/recognise.js or data/complaints.js is not what it should be.');
  return globalThis.headertankFinder(globalThis.headertankComplaints);
}
