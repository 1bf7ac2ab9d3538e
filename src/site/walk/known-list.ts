/** The list of findings and tools under a walk, as the walk and the script that makes the list agree on it. */
import type { KnownLayout } from '../../model/layout.ts';
import type { Answers } from './answers.ts';
import type { WalkData } from './walk-data.ts';

export interface KnownListener {
  answer(test: string, outcome: string | undefined): void;
  missing(tools: string[]): void;
}

export interface KnownList {
  /** @param layout what is known of the vehicle: tests it has no place for are not offered */
  show(answers: Answers, missing: ReadonlySet<string>, layout: KnownLayout): void;
}

/** Makes the lists in their places; there once scripts/known-so-far.js is loaded. */
export type MakeKnownList = (
  data: WalkData,
  listener: KnownListener,
  say: (text: string) => string,
  places: { rows: HTMLElement; tools: HTMLElement },
) => KnownList;
