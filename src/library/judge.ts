/** Every complaint's tree held against what is possible, on every layout its records tell apart. */
import { QUICK_BUDGET } from '../diagnosis/budget.ts';
import { compile } from '../diagnosis/compiled.ts';
import type { Model } from '../diagnosis/model.ts';
import { priceOf, type SoundnessFinding, soundnessOf } from '../diagnosis/soundness.ts';
import { reachableSteps, type Tree, type TreeFault } from '../diagnosis/tree.ts';
import { type KnownLayout, layoutAllows } from '../model/layout.ts';
import { caseOf, testsOf } from './case.ts';
import type { DraftShelf } from './draft.ts';
import { drivenLayouts } from './driven-layouts.ts';
import { layoutsToldApart, signReader } from './layouts-told-apart.ts';
import type { Entry } from './shelf.ts';
import { branchFeatures, treesOf } from './tree-ways.ts';

/** Findings about one tree on one layout. */
export interface LayoutJudgement {
  known: KnownLayout;
  findings: readonly SoundnessFinding[];
  /** Why it could not be followed; then nothing is found. */
  faults: readonly TreeFault[];
  /** Steps and ends that a walk can come to on this layout. */
  reached: ReadonlySet<string>;
}

export interface JudgedTree {
  tree: Entry<'tree'>;
  layouts: LayoutJudgement[];
}

const judged = new WeakMap<DraftShelf, JudgedTree[]>();
const priced = new WeakMap<DraftShelf, JudgedTree[]>();

/** Trees judged by themselves: are they sound as they stand. */
export function judgedTrees(shelf: DraftShelf): JudgedTree[] {
  const known = judged.get(shelf) ?? soundTrees(shelf).map((tree) => judgeOn(shelf, tree, { search: false }));
  judged.set(shelf, known);
  return known;
}

/**
 * Trees without a reason for their price held against the best that a search finds. That can take a tenth of a second each, so it is done on the layout that
 * most of the shelf's vehicles have; tests/shelf holds every layout to the same limit.
 */
export function pricedTrees(shelf: DraftShelf): JudgedTree[] {
  const known =
    priced.get(shelf) ??
    soundTrees(shelf)
      .filter(({ data }) => data.because === undefined)
      .map((tree) => judgeOn(shelf, tree, { search: true }));
  priced.set(shelf, known);
  return known;
}

/**
 * Layouts a tree is judged on: those that the shelf has a vehicle for, each that the tree tells apart once, the commonest
 * first; the first possible one where it has none. A layout nobody brings in is not worth bending a tree for; the vehicle
 * that brings it brings the judgement.
 */
function judgedLayouts(shelf: DraftShelf, tree: Entry<'tree'>): readonly KnownLayout[] {
  const signs = signReader(branchesOf(shelf, tree), conditionsOf(shelf, tree));
  const counts = new Map<string, number>();
  for (const { layout, vehicles } of drivenLayouts(shelf.records)) {
    const sign = signs(layout);
    counts.set(sign, (counts.get(sign) ?? 0) + vehicles.length);
  }
  const having = (layout: KnownLayout): number => counts.get(signs(layout)) ?? 0;
  const all = layoutsOf(shelf, tree);
  const some = all.filter((layout) => having(layout) > 0).sort((a, b) => having(b) - having(a));
  return some.length > 0 ? some : all.slice(0, 1);
}

interface JudgeSettings {
  /** Look for a better plan, to hold the tree's price against, instead of judging the tree by itself. */
  search: boolean;
}

function judgeOn(shelf: DraftShelf, tree: Entry<'tree'>, { search }: JudgeSettings): JudgedTree {
  const layouts = judgedLayouts(shelf, tree).slice(0, search ? 1 : undefined);
  return {
    tree,
    layouts: layouts.map((known): LayoutJudgement => {
      // By the words alone: what a shop counts may move its belief from job to job, and must not make a tree of the shelf wrong.
      const { model, tree: steps } = caseOf({ records: shelf.records }, tree.data.symptom, known);
      const question = JSON.stringify([model, steps, search]);
      const recalled = shelf.memory.recall(question) as readonly SoundnessFinding[] | undefined;
      const { findings, faults } = recalled
        ? { findings: recalled, faults: [] }
        : judge(model, steps, search);
      if (!recalled && faults.length === 0) shelf.memory.remember(question, findings);
      return { known, findings, faults, reached: new Set(reachableSteps(steps)) };
    }),
  };
}

/** A tree that cannot be followed gets faults and no findings. */
function judge(model: Model, tree: Tree, search: boolean): Pick<LayoutJudgement, 'findings' | 'faults'> {
  const compiled = compile(model);
  if (search) {
    const price = priceOf(compiled, tree, { budget: QUICK_BUDGET });
    return price.ok ? { findings: price.findings, faults: [] } : { findings: [], faults: price.faults };
  }
  const sound = soundnessOf(compiled, tree);
  return sound.ok
    ? { findings: sound.soundness.findings, faults: [] }
    : { findings: [], faults: sound.faults };
}

/** Trees of which every record that the arithmetic needs is right. */
function soundTrees(shelf: DraftShelf): Entry<'tree'>[] {
  const { records, faulty } = shelf;
  const isSound = (entry: { file: string } | undefined): boolean =>
    entry !== undefined && !faulty.has(entry.file);
  return [...records.tree.values()].filter((tree) => {
    const symptom = records.symptom.get(tree.data.symptom);
    if (!symptom || symptom.data.tree !== tree.id || !isSound(symptom)) return false;
    if (!treesOf(records, tree.id).every(isSound)) return false;
    const causes = Object.keys(symptom.data.causes);
    if (!causes.every((id) => isSound(records.cause.get(id)))) return false;
    if (![...testsOf(records, tree.id)].every((id) => isSound(records.test.get(id)))) return false;
    return [...records.test.values()].every(
      (test) => isSound(test) || !causes.some((id) => Object.hasOwn(test.data.evidence, id)),
    );
  });
}

function branchesOf({ records }: DraftShelf, tree: Entry<'tree'>) {
  return branchFeatures(records, tree.id);
}

/** Layout conditions of the complaint, of its candidate causes and of the tests the tree asks. */
function conditionsOf(shelf: DraftShelf, tree: Entry<'tree'>) {
  const { records } = shelf;
  const symptom = records.symptom.get(tree.data.symptom)?.data;
  const causes = Object.keys(symptom?.causes ?? {});
  return [
    symptom?.layout,
    ...causes.map((id) => records.cause.get(id)?.data.layout),
    ...[...testsOf(records, tree.id)].map((id) => records.test.get(id)?.data.layout),
  ];
}

/** Those that the complaint holds for: a tree for hybrids is not bent for a car without one. */
function layoutsOf(shelf: DraftShelf, tree: Entry<'tree'>): KnownLayout[] {
  const held = shelf.records.symptom.get(tree.data.symptom)?.data.layout;
  return layoutsToldApart(branchesOf(shelf, tree), conditionsOf(shelf, tree)).filter((layout) =>
    layoutAllows(held, layout),
  );
}
