/** A tree record as the drawings want it: what each step asks in words, and where each answer leads. */
import { SOMETHING_ELSE } from '../../model/kinds.ts';
import { LAYOUT_LABELS } from '../../model/layout.ts';
import type { Tree, TreeStep } from '../../model/tree.ts';

export interface NodeWay {
  /** One or more answers that lead to the same place. */
  answers: string[];
  to: string;
}

export type TreeNode =
  | { id: string; kind: 'test'; text: string; ways: NodeWay[] }
  /** A fork by how the vehicle is laid out: nobody measures anything. */
  | { id: string; kind: 'layout'; text: string; ways: NodeWay[] }
  /** A cause to prove at once. Proven, it is repaired and the walk is over; its only way is "Not that". */
  | { id: string; kind: 'prove'; text: string; proven: string; ways: NodeWay[] }
  /** On in another tree. */
  | { id: string; kind: 'tree'; text: string; ways: [] }
  /** The causes left, most likely first. */
  | { id: string; kind: 'end'; causes: string[]; ways: [] };

/** Words for what a tree refers to; figures of the vehicle already filled in. */
export interface TreeWords {
  /** What the test asks, and its outcomes' labels by id. */
  test(id: string): { asks: string; outcomes: Readonly<Record<string, string>> };
  cause(id: string): string;
  /** What is done once a cause is proven: "Replace the thermostat, 60 min". */
  repair(cause: string): string;
  tree(id: string): string;
}

export const NOT_THAT = 'Not that';

/**
 * The nodes of a tree in an order to read them: every step before all it leads to, first answers first. What is never
 * reached is left out.
 * @throws RangeError naming the step if a way leads to nothing
 */
export function treeNodes(tree: Tree, words: TreeWords): TreeNode[] {
  const done: TreeNode[] = [];
  const seen = new Set<string>();
  const visit = (id: string, from: string) => {
    if (seen.has(id)) return;
    seen.add(id);
    const node = nodeOf(tree, id, words);
    if (!node) throw new RangeError(`"${from}" leads to "${id}", which is no step and no end of this tree.`);
    for (const way of [...node.ways].reverse()) visit(way.to, id);
    done.push(node);
  };
  visit(tree.start, 'start');
  return done.reverse();
}

function nodeOf(tree: Tree, id: string, words: TreeWords): TreeNode | undefined {
  const step = tree.steps[id];
  if (step) return stepNode(id, step, words);
  const end = tree.ends[id];
  if (!end) return undefined;
  const causes = end.causes.map((cause) =>
    cause === SOMETHING_ELSE ? 'Something else: pass it on' : words.cause(cause),
  );
  return { id, kind: 'end', causes, ways: [] };
}

function stepNode(id: string, step: TreeStep, words: TreeWords): TreeNode | undefined {
  if (step.test !== undefined) {
    const { asks, outcomes } = words.test(step.test);
    return { id, kind: 'test', text: asks, ways: waysOf(step.on, (outcome) => outcomes[outcome] ?? outcome) };
  }
  if (step.layout !== undefined) {
    return {
      id,
      kind: 'layout',
      text: LAYOUT_LABELS[step.layout],
      ways: waysOf(step.on, (value) => value),
    };
  }
  if (step.prove !== undefined && step.otherwise !== undefined) {
    return {
      id,
      kind: 'prove',
      text: words.cause(step.prove),
      proven: words.repair(step.prove),
      ways: [{ answers: [NOT_THAT], to: step.otherwise }],
    };
  }
  if (step.tree !== undefined) return { id, kind: 'tree', text: words.tree(step.tree), ways: [] };
  return undefined;
}

/** Answers that lead to the same place share one way. */
function waysOf(on: Readonly<Record<string, string>> | undefined, label: (id: string) => string): NodeWay[] {
  const ways: NodeWay[] = [];
  for (const [answer, to] of Object.entries(on ?? {})) {
    const shared = ways.find((way) => way.to === to);
    if (shared) shared.answers.push(label(answer));
    else ways.push({ answers: [label(answer)], to });
  }
  return ways;
}

/** The answers of a way, each on its own: "Both hot", "or: one hot, one cool". */
export function answerLines({ answers }: NodeWay): string[] {
  return answers.map((answer, index) => (index === 0 ? answer : `or: ${inRunning(answer)}`));
}

/** The answers of a way as one phrase: "Both hot or one hot, one cool". */
export function answersText({ answers }: NodeWay): string {
  return answers.map((answer, index) => (index === 0 ? answer : inRunning(answer))).join(' or ');
}

/** Lower case at the start, but leave A/C and EGR alone. */
function inRunning(text: string): string {
  return /^\p{Lu}(?:\p{Ll}|\s)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** Steps are numbered in the order of the list, ends lettered in the order they are first led to. */
export function marksOf(nodes: readonly TreeNode[]): Map<string, string> {
  const marks = new Map<string, string>();
  const steps = nodes.filter(isStep);
  steps.forEach((node, index) => {
    marks.set(node.id, String(index + 1));
  });
  const ends = [...steps.flatMap((node) => node.ways.map((way) => way.to)), ...nodes.map((node) => node.id)];
  let lettered = 0;
  for (const id of ends) if (!marks.has(id)) marks.set(id, letters(lettered++));
  return marks;
}

/** Whether the walk goes on from a node; ends and ways into other trees are where it leaves this one. */
export function isStep(node: TreeNode): boolean {
  return node.kind !== 'end' && node.kind !== 'tree';
}

/** A to Z, then AA, AB … */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/** The tree in sentences, one per node. */
export function describeTree(nodes: readonly TreeNode[]): string {
  const marks = marksOf(nodes);
  return nodes
    .map((node) => {
      const mark = marks.get(node.id) ?? '';
      if (node.kind === 'end') return `${mark}. ${node.causes.join('; or ')}.`;
      if (node.kind === 'tree') return `${mark}. Go on in: ${node.text}.`;
      const ways = node.ways.map((way) => `${answersText(way)}: ${marks.get(way.to) ?? ''}`);
      if (node.kind === 'prove')
        return `${mark}. Prove: ${node.text}. Proven: ${node.proven}; ${ways.join('; ')}.`;
      return `${mark}. ${node.text} ${ways.join('; ')}.`;
    })
    .join(' ');
}
