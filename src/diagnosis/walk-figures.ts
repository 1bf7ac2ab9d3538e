/** What a walk comes to by the evidence: every way of its tree and of the proofs after it, each with its chance. */
import { item, real, whole } from './arrays.ts';
import type { CarState, CompiledModel } from './compiled.ts';
import { nameOf } from './posterior.ts';
import { likelihoodsAfter, type NumberedFinding, type ResolvedSituation, sumOf } from './state.ts';
import { type Chance, quantile } from './tree-cost.ts';
import { placeOf, type WalkPlace, type WalkTree } from './walk.ts';

/** A cause from this share on is named in the list that a walk ends with. */
export const NAMED_FROM = 0.01;

/** Ways less likely than this are not followed; their chance is reported. */
const LEAST_CHANCE = 2e-5;

/** How walks end for cars with one cause, shares of those cars; they sum to 1. */
export interface Endings {
  /** The cause is proven, or found where something made it. */
  proven: number;
  /** The list has it first. */
  first: number;
  /** The list names it further down. */
  named: number;
  /** It is not named. */
  missed: number;
  /** Another cause is called proven. */
  wronglyProven: number;
}

export interface CauseFigures extends Endings {
  cause: string;
  /** Share of the cars with this symptom. */
  share: number;
  /** Expected minutes of questions until the walk ends. */
  minutes: number;
}

export interface WalkFigures extends Endings {
  /** Causes in the order of the model, something else last. */
  causes: CauseFigures[];
  expectedMinutes: number;
  nineInTen: number;
  /** Expected number of questions. */
  questions: number;
  /** Chance of the ways that were too unlikely to be followed. */
  notFollowed: number;
  ways: number;
}

/**
 * Follows every way with the chance of each cause on it. Something else counts as named when the list has it, and is never
 * proven. All causes listed count, consequences that were found among the proven.
 * @param situation the layout's causes ruled out and tests unavailable, and what was found so far
 * @param layout what is known of the vehicle's layout, by feature, where the tree still branches on it
 */
export function walkFigures(
  compiled: CompiledModel,
  tree: WalkTree,
  situation: ResolvedSituation,
  leastChance = LEAST_CHANCE,
  layout: Readonly<Record<string, string | undefined>> = {},
): WalkFigures {
  const walks = new AllWalks(compiled, tree, situation, leastChance, layout);
  return walks.figures();
}

const ENDINGS = ['proven', 'first', 'named', 'missed', 'wronglyProven'] as const;
type Ending = (typeof ENDINGS)[number];

class AllWalks {
  private readonly compiled: CompiledModel;
  private readonly tree: WalkTree;
  private readonly from: ResolvedSituation;
  private readonly leastChance: number;
  private readonly layout: Readonly<Record<string, string | undefined>>;
  private readonly chances: Record<Ending, Float64Array>;
  private readonly minutes: Float64Array;
  private readonly distribution = new Map<number, number>();
  private questions = 0;
  private notFollowed = 0;
  private ways = 0;

  constructor(
    compiled: CompiledModel,
    tree: WalkTree,
    from: ResolvedSituation,
    leastChance: number,
    layout: Readonly<Record<string, string | undefined>>,
  ) {
    this.compiled = compiled;
    this.tree = tree;
    this.from = from;
    this.leastChance = leastChance;
    this.layout = layout;
    const columns = () => new Float64Array(compiled.columns);
    this.chances = {
      proven: columns(),
      first: columns(),
      named: columns(),
      missed: columns(),
      wronglyProven: columns(),
    };
    this.minutes = columns();
  }

  figures(): WalkFigures {
    const compiled = this.compiled;
    const prior = placeOf(compiled, this.tree, this.from, this.layout).belief.weights;
    const sum = sumOf(prior);
    const mass = prior.map((weight) => weight / sum);
    this.follow(this.from.findings, mass, this.from.car, 0, 0);
    const total = (ending: Ending, column?: number) =>
      column === undefined ? sumOf(this.chances[ending]) : real(this.chances[ending], column);
    const followed = 1 - this.notFollowed;
    const causes = Array.from(mass, (share, column): CauseFigures => {
      const known = ENDINGS.reduce((all, ending) => all + total(ending, column), 0);
      const of = (ending: Ending) => (known > 0 ? total(ending, column) / known : 0);
      return {
        cause: nameOf(compiled, column),
        share,
        proven: of('proven'),
        first: of('first'),
        named: of('named'),
        missed: of('missed'),
        wronglyProven: of('wronglyProven'),
        minutes: known > 0 ? real(this.minutes, column) / known : 0,
      };
    });
    const distribution = [...this.distribution]
      .map(([minutes, chance]) => ({ minutes, chance: chance / followed }))
      .sort((a, b) => a.minutes - b.minutes);
    const of = (ending: Ending) => total(ending) / followed;
    return {
      causes,
      proven: of('proven'),
      first: of('first'),
      named: of('named'),
      missed: of('missed'),
      wronglyProven: of('wronglyProven'),
      expectedMinutes: sumOf(this.minutes) / followed,
      nineInTen: quantile(distribution as Chance[], 0.9),
      questions: this.questions / followed,
      notFollowed: this.notFollowed,
      ways: this.ways,
    };
  }

  private follow(
    findings: readonly NumberedFinding[],
    mass: Float64Array,
    car: CarState,
    minutes: number,
    asked: number,
  ): void {
    const chance = sumOf(mass);
    if (chance < this.leastChance) {
      this.notFollowed += chance;
      return;
    }
    const compiled = this.compiled;
    const place = placeOf(compiled, this.tree, { ...this.from, findings, car }, this.layout);
    if (place.standing.kind !== 'ask') {
      this.end(place, mass, minutes);
      this.questions += asked * chance;
      return;
    }
    const test = compiled.testNumber.get(place.standing.test) ?? -1;
    const { minutes: own, after } = item(compiled.tests, test);
    const then = whole(after, car);
    for (const [outcome, row] of likelihoodsAfter(compiled, test, findings).entries()) {
      const next = mass.map((value, column) => value * real(row, column));
      this.follow([...findings, { test, outcome }], next, then, minutes + real(own, car), asked + 1);
    }
  }

  private end({ standing, belief }: WalkPlace, mass: Float64Array, minutes: number): void {
    this.ways++;
    const compiled = this.compiled;
    const settled = new Set(belief.found);
    if (standing.kind === 'proven') settled.add(standing.cause);
    const [first] = belief.ranked;
    const named = new Set(belief.ranked.filter(({ share }) => share >= NAMED_FROM).map(({ cause }) => cause));
    for (let column = 0; column < mass.length; column++) {
      const chance = real(mass, column);
      if (chance === 0) continue;
      const cause = nameOf(compiled, column);
      const ending: Ending = settled.has(cause)
        ? 'proven'
        : standing.kind === 'proven'
          ? 'wronglyProven'
          : first?.cause === cause
            ? 'first'
            : named.has(cause)
              ? 'named'
              : 'missed';
      this.chances[ending][column] = real(this.chances[ending], column) + chance;
      this.minutes[column] = real(this.minutes, column) + minutes * chance;
      const key = Math.round(minutes);
      this.distribution.set(key, (this.distribution.get(key) ?? 0) + chance);
    }
  }
}
