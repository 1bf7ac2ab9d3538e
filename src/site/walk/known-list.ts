/** The list of findings and tools under a walk, as the walk and the script that makes the list agree on it. */
import type { KnownLayout } from '../../model/layout.ts';
import type { Answers } from './answers.ts';
import type { WalkData, WalkTexts } from './walk-data.ts';

export interface KnownListener {
  answer(test: string, outcome: string | undefined): void;
  missing(tools: string[]): void;
}

export interface KnownNow {
  answers: Answers;
  missing: ReadonlySet<string>;
  /** What is known of the vehicle: tests it has no place for are not offered. */
  layout: KnownLayout;
  /** What the answers come to now, in a line. */
  comesTo: string;
}

export interface KnownList {
  show(now: KnownNow): void;
}

/** Makes the lists in their places; there once scripts/known-so-far.js is loaded. */
export type MakeKnownList = (
  data: WalkData,
  texts: WalkTexts,
  listener: KnownListener,
  say: (text: string) => string,
  places: { rows: HTMLElement; tools: HTMLElement },
) => KnownList;
