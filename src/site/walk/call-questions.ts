/** What the counter asks about a complaint, as its page and the job card take it: data/calls/<symptom>.js. */
import type { ToldFactors } from '../../diagnosis/told.ts';

/** What the counter asks about one complaint. */
export interface CallQuestions {
  id: string;
  title: string;
  ask: {
    /** Only where it has answers to choose from. */
    id?: string;
    question: string;
    tells: string;
    answers?: { is: string; factors: ToldFactors }[];
  }[];
}
