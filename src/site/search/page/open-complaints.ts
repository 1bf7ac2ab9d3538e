/** The page's way to the recogniser of complaints. */
import { loadScript } from '../../browser/load-script.ts';
import { loadStyle } from '../../browser/load-style.ts';
import type { ComplaintData, PartingQuestion } from '../complaint-data.ts';
import type { Answers } from './complaints.ts';

/** What the page shows first. */
export interface ShownFirst {
  /** Nothing where the words tell nothing. */
  parts: HTMLElement[];
  /** One complaint stands alone, or a page was called by its name: few want more. */
  isSettled: boolean;
}

/**
 * What the page shows first for these words.
 * @param answers what was answered to the questions so far
 * @param answer called with the complaint that an answer means
 */
export type ShowComplaints = (
  text: string,
  answers: Answers,
  answer: (question: PartingQuestion, means: string) => void,
) => ShownFirst;

declare global {
  /** There once scripts/recognise.js is loaded. */
  var headertankFinder: ((data: ComplaintData) => ShowComplaints) | undefined;
  /** There once data/complaints.js is loaded. */
  var headertankComplaints: ComplaintData | undefined;
}

let opening: Promise<ShowComplaints> | undefined;

/**
 * Fetches it with the first call. It runs in the page: an answer takes less than a frame, so that it comes with the key.
 * @throws Error when it cannot be fetched; the next call tries again
 */
export function openComplaints(): Promise<ShowComplaints> {
  opening ??= open().catch((error: unknown) => {
    opening = undefined;
    throw error;
  });
  return opening;
}

async function open(): Promise<ShowComplaints> {
  await Promise.all([loadScript('recognise'), loadScript('../data/complaints'), loadStyle('complaints')]);
  if (!globalThis.headertankFinder || !globalThis.headertankComplaints)
    throw new Error('scripts/recognise.js or data/complaints.js is not what it should be.');
  return globalThis.headertankFinder(globalThis.headertankComplaints);
}
