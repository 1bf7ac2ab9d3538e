/** What the numbers say beside a walk: what fights, the quickest next step and why. Costly, and wanted later than the walk itself. Pure. */
import { type Contradiction, contradictions } from '../../../diagnosis/contradiction.ts';
import { type NextStep, nextStep, splitOf } from '../../../diagnosis/next-step.ts';
import { type Reason, reasonFor, type Titles } from '../../../diagnosis/reason.ts';
import { type KnownLayout, shareWithLayout } from '../../../model/layout.ts';
import { inSentence } from '../../text/in-sentence.ts';
import type { Answers } from '../answers.ts';
import type { Diagnoser } from './diagnose.ts';
import type { WalkWords } from './walk-words.ts';

export interface Diagnosis {
  step: NextStep;
  reason: Reason;
  /** Pairs of findings that do not go together. */
  conflicts: Contradiction[];
}

/** A test that fewer cars than this can have is not proposed before the vehicle is known. */
const RARE_LAYOUT = 0.25;

/** The planner of one walk. */
export class Planner {
  readonly titles: Titles;
  private readonly diagnoser: Diagnoser;

  constructor(diagnoser: Diagnoser, words: WalkWords) {
    this.diagnoser = diagnoser;
    this.titles = {
      cause: (id) => inSentence(words.cause(id)),
      question: (test) => words.asked(test),
      outcome: (test, outcome) => inSentence(words.answer(test, outcome)),
    };
  }

  /** @param missing tools that are not at hand */
  diagnose(answers: Answers, layout: KnownLayout, missing: ReadonlySet<string>): Diagnosis {
    const { data, compiled } = this.diagnoser;
    const situation = this.diagnoser.situation(answers, layout, missing);
    const proposed = {
      ...situation,
      unavailable: [
        ...(situation.unavailable ?? []),
        ...Object.keys(data.testLayouts).filter(
          (test) => shareWithLayout(data.testLayouts[test], layout, data.layoutShares) < RARE_LAYOUT,
        ),
      ],
    };
    const step = nextStep(compiled, proposed);
    const { action } = step.best;
    const split = action.kind === 'test' ? splitOf(compiled, proposed, action.test) : undefined;
    return {
      step,
      reason: reasonFor(step.best, step, this.titles, split),
      conflicts: contradictions(compiled, situation),
    };
  }
}
