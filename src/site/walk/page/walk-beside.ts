/**
 * What stands under and beside the questions of a walk: answers so far, causes ranked, what fights, the quickest next step, the
 * way onto the job card. Nobody wants it before he comes near an answer, so its script comes then.
 */

import type { WalkTexts } from '../walk-data.ts';
import type { Diagnoser } from './diagnose.ts';
import type { WalkState } from './walk-state.ts';

/** What the walk does for it. */
export interface BesideHost {
  readonly diagnoser: Diagnoser;
  /** The walk's own element. */
  readonly walk: HTMLElement;
  /** Writes the chosen vehicle's figures into a text. */
  say(text: string): string;
  /** Asks a test out of turn. */
  ask(test: string): void;
  /** Takes an answer back and asks for it anew. */
  askAgain(key: string): void;
  /** Takes an answer that was given elsewhere than at its question; undefined takes it back. */
  give(key: string, value: string | undefined): void;
  /** Takes an answer at the question, and follows to the next. */
  answer(key: string, value: string): void;
  missing(tools: string[]): void;
  /** Shows where the walk stands once more: something else is known of it now. */
  again(): void;
}

/** What else is said of a state. */
export interface Shown {
  /** Key of the test that is asked now. */
  asked: string | undefined;
}

export interface WalkBeside {
  readonly texts: WalkTexts;
  show(state: WalkState, shown: Shown): void;
  /** What the planner would ask next; costly, worked out once for a state. */
  quickest(state: WalkState): { sentence: string; test?: string; cause?: string };
  /** Asks what else was seen at a question. */
  askOther(key: string): void;
  /** Puts answers to tap under the counter's questions. */
  takeTold(): Promise<void>;
  toJobCard(state: WalkState): Promise<HTMLElement>;
}

declare module '../../browser/page-globals.ts' {
  interface PageGlobals {
    /** There once scripts/walk-beside.js is loaded. */
    walkBeside?: (host: BesideHost, texts: WalkTexts) => WalkBeside;
  }
}
