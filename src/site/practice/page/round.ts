/** One case as it is played: what its car shows, what that comes to, and what a master would have done. Pure. */
import { minutesInOrder, walkToEnd } from '../../../diagnosis/answered-walk.ts';
import type { Finding } from '../../../diagnosis/model.ts';
import type { CauseShare } from '../../../diagnosis/posterior.ts';
import type { KnownLayout } from '../../../model/layout.ts';
import { causeOfRecheck, NOT_IT, PROVEN } from '../../../model/recheck.ts';
import { SKIPPED } from '../../walk/answers.ts';
import type { Diagnoser } from '../../walk/page/diagnose.ts';
import type { Planner } from '../../walk/page/planner.ts';
import type { AnswerOf, PracticeCase, TestReading } from '../practice-data.ts';
import { asToolShows } from '../tool-shows.ts';

/** What a master would do in a situation. */
export interface Advice {
  /** A test; undefined where the cause is proven, or passing the car on is quicker. */
  test: string | undefined;
  why: string;
}

/** How another way through the same car went. */
export interface OtherWay {
  tests: string[];
  minutes: number;
  /** Likeliest cause at its end, its rechecks counted. */
  cause: string | undefined;
}

/** What the apprentice's answer is worth. */
export interface AnswerJudgement {
  right: boolean;
  /** A test of this round has come out for the cause that was named, or the cause has none but the recheck. */
  shown: 'by a test' | 'by no test' | 'only the recheck shows it';
  /** Share of such cars that have the named cause, by all that was seen. */
  share: number;
}

const NONE: ReadonlySet<string> = new Set();
/** Causes that are listed as what is believed; those under one in a hundred are left out. */
const LISTED = 3;
const LISTED_FROM = 0.01;

/** A round of practice. */
export class Round {
  readonly car: PracticeCase;
  private readonly diagnoser: Diagnoser;
  private readonly layout: KnownLayout;
  private readonly sound: Readonly<Record<string, string>>;
  private readonly simulated: AnswerOf;
  private readonly remembered = new Map<string, TestReading | undefined>();

  /**
   * @param sound what a sound car shows, by test
   * @param simulated what the simulated car shows where the case says nothing
   */
  constructor(
    diagnoser: Diagnoser,
    layout: KnownLayout,
    car: PracticeCase,
    sound: Readonly<Record<string, string>>,
    simulated: AnswerOf,
  ) {
    this.diagnoser = diagnoser;
    this.layout = layout;
    this.car = car;
    this.sound = sound;
    this.simulated = simulated;
  }

  /** Tests that can be done on this vehicle; rechecks come after a repair and are none. */
  get offered(): string[] {
    return this.diagnoser.compiled.model.tests
      .filter(({ id, isRecheck }) => !isRecheck && !this.diagnoser.cannot(id, this.layout, NONE))
      .map(({ id }) => id);
  }

  /** Causes that this vehicle can have. */
  get causes(): string[] {
    return this.diagnoser.compiled.model.causes
      .map(({ id }) => id)
      .filter((id) => !this.diagnoser.cannotHave(id, this.layout));
  }

  /** What the car shows; the same however often it is asked. */
  seen(test: string): TestReading | undefined {
    if (!this.remembered.has(test)) this.remembered.set(test, this.look(test));
    return this.remembered.get(test);
  }

  private look(test: string): TestReading | undefined {
    const recheck = causeOfRecheck(test);
    if (recheck !== undefined) {
      const isShown = this.car.rechecks[recheck] ?? this.car.faults.includes(recheck);
      return { outcome: isShown ? PROVEN : NOT_IT, reading: '' };
    }
    const shown = Object.hasOwn(this.car.shows, test) ? this.car.shows[test] : undefined;
    if (shown) {
      const [outcome, reads] = shown;
      return { outcome, reading: asToolShows(reads, this.diagnoser.data.tools[test] ?? []) };
    }
    const known = this.diagnoser.compiled.model.tests.find(({ id }) => id === test)?.outcomes ?? [];
    const simulated = this.simulated(test);
    if (simulated && known.includes(simulated.outcome)) return simulated;
    const outcome = this.sound[test];
    return outcome === undefined ? undefined : { outcome, reading: '' };
  }

  /** Why the car shows this; undefined where the case does not say. */
  why(test: string): string | undefined {
    return Object.hasOwn(this.car.shows, test) ? this.car.shows[test]?.[2] : undefined;
  }

  /** Minutes of each test in this order, getting the car ready included. */
  minutes(tests: readonly string[]): number[] {
    return minutesInOrder(this.diagnoser.compiled, tests);
  }

  /** What the next test costs after these. */
  minutesAfter(tests: readonly string[], next: string): number {
    return this.minutes([...tests, next]).at(-1) ?? 0;
  }

  private answers(tests: readonly string[]): Map<string, string> {
    return new Map(tests.map((test) => [test, this.seen(test)?.outcome ?? SKIPPED]));
  }

  private place(tests: readonly string[]) {
    return this.diagnoser.place(this.answers(tests), this.layout, NONE);
  }

  /** The likeliest causes after these tests. */
  belief(tests: readonly string[]): CauseShare[] {
    return this.place(tests)
      .belief.ranked.filter(({ share }) => share >= LISTED_FROM)
      .slice(0, LISTED);
  }

  /** What a master would do after these tests, and why. */
  advice(tests: readonly string[], planner: Planner): Advice {
    const { belief } = this.place(tests);
    if (belief.proven !== undefined) return { test: undefined, why: 'It is proven: name it.' };
    const answers = this.answers(tests);
    const { step, reason } = planner.diagnose(answers, this.layout, NONE);
    const { action } = step.best;
    if (belief.missingProof)
      return { test: belief.missingProof.test, why: 'One cause is nearly certain, and this shows it.' };
    if (action.kind === 'pass-on') return { test: undefined, why: reason.sentence };
    const test =
      action.kind === 'test'
        ? action.test
        : this.diagnoser.nextProof(action.cause, answers, this.layout, NONE);
    const why =
      action.kind === 'prove'
        ? `To settle ${planner.titles.cause(action.cause)}. ${reason.sentence}`
        : reason.sentence;
    return { test, why };
  }

  /** The same car by the tree or by the planner. Minutes of rechecks are not counted: nobody here repairs. */
  otherWay(by: 'tree' | 'planner'): OtherWay {
    const { evidence: _, ...situation } = this.diagnoser.situation(new Map(), this.layout, NONE);
    const { compiled, data } = this.diagnoser;
    const { asked, place } = walkToEnd(compiled, data.tree, by, (test) => this.seen(test)?.outcome, {
      layout: this.layout,
      situation,
    });
    const tests = asked.map(({ test }) => test).filter((test) => causeOfRecheck(test) === undefined);
    const { found, ranked, proven } = place.belief;
    const likeliest = proven ?? found[0] ?? ranked[0]?.cause;
    return { tests, minutes: sum(this.minutes(tests)), cause: likeliest };
  }

  /** @param named the cause that was named after these tests */
  judge(tests: readonly string[], named: string): AnswerJudgement {
    const { belief } = this.place(tests);
    const share = belief.found.includes(named)
      ? 1
      : (belief.ranked.find(({ cause }) => cause === named)?.share ?? 0);
    const proofs = this.diagnoser.compiled.model.causes.find(({ id }) => id === named)?.proofs ?? [];
    const isSeen = ({ test, outcome }: Finding) =>
      tests.includes(test) && this.seen(test)?.outcome === outcome;
    return {
      right: this.car.faults.includes(named),
      shown:
        proofs.length === 0 ? 'only the recheck shows it' : proofs.some(isSeen) ? 'by a test' : 'by no test',
      share,
    };
  }
}

/** Of some minutes, the sum. */
export function sum(minutes: readonly number[]): number {
  return minutes.reduce((total, each) => total + each, 0);
}
