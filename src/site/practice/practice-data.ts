/** What the practice page loads: which cases there are, and the cases of a complaint with the model they are judged by. */
import type { WalkData } from '../walk/walk-data.ts';

/** What one test shows on the car of a case: the outcome, what is read where it is a measurement, and why. */
export type CaseShows = Record<string, [sees: string, reads: string, why: string]>;

/** A car with its fault. It stands in the page's data only packed, so that no look at the source gives it away. */
export interface PracticeCase {
  code: string;
  /** Id of the vehicle. */
  vehicle: string;
  diesel: boolean;
  /** What the customer said. */
  said: string;
  /** Causes; a car with nothing wrong has that as its cause. */
  faults: string[];
  mechanism: string;
  shows: CaseShows;
  /** Causes whose recheck does not come out as the fault alone would have it. */
  rechecks: Record<string, boolean>;
}

/** data/practice.js: every complaint that has cases, with their codes one after the other. */
export interface PracticeIndex {
  symptoms: [id: string, title: string, codes: string][];
}

/** data/practice/<complaint>.js; its texts are those of the walk. */
export interface PracticePack {
  walk: WalkData;
  /** What a sound car shows, by test. */
  sound: Record<string, string>;
  /** What is measured, by test, where a test is a measurement. */
  measures: Record<string, string>;
  /** Labels of the vehicle's figures, by path. */
  figures: Record<string, string>;
  /** PracticeCase[] as JSON, compressed, in base 64. */
  cases: string;
}

/** What the car of a case shows at a test; undefined where nobody can say. */
export type AnswerOf = (test: string) => TestReading | undefined;

/** What was seen at a test, and what was read where something was. */
export interface TestReading {
  outcome: string;
  reading: string;
}
