/** What the engine says of a walk's answers: causes ranked, what fights, the quickest next step. Pure. */
import { type CompiledModel, compile } from '../../../diagnosis/compiled.ts';
import { type Contradiction, contradiction } from '../../../diagnosis/contradiction.ts';
import type { Situation } from '../../../diagnosis/model.ts';
import { type NextStep, nextStep, splitOf } from '../../../diagnosis/next-step.ts';
import { type CauseShare, posterior } from '../../../diagnosis/posterior.ts';
import { type Reason, reasonFor, type Titles } from '../../../diagnosis/reason.ts';
import { type KnownLayout, layoutAllows } from '../../../model/layout.ts';
import { inSentence } from '../../text/in-sentence.ts';
import { type Answers, NOT_IT, proveKey, SKIPPED } from '../answers.ts';
import { unpackModel } from '../packed-model.ts';
import type { WalkData } from '../walk-data.ts';

export interface Diagnosis {
  step: NextStep;
  reason: Reason;
  fights: Contradiction | undefined;
}

/** A walk's data with its model made ready once. */
export class Diagnoser {
  readonly titles: Titles;
  private readonly data: WalkData;
  private readonly compiled: CompiledModel;

  /** @param say writes the vehicle's figures into a text */
  constructor(data: WalkData, say: (text: string) => string) {
    this.data = data;
    this.compiled = compile(unpackModel(data.model, (test) => Object.keys(data.titles.outcomes[test] ?? {})));
    this.titles = {
      cause: (id) => inSentence(data.titles.causes[id] ?? id),
      outcome: (test, outcome) => inSentence(say(data.titles.outcomes[test]?.[outcome] ?? outcome)),
    };
  }

  /** Whether a test cannot be done here: this vehicle does not have it, or its tool is missing. */
  cannot(test: string, layout: KnownLayout, missing: ReadonlySet<string>): boolean {
    return this.lacksTool(test, missing) || !layoutAllows(this.data.testLayouts[test], layout);
  }

  private lacksTool(test: string, missing: ReadonlySet<string>): boolean {
    return (this.data.tools[test] ?? []).some((tool) => missing.has(tool));
  }

  /** Whether no vehicle of this layout can have a cause. */
  cannotHave(cause: string, layout: KnownLayout): boolean {
    return !layoutAllows(this.data.causeLayouts[cause], layout);
  }

  /** Causes with their shares after these answers, without a search for what to do next. */
  ranked(answers: Answers, layout: KnownLayout): CauseShare[] {
    return posterior(this.compiled, this.situation(answers, layout, new Set())).ranked;
  }

  /**
   * @param answers with verdicts: a cause is ruled out where `prove.<cause>` says so
   * @param missing tools that are not at hand
   */
  diagnose(answers: Answers, layout: KnownLayout, missing: ReadonlySet<string>): Diagnosis {
    const situation = this.situation(answers, layout, missing);
    const step = nextStep(this.compiled, situation);
    const { action } = step.best;
    const split = action.kind === 'test' ? splitOf(this.compiled, situation, action.test) : undefined;
    return {
      step,
      reason: reasonFor(step.best, step, this.titles, split),
      fights: contradiction(this.compiled, situation),
    };
  }

  private situation(answers: Answers, layout: KnownLayout, missing: ReadonlySet<string>): Situation {
    const { model } = this.data;
    const tests = model.tests.map((test) => test.id);
    return {
      evidence: tests.flatMap((test) => {
        const outcome = answers.get(test);
        return outcome === undefined || outcome === SKIPPED ? [] : [{ test, outcome }];
      }),
      ruledOut: model.causes
        .map((cause) => cause.id)
        .filter((id) => answers.get(proveKey(id)) === NOT_IT || this.cannotHave(id, layout)),
      unavailable: tests.filter((id) => answers.get(id) === SKIPPED || this.cannot(id, layout, missing)),
    };
  }
}
