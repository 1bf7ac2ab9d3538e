import { item, real, whole } from './arrays.ts';
import { CARS, type CarState, type CompiledModel } from './compiled.ts';
import type { Situation } from './model.ts';
import { type CauseShare, nameOf, rank } from './posterior.ts';
import {
  likelihoodsAfter,
  type NumberedFinding,
  openAfter,
  repeatsOf,
  resolve,
  type State,
  stateOf,
  sumOf,
  weigh,
} from './state.ts';
import { faultsOfTree, reachableSteps, stepOf, type Tree, type TreeFault } from './tree.ts';

/** Minutes and the chance that the job takes exactly so long. */
export interface Chance {
  minutes: number;
  chance: number;
}

export interface CauseMinutes {
  cause: string;
  /** Share before any step. */
  share: number;
  /** Expected minutes when this is the cause; undefined when it is not possible. */
  minutes: number | undefined;
  /** Chance that the tree proves it before passing on, when this is the cause. */
  proven: number;
}

/** A step over all the ways that reach it. */
export interface StepReport {
  step: string;
  /** Chance that the walk comes here. */
  reach: number;
  /** Causes with their shares on arriving here, most likely first. */
  ranked: CauseShare[];
  /** Expected minutes from here on; undefined when it is never reached. */
  minutesFromHere: number | undefined;
  /** The likeliest way here, as a state to plan from. */
  state: State | undefined;
  /** Share of the reach on which this step has something to do: its test not yet answered, its cause not yet ruled out. */
  newReach: number;
}

export interface EndReport extends StepReport {
  /** Share that the causes named at this end hold together. */
  named: number;
}

export interface TreeReport {
  expectedMinutes: number;
  median: number;
  /** Nine in ten jobs are done within this. */
  nineInTen: number;
  /** By rising minutes; the chances sum to 1. */
  distribution: Chance[];
  causes: CauseMinutes[];
  /** Chance that the true cause is proven on the tree, something else counting against it. */
  proven: number;
  steps: StepReport[];
  ends: EndReport[];
  /** Some way asks two tests of one group. */
  repeats: boolean;
}

export type TreeCost = { ok: true; report: TreeReport } | { ok: false; faults: TreeFault[] };

/**
 * What an authored tree costs from a situation, wrong turns included.
 *
 * Every way is followed with the chance of each cause on it. Ends try their causes in order, then pass on. A test
 * already answered on the way costs nothing and follows its answer; a cause already ruled out is not proven again.
 * A second test of one group is taken as seen with its likelihoods flattened to the power 1/m, scaled to sum to 1.
 */
export function treeCost(
  compiled: CompiledModel,
  tree: Tree,
  situation: Situation = { evidence: [] },
): TreeCost {
  const faults = faultsOfTree(compiled, tree);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, report: new Walk(compiled, tree).report(situation) };
}

/** How far one way has come. */
interface TreePath {
  findings: readonly NumberedFinding[];
  ruledOut: ReadonlySet<number>;
  /** Chance of each column being the cause and the walk being here. */
  mass: Float64Array;
  open: readonly number[];
  car: CarState;
  spent: number;
}

interface Tally {
  reach: number;
  newReach: number;
  weights: Float64Array;
  minutes: number;
  likeliest: number;
  state: State | undefined;
}

class Walk {
  private readonly compiled: CompiledModel;
  private readonly tree: Tree;
  private readonly tallies = new Map<string, Tally>();
  private readonly distribution = new Map<number, number>();
  private readonly minutesByCause: Float64Array;
  private readonly provenByCause: Float64Array;
  private repeats = false;

  constructor(compiled: CompiledModel, tree: Tree) {
    this.compiled = compiled;
    this.tree = tree;
    this.minutesByCause = new Float64Array(compiled.columns);
    this.provenByCause = new Float64Array(compiled.columns);
  }

  report(situation: Situation): TreeReport {
    const { compiled } = this;
    const resolved = resolve(compiled, situation);
    const { weights, open } = stateOf(compiled, resolved);
    const sum = sumOf(weights);
    const share = (column: number): number => (column === compiled.rest ? 1 : 0);
    const mass = weights.map((weight, column) => (sum > 0 ? weight / sum : share(column)));
    const { findings, ruledOut, car } = resolved;
    const expectedMinutes = this.follow(this.tree.start, { findings, ruledOut, mass, open, car, spent: 0 });
    const distribution = [...this.distribution]
      .map(([minutes, chance]) => ({ minutes, chance }))
      .sort((a, b) => a.minutes - b.minutes);
    const steps = reachableSteps(this.tree).map((step) => this.stepReport(step));
    return {
      expectedMinutes,
      median: quantile(distribution, 0.5),
      nineInTen: quantile(distribution, 0.9),
      distribution,
      causes: Array.from(mass, (chance, column) => ({
        cause: nameOf(compiled, column),
        share: chance,
        minutes: chance > 0 ? real(this.minutesByCause, column) / chance : undefined,
        proven: chance > 0 ? real(this.provenByCause, column) / chance : 0,
      })),
      proven: sumOf(this.provenByCause),
      steps,
      ends: steps.flatMap((step) => this.endReport(step)),
      repeats: this.repeats,
    };
  }

  /** Walks on from a step and returns expected final minutes × chance of this way. */
  private follow(id: string, way: TreePath): number {
    const chance = sumOf(way.mass);
    if (chance === 0) return 0;
    const step = stepOf(this.tree, id);
    if (step === undefined) throw new RangeError(`No step "${id}".`);
    let total = 0;
    let isNew = true;
    if (step.kind === 'test') {
      const test = this.numberOf(this.compiled.testNumber, step.test);
      const answered = way.findings.find((finding) => finding.test === test);
      isNew = answered === undefined;
      total =
        answered === undefined
          ? this.answer(test, step.on, way)
          : this.follow(this.wayFor(test, answered.outcome, step.on), way);
    } else if (step.kind === 'prove') {
      const cause = this.numberOf(this.compiled.causeNumber, step.cause);
      isNew = !way.ruledOut.has(cause);
      const proof = this.prove(cause, way);
      total = proof.minutes + this.follow(step.otherwise, proof.way);
    } else {
      total = this.end(step.causes, way);
    }
    this.count(id, way, chance, total - way.spent * chance, isNew);
    return total;
  }

  private answer(test: number, on: Readonly<Record<string, string>>, way: TreePath): number {
    const { compiled } = this;
    const { minutes, after, rows } = item(compiled.tests, test);
    const spent = way.spent + real(minutes, way.car);
    const car = whole(after, way.car);
    const open = openAfter(compiled, way.open, test);
    const likelihoods = likelihoodsAfter(compiled, test, way.findings);
    if (likelihoods !== rows) this.repeats = true;
    let total = 0;
    for (let outcome = 0; outcome < rows.length; outcome++) {
      const row = item(likelihoods, outcome);
      const mass = way.mass.map((value, column) => value * real(row, column));
      const findings = [...way.findings, { test, outcome }];
      total += this.follow(this.wayFor(test, outcome, on), { ...way, findings, mass, open, car, spent });
    }
    return total;
  }

  private prove(cause: number, way: TreePath): { minutes: number; way: TreePath } {
    if (way.ruledOut.has(cause)) return { minutes: 0, way };
    const entry = cause * CARS + way.car;
    const spent = way.spent + real(this.compiled.proof, entry);
    const minutes = this.settle(cause, real(way.mass, cause), spent, true);
    const mass = Float64Array.from(way.mass);
    mass[cause] = 0;
    const ruledOut = new Set(way.ruledOut).add(cause);
    return { minutes, way: { ...way, mass, ruledOut, spent, car: whole(this.compiled.afterProof, entry) } };
  }

  private end(causes: readonly string[], from: TreePath): number {
    let total = 0;
    let way = from;
    for (const id of causes) {
      if (sumOf(way.mass) === 0) return total;
      const proof = this.prove(this.numberOf(this.compiled.causeNumber, id), way);
      total += proof.minutes;
      way = proof.way;
    }
    const spent = way.spent + this.compiled.passOn;
    for (const [column, chance] of way.mass.entries()) total += this.settle(column, chance, spent, false);
    return total;
  }

  /** Books the minutes of the cars on which this is the cause. */
  private settle(column: number, chance: number, minutes: number, proven: boolean): number {
    if (chance === 0) return 0;
    // Sums of minutes in another order differ in the last digits and are one entry all the same.
    const key = Math.round(minutes * 1e6) / 1e6;
    this.distribution.set(key, (this.distribution.get(key) ?? 0) + chance);
    this.minutesByCause[column] = real(this.minutesByCause, column) + minutes * chance;
    if (proven) this.provenByCause[column] = real(this.provenByCause, column) + chance;
    return minutes * chance;
  }

  private count(id: string, way: TreePath, chance: number, minutes: number, isNew: boolean): void {
    const { compiled } = this;
    const tally = this.tallies.get(id) ?? {
      reach: 0,
      newReach: 0,
      weights: new Float64Array(compiled.columns),
      minutes: 0,
      likeliest: 0,
      state: undefined,
    };
    const believed = this.believed(way, chance);
    believed.forEach((value, column) => {
      tally.weights[column] = real(tally.weights, column) + value;
    });
    tally.reach += chance;
    tally.minutes += minutes;
    if (isNew) tally.newReach += chance;
    if (chance > tally.likeliest) {
      tally.likeliest = chance;
      tally.state = { weights: believed, car: way.car, open: way.open };
    }
    this.tallies.set(id, tally);
  }

  /** What someone on this way believes, scaled to its chance; differs from the mass only where repeats are pooled. */
  private believed(way: TreePath, chance: number): Float64Array {
    if (!way.findings.some((finding) => repeatsOf(this.compiled, way.findings, finding) > 1)) return way.mass;
    const weights = weigh(this.compiled, way.findings, way.ruledOut);
    const sum = sumOf(weights);
    return sum > 0 ? weights.map((weight) => (weight / sum) * chance) : way.mass;
  }

  private stepReport(step: string): StepReport {
    const tally = this.tallies.get(step);
    if (tally === undefined)
      return { step, reach: 0, ranked: [], minutesFromHere: undefined, state: undefined, newReach: 0 };
    return {
      step,
      reach: tally.reach,
      ranked: rank(this.compiled, tally.weights),
      minutesFromHere: tally.minutes / tally.reach,
      state: tally.state,
      newReach: tally.newReach,
    };
  }

  private endReport(report: StepReport): EndReport[] {
    const step = stepOf(this.tree, report.step);
    if (step?.kind !== 'end') return [];
    const shares = report.ranked.filter((one) => step.causes.includes(one.cause));
    return [{ ...report, named: shares.reduce((total, one) => total + one.share, 0) }];
  }

  private wayFor(test: number, outcome: number, on: Readonly<Record<string, string>>): string {
    const id = item(item(this.compiled.tests, test).outcomes, outcome);
    const step = on[id];
    if (step === undefined) throw new RangeError(`No way for "${id}".`);
    return step;
  }

  private numberOf(numbers: ReadonlyMap<string, number>, id: string): number {
    const number = numbers.get(id);
    if (number === undefined) throw new RangeError(`The model does not know "${id}".`);
    return number;
  }
}

/** Smallest minutes within which at least a share `q` of the jobs is done. */
export function quantile(distribution: readonly Chance[], q: number): number {
  let total = 0;
  for (const { minutes, chance } of distribution) {
    total += chance;
    // Chances are sums of products: nine in ten must not be missed by the last digit.
    if (total >= q - 1e-12) return minutes;
  }
  return distribution.at(-1)?.minutes ?? 0;
}
