/** A job at the bench with what a master would say to it: written from the trade's side, before the code is asked. */
import type { TypedValues } from '../../../src/calculators/work-out.ts';

export interface Job {
  /** What was found, as one colleague tells another. */
  job: string;
  /** What is typed. A reading that is not here was not taken. */
  typed: TypedValues;
  /** How the master takes it: fine, look again, stop; or he asks back before he says anything. */
  master: 'fine' | 'look' | 'stop' | 'asks';
  /** What his words must hold. */
  says?: RegExp;
  /** What he would never say to it. */
  never?: RegExp;
  /** Close to a limit, one side or the other. */
  near?: true;
}
