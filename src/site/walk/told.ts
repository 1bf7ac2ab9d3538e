/** The counter's questions as a walk takes their answers. */
import type { ToldFactors } from '../../diagnosis/told.ts';

/** A question, and what each of its answers says of the causes. */
export interface ToldQuestion {
  asked: string;
  /** By the answer in words. */
  answers: ReadonlyMap<string, ToldFactors>;
}

/** By the key in the walk's answers. */
export type Told = ReadonlyMap<string, ToldQuestion>;
