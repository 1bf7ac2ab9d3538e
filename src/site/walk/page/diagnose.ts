/** What the answers of a walk come to: where it stands and what is believed. Pure. */
import { nextProof } from '../../../diagnosis/belief.ts';
import { type CompiledModel, compile } from '../../../diagnosis/compiled.ts';
import type { Situation } from '../../../diagnosis/model.ts';
import { resolve } from '../../../diagnosis/state.ts';
import type { ToldFactors } from '../../../diagnosis/told.ts';
import { placeOf, type WalkPlace } from '../../../diagnosis/walk.ts';
import { type KnownLayout, layoutAllows, shareWithLayout } from '../../../model/layout.ts';
import { type Answers, isNoFinding } from '../answers.ts';
import { unpackModel } from '../packed-model.ts';
import type { WalkData } from '../walk-data.ts';

/** A walk's data with its model made ready once. */
export class Diagnoser {
  readonly data: WalkData;
  readonly compiled: CompiledModel;
  /** What the customer's answers say of the causes, once the questions are fetched. */
  told: ((answers: Answers) => ToldFactors) | undefined;

  constructor(data: WalkData) {
    this.data = data;
    this.compiled = compile(unpackModel(data.model));
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

  /** The tests that prove a cause, the first the one to ask. */
  proofsOf(cause: string): string[] {
    const found = this.compiled.model.causes.find(({ id }) => id === cause);
    return (found?.proofs ?? []).map(({ test }) => test);
  }

  /**
   * The test that would prove a cause next; undefined when nothing is left to do for it here.
   * @param missing tools that are not at hand
   */
  nextProof(
    cause: string,
    answers: Answers,
    layout: KnownLayout,
    missing: ReadonlySet<string>,
  ): string | undefined {
    const number = this.compiled.causeNumber.get(cause);
    if (number === undefined) return undefined;
    const situation = resolve(this.compiled, this.situation(answers, layout, missing));
    const test = nextProof(this.compiled, situation, number, 0);
    return test === undefined ? undefined : this.compiled.tests[test]?.id;
  }

  /** Where the walk stands, and the one belief behind everything that is shown. */
  place(answers: Answers, layout: KnownLayout, missing: ReadonlySet<string>): WalkPlace {
    const situation = resolve(this.compiled, this.situation(answers, layout, missing));
    return placeOf(this.compiled, this.data.tree, situation, layout);
  }

  /** What is known and possible with these answers. */
  situation(answers: Answers, layout: KnownLayout, missing: ReadonlySet<string>): Situation {
    const { causeLayouts, layoutShares } = this.data;
    const { model } = this.compiled;
    const tests = model.tests.map((test) => test.id);
    return {
      evidence: tests.flatMap((test) => {
        const outcome = answers.get(test);
        return outcome === undefined || isNoFinding(outcome) ? [] : [{ test, outcome }];
      }),
      ruledOut: model.causes.map((cause) => cause.id).filter((id) => this.cannotHave(id, layout)),
      fitted: Object.fromEntries(
        Object.entries(causeLayouts).map(([cause, condition]) => [
          cause,
          shareWithLayout(condition, layout, layoutShares),
        ]),
      ),
      told: this.told?.(answers),
      unavailable: tests.filter(
        (id) => isNoFinding(answers.get(id) ?? '') || this.cannot(id, layout, missing),
      ),
    };
  }
}
