import { type NumberedAction, named } from './actions.ts';
import { item } from './arrays.ts';
import { type BestFound, bestFound, bestUnder } from './best-policy.ts';
import { type Budget, QUICK_BUDGET } from './budget.ts';
import type { CompiledModel } from './compiled.ts';
import { Lookahead } from './lookahead.ts';
import { type LowerBound, lowerBound } from './lower-bound.ts';
import type { Action, Situation } from './model.ts';
import { proofOrder } from './proof-order.ts';
import { sumOf } from './state.ts';
import { nextOf, type Step, stepOf, type Tree, type TreeFault } from './tree.ts';
import { type EndReport, type StepReport, type TreeReport, treeCost } from './tree-cost.ts';

/** A tree dearer than this many times the best found wants another order or a reason. */
export const TOO_COSTLY = 1.25;

/**
 * How far above proving with no tests a tree may lie. No tests is a price nobody pays: it takes every proof for certain,
 * and each reading that is honest about what it leaves open makes the tree look that much dearer beside it.
 */
export const NO_TESTS_SLACK = 1.1;

/** Two causes whose shares lie this near each other lead alike: one order of words stands on every layout. */
const LEADS_ALIKE = 1.2;

/** Share the causes named at an end must hold together. */
export const NAMED_SHARE = 0.6;

/** Sums in another order differ in the last digits; nothing is judged on those. */
const ROUNDING = 1e-9;

/** The step whose change saves most, and what to do there instead. */
export interface Move {
  step: string;
  instead: Action;
  /** Expected minutes saved over all jobs, looked two steps ahead. */
  saves: number;
}

export type SoundnessFinding =
  | { rule: 'worse-than-no-tests'; level: 'error'; minutes: number; withoutTests: number }
  | {
      rule: 'dearer-than-best-found';
      level: 'warning';
      minutes: number;
      best: number;
      ratio: number;
      move: Move | undefined;
    }
  | {
      rule: 'end-leads-with-unlikely-cause';
      level: 'error';
      step: string;
      leads: string;
      share: number;
      likelier: string;
      itsShare: number;
    }
  | { rule: 'end-names-too-little'; level: 'error'; step: string; share: number }
  | {
      rule: 'test-changes-nothing';
      level: 'error';
      step: string;
      test: string;
      because: 'same-way' | 'answered-before';
    }
  | { rule: 'step-never-reached'; level: 'error'; step: string };

/** An authored tree beside what is possible. */
export interface TreeJudgement {
  report: TreeReport;
  /** Best found, the tree itself counting as found. */
  best: BestFound;
  bound: LowerBound;
  /** Expected minutes of proving by chance per minute with no tests at all. */
  withoutTests: number;
  /** Tree over best found, 1 or more. */
  ratio: number;
  findings: SoundnessFinding[];
}

export type Judgement = { ok: true; judgement: TreeJudgement } | { ok: false; faults: TreeFault[] };

export interface JudgeOptions {
  situation?: Situation;
  budget?: Budget;
  /** The author has written why the order is what it is: no warning about its price. */
  hasReason?: boolean;
}

/** A tree judged by itself, without a search for something better. */
export interface TreeSoundness {
  report: TreeReport;
  /** Expected minutes of proving by chance per minute with no tests at all. */
  withoutTests: number;
  findings: SoundnessFinding[];
}

export type Soundness = { ok: true; soundness: TreeSoundness } | { ok: false; faults: TreeFault[] };

/** Costs an authored tree and lists what is unsound in it; quick, since nothing is searched. */
export function soundnessOf(
  compiled: CompiledModel,
  tree: Tree,
  situation: Situation = { evidence: [] },
): Soundness {
  const cost = treeCost(compiled, tree, situation);
  if (!cost.ok) return cost;
  const { report } = cost;
  const withoutTests = proofOrder(compiled, situation).minutes;
  const minutes = report.expectedMinutes;
  const shapes = new Shapes(tree);
  const findings: SoundnessFinding[] = [
    ...report.ends.flatMap((end) => endFindings(tree, end)),
    ...report.steps.flatMap((step) => stepFindings(tree, shapes, step)),
  ];
  if (minutes > withoutTests * NO_TESTS_SLACK)
    findings.unshift({ rule: 'worse-than-no-tests', level: 'error', minutes, withoutTests });
  return { ok: true, soundness: { report, withoutTests, findings } };
}

/**
 * Judges an authored tree: costs it, searches for something better, and lists what is unsound.
 * @throws Error when bound ≤ best found ≤ tree does not hold: that would be a fault of the arithmetic
 */
export function judgeTree(compiled: CompiledModel, tree: Tree, options: JudgeOptions = {}): Judgement {
  const { situation = { evidence: [] }, budget = QUICK_BUDGET, hasReason = false } = options;
  const sound = soundnessOf(compiled, tree, situation);
  if (!sound.ok) return sound;
  const { report, withoutTests, findings } = sound.soundness;
  const searched = bestFound(compiled, situation, budget);
  // An optimum stays called exact when the tree reaches it to the last digit but one.
  const isBetter = report.expectedMinutes < searched.minutes * (1 - ROUNDING);
  const best: BestFound = isBetter
    ? { ...searched, minutes: report.expectedMinutes, kind: 'policy', first: firstOf(tree) }
    : searched;
  const bound = lowerBound(compiled, situation, budget);
  assertOrder(bound, searched, report);
  const ratio = ratioOf(report, best);
  const dear = hasReason ? [] : costRatio(compiled, tree, report, best);
  return {
    ok: true,
    judgement: { report, best, bound, withoutTests, ratio, findings: errorsFirst([...findings, ...dear]) },
  };
}

/** What a tree costs beyond the best found. */
export type Price = { ok: true; findings: SoundnessFinding[] } | { ok: false; faults: TreeFault[] };

/**
 * Whether a tree is dearer than the best found, as judgeTree says it, without what else judgeTree works out: the search is
 * left as soon as nothing can make the tree dear any more, which on most trees is early.
 */
export function priceOf(
  compiled: CompiledModel,
  tree: Tree,
  { situation = { evidence: [] }, budget = QUICK_BUDGET }: Omit<JudgeOptions, 'hasReason'> = {},
): Price {
  const cost = treeCost(compiled, tree, situation);
  if (!cost.ok) return cost;
  const { report } = cost;
  const best = bestUnder(compiled, situation, budget, report.expectedMinutes / TOO_COSTLY);
  return { ok: true, findings: best ? costRatio(compiled, tree, report, best) : [] };
}

function ratioOf({ expectedMinutes }: TreeReport, best: BestFound): number {
  return best.minutes > 0 ? Math.max(1, expectedMinutes / best.minutes) : 1;
}

function costRatio(
  compiled: CompiledModel,
  tree: Tree,
  report: TreeReport,
  best: BestFound,
): SoundnessFinding[] {
  const ratio = ratioOf(report, best);
  if (ratio <= TOO_COSTLY) return [];
  const move = bestMove(compiled, tree, report);
  const { expectedMinutes: minutes } = report;
  return [{ rule: 'dearer-than-best-found', level: 'warning', minutes, best: best.minutes, ratio, move }];
}

function errorsFirst(findings: SoundnessFinding[]): SoundnessFinding[] {
  return [...findings].sort((a, b) => (a.level === b.level ? 0 : a.level === 'error' ? -1 : 1));
}

function firstOf(tree: Tree): Action {
  const step = stepOf(tree, tree.start);
  if (step?.kind === 'test') return { kind: 'test', test: step.test };
  const cause = step?.kind === 'prove' ? step.cause : step?.causes[0];
  return cause === undefined ? { kind: 'pass-on' } : { kind: 'prove', cause };
}

/** Bound ≤ tree and bound ≤ best found. A tree that repeats a group plays by other rules than the planner's. */
function assertOrder(bound: LowerBound, best: BestFound, report: TreeReport): void {
  const least = report.repeats ? best.minutes : Math.min(best.minutes, report.expectedMinutes);
  const rounding = ROUNDING * Math.max(1, least);
  if (bound.minutes > least + rounding)
    throw new Error(`The lower bound ${bound.minutes} is above a plan of ${least} minutes.`);
  if (best.kind === 'exact' && least < best.minutes - rounding)
    throw new Error(`The tree of ${least} minutes is below the exact optimum ${best.minutes}.`);
}

/**
 * The step at which doing something else saves most: chance of coming there × (value of its act − value of the
 * best act), both two steps ahead on the likeliest way. What later steps waste is booked there, not here.
 */
function bestMove(compiled: CompiledModel, tree: Tree, report: TreeReport): Move | undefined {
  const lookahead = new Lookahead(compiled, {
    tests: Number.POSITIVE_INFINITY,
    proofs: Number.POSITIVE_INFINITY,
  });
  let move: Move | undefined;
  for (const { step: id, reach, state } of report.steps) {
    const step = stepOf(tree, id);
    if (step === undefined || state === undefined) continue;
    const valued = lookahead.value(state);
    const best = item(valued, 0);
    const own = valued.find(({ action }) => isActOf(compiled, step, action));
    if (own === undefined) continue;
    const saves = (reach * (own.cost - best.cost)) / sumOf(state.weights);
    if (saves > ROUNDING && saves > (move?.saves ?? 0))
      move = { step: id, instead: named(compiled, best.action), saves };
  }
  return move;
}

function isActOf(compiled: CompiledModel, step: Step, action: NumberedAction): boolean {
  const act = named(compiled, action);
  if (step.kind === 'test') return act.kind === 'test' && act.test === step.test;
  const cause = step.kind === 'prove' ? step.cause : step.causes[0];
  if (cause === undefined) return act.kind === 'pass-on';
  return act.kind === 'prove' && act.cause === cause;
}

/** An end that names no cause passes on and claims nothing. */
function endFindings(tree: Tree, end: EndReport): SoundnessFinding[] {
  const step = stepOf(tree, end.step);
  if (step?.kind !== 'end' || end.reach === 0) return [];
  const leads = step.causes[0];
  if (leads === undefined) return [];
  const findings: SoundnessFinding[] = [];
  const [likeliest] = end.ranked;
  const share = end.ranked.find((one) => one.cause === leads)?.share ?? 0;
  if (likeliest !== undefined && likeliest.share > share * LEADS_ALIKE + ROUNDING)
    findings.push({
      rule: 'end-leads-with-unlikely-cause',
      level: 'error',
      step: end.step,
      leads,
      share,
      likelier: likeliest.cause,
      itsShare: likeliest.share,
    });
  if (end.named < NAMED_SHARE - ROUNDING)
    findings.push({ rule: 'end-names-too-little', level: 'error', step: end.step, share: end.named });
  return findings;
}

function stepFindings(tree: Tree, shapes: Shapes, report: StepReport): SoundnessFinding[] {
  const step = stepOf(tree, report.step);
  if (step === undefined) return [];
  if (report.reach === 0) return [{ rule: 'step-never-reached', level: 'error', step: report.step }];
  if (step.kind !== 'test') return [];
  const nothing = (because: 'same-way' | 'answered-before'): SoundnessFinding[] => [
    { rule: 'test-changes-nothing', level: 'error', step: report.step, test: step.test, because },
  ];
  if (report.newReach === 0) return nothing('answered-before');
  const [first, ...others] = nextOf(step).map((next) => shapes.of(next));
  return others.every((other) => other === first) ? nothing('same-way') : [];
}

/** What is done from a step on, as a number: two steps of equal shape are the same to the one who walks. */
class Shapes {
  private readonly tree: Tree;
  private readonly ofStep = new Map<string, number>();
  private readonly numbers = new Map<string, number>();

  constructor(tree: Tree) {
    this.tree = tree;
  }

  /** Each step is looked at once: ways that meet again are many more than steps. */
  of(id: string): number {
    const known = this.ofStep.get(id);
    if (known !== undefined) return known;
    const written = this.written(id);
    const number = this.numbers.get(written) ?? this.numbers.size;
    this.numbers.set(written, number);
    this.ofStep.set(id, number);
    return number;
  }

  private written(id: string): string {
    const step = stepOf(this.tree, id);
    if (step === undefined) return id;
    if (step.kind === 'end') return JSON.stringify(step.causes);
    if (step.kind === 'prove') return JSON.stringify([step.cause, this.of(step.otherwise)]);
    const ways = Object.entries(step.on)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([outcome, next]) => [outcome, this.of(next)]);
    return JSON.stringify([step.test, ways]);
  }
}
