/** Everything a symptom's page shows of its walk, worked out once at build. */

import { hash } from 'node:crypto';
import type { Model } from '../../../diagnosis/model.ts';
import type { WalkTree } from '../../../diagnosis/walk.ts';
import { modelOf } from '../../../library/case.ts';
import { FIGURE_REFERENCE } from '../../../model/figure-reference.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import type { LayoutCondition, LayoutShares } from '../../../model/layout.ts';
import { layoutQuestion } from '../../../model/layout-questions.ts';
import type { Tree } from '../../../model/tree.ts';
import { entryOf, hrefOf, titleOf } from '../../shelf/record-pages.ts';
import { shelf } from '../../shelf/shelf.ts';
import { generalRange } from '../../text/figure-html.ts';
import { layoutWords } from '../../text/layout-words.ts';
import { packQuantity } from '../../text/packed-quantity.ts';
import { packModel } from '../packed-model.ts';
import type { WalkData, WalkTexts } from '../walk-data.ts';
import { walkTreeOf } from '../walk-tree.ts';
import { pageModel } from './page-model.ts';
import { sharesAmong } from './shares-among.ts';

export interface WalkView {
  data: WalkData;
  texts: Omit<WalkTexts, 'repairs'>;
  model: Model;
  tree: Tree;
  /** Steps and ends in the order a reader meets them. */
  order: string[];
  /** Tests the planner may ask for that are no step of the tree. */
  spareTests: string[];
  /** All candidate causes: each has a section of its own, shown when it is to be proven and once it is. */
  causes: string[];
}

/**
 * All that the page of a complaint’s walk shows.
 * @throws Error when the shelf lacks a record it names
 */
export function walkViewOf(symptomId: string): WalkView {
  const symptom = entryOf('symptom', symptomId);
  const tree = entryOf('tree', symptom.data.tree).data;
  const walkTree = walkTreeOf(tree);
  const steps = Object.values(walkTree.steps);
  const inTree = new Set(steps.flatMap((step) => (step.kind === 'test' ? [step.test] : [])));
  const candidates = Object.keys(symptom.data.causes);
  const proofs = candidates.flatMap((id) => {
    const { test, or = [] } = entryOf('cause', id).data.confirm ?? {};
    return [...(test === undefined ? [] : [test]), ...or.map((other) => other.test)];
  });
  const model = pageModel(
    modelOf(shelf.records, symptomId, {}, shelf.counts),
    new Set([...inTree, ...proofs]),
  );
  const askable = model.tests.filter(({ isRecheck }) => !isRecheck).map(({ id }) => id);
  const tests = [...new Set([...askable, ...inTree])];
  const causes = model.causes.map((cause) => cause.id);

  const { layout } = symptom.data;
  const stamp = stampOf([
    tree,
    tests.map((id) => entryOf('test', id).data),
    causes.map((id) => entryOf('cause', id).data),
  ]);
  const ofCauses = causeParts(causes, symptomId);
  const ofTests = testParts(tests);
  const texts = { stamp, ...ofCauses.texts, ...ofTests.texts, ...stepTexts(steps) };
  const { causeLayouts, titles } = ofCauses;
  const { testLayouts, tools } = ofTests;
  return {
    model,
    data: {
      symptom: symptomId,
      stamp,
      ...(layout && { needs: { layout, words: layoutWords(layout) } }),
      model: packModel(model),
      tree: walkTree,
      causeLayouts,
      testLayouts,
      layoutShares: sharesAmong(
        sharesFor([...Object.values(causeLayouts), ...Object.values(testLayouts)]),
        layout,
      ),
      tools,
      causes: titles,
    },
    texts: { ...texts, general: generalRanges(texts) },
    tree,
    order: readingOrder(walkTree),
    spareTests: tests.filter((id) => !inTree.has(id)),
    causes,
  };
}

/** What the page says of its causes. */
function causeParts(ids: readonly string[], symptomId: string) {
  const titles: WalkData['causes'] = { [SOMETHING_ELSE]: 'Something else' };
  const causeLayouts: WalkData['causeLayouts'] = {};
  const goesOn: WalkTexts['goesOn'] = {};
  for (const id of ids) {
    const { data } = entryOf('cause', id);
    titles[id] = data.title;
    if (data.layout) causeLayouts[id] = data.layout;
    const next = data['goes-on'];
    if (next !== undefined && next !== symptomId)
      goesOn[id] = { title: titleOf('symptom', next), href: hrefOf('symptom', next) };
  }
  return { titles, causeLayouts, texts: { goesOn } };
}

/** What the page says of its tests. */
function testParts(ids: readonly string[]) {
  const testLayouts: WalkData['testLayouts'] = {};
  const tools: WalkData['tools'] = {};
  const texts: Pick<WalkTexts, 'tests' | 'questions' | 'outcomes' | 'work' | 'tools'> = {
    work: {},
    tests: {},
    questions: {},
    tools: {},
    outcomes: {},
  };
  for (const id of ids) {
    const { data } = entryOf('test', id);
    texts.tests[id] = data.title;
    texts.questions[id] = data.question;
    texts.outcomes[id] = Object.fromEntries(
      Object.entries(data.outcomes).map(([key, { label }]) => [key, label]),
    );
    if (data.layout) testLayouts[id] = data.layout;
    if (data.work) texts.work[id] = data.work;
    if (data.tools.length > 0) tools[id] = data.tools;
    for (const tool of data.tools) texts.tools[tool] = titleOf('tool', tool);
  }
  return { testLayouts, tools, texts };
}

/** What the page says of steps that are no test: questions of layout, and other trees. */
function stepTexts(steps: readonly WalkTree['steps'][string][]): Pick<WalkTexts, 'layout' | 'trees'> {
  const layout: WalkTexts['layout'] = {};
  const trees: WalkTexts['trees'] = {};
  for (const step of steps) {
    if (step.kind === 'layout') layout[step.feature] = layoutQuestion(step.feature).asks;
    if (step.kind !== 'tree') continue;
    const other = entryOf('tree', step.tree).data.symptom;
    trees[step.tree] = { title: titleOf('symptom', other), href: hrefOf('symptom', other) };
  }
  return { layout, trees };
}

/** Changes with every word of the records: answers of one version are never read as answers of another. */
function stampOf(records: unknown): string {
  return hash('sha256', JSON.stringify(records), 'base64url').slice(0, 12);
}

/** How common the layouts are that some conditions speak of. */
function sharesFor(conditions: readonly LayoutCondition[]): LayoutShares {
  const { layouts = { from: '' } } = shelf.shop;
  const features = new Set(conditions.flatMap((condition) => Object.keys(condition)));
  return Object.fromEntries(
    Object.entries(layouts).flatMap(([feature, shares]) =>
      features.has(feature) && typeof shares === 'object' ? [[feature, shares]] : [],
    ),
  );
}

/** General range of every figure the questions and answers quote. */
function generalRanges({
  questions,
  outcomes,
}: Pick<WalkTexts, 'questions' | 'outcomes'>): Record<string, string> {
  const quoted = [
    ...Object.values(questions),
    ...Object.values(outcomes).flatMap((labels) => Object.values(labels)),
  ];
  const ranges: Record<string, string> = {};
  for (const [, path = ''] of quoted.join('\n').matchAll(FIGURE_REFERENCE)) {
    const general = generalRange(path);
    if (general) ranges[path] = packQuantity(general.quantity);
  }
  return ranges;
}

/** Breadth first from the start, ends last: a step stands after the one that leads to it. */
function readingOrder(tree: WalkTree): string[] {
  const order: string[] = [];
  const ends: string[] = [];
  const waiting = [tree.start];
  const seen = new Set(waiting);
  for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
    const step = tree.steps[id];
    if (!step) continue;
    (step.kind === 'end' ? ends : order).push(id);
    const next =
      step.kind === 'test' || step.kind === 'layout'
        ? Object.values(step.on)
        : step.kind === 'prove'
          ? [step.otherwise]
          : [];
    for (const target of next) {
      if (seen.has(target)) continue;
      seen.add(target);
      waiting.push(target);
    }
  }
  return [...order, ...ends];
}
