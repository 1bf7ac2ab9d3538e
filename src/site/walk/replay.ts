/** Follow the authored tree with the answers given so far: where the walk stands, and how it came there. */
import type { KnownLayout, LayoutFeature } from '../../model/layout.ts';
import { type Answers, layoutKey, NOT_IT, PROVEN, proveKey, SKIPPED } from './answers.ts';
import type { WalkStep, WalkTree } from './walk-tree.ts';

export interface TrailEntry {
  step: string;
  /** Key in the answers; what Change takes back. */
  key: string;
  value: string;
  /** The chosen vehicle answered it. */
  fromVehicle?: boolean;
}

export type Standing =
  /** At a step that waits for an answer, or at an end. */
  | { kind: 'at'; step: string; node: WalkStep }
  /** A cause has been proven. */
  | { kind: 'proven'; cause: string }
  /** A test was skipped or every cause of an end is ruled out: the tree has no way on, the planner has. */
  | { kind: 'off-path' };

export interface Replay {
  trail: TrailEntry[];
  standing: Standing;
}

/**
 * @param answers in the order they were given
 * @param known the layout of the chosen vehicle; what it does not say is asked
 * @param cannot whether a test cannot be done here: its tool is missing, or the layout has no place for it
 */
export function replay(
  tree: WalkTree,
  answers: Answers,
  known: KnownLayout,
  cannot: (test: string) => boolean = () => false,
): Replay {
  const trail: TrailEntry[] = [];
  const provenKey = [...answers].find(([key, value]) => key.startsWith('prove.') && value === PROVEN)?.[0];
  let at = tree.start;
  // A sound tree has no loop; a damaged one must not hang the page.
  for (let turns = Object.keys(tree.steps).length + 1; turns > 0; turns--) {
    const node = tree.steps[at];
    if (!node) break;
    const move = moveFrom(node, answers, known, cannot);
    if (move.kind === 'take') {
      trail.push({
        step: at,
        key: move.key,
        value: move.value,
        ...(move.fromVehicle ? { fromVehicle: true } : {}),
      });
      at = move.next;
      continue;
    }
    if (move.kind === 'proven') return { trail, standing: { kind: 'proven', cause: move.cause } };
    if (provenKey) break;
    if (move.kind === 'skip') return { trail, standing: { kind: 'off-path' } };
    return { trail, standing: { kind: 'at', step: at, node } };
  }
  if (provenKey) return { trail, standing: { kind: 'proven', cause: provenKey.slice('prove.'.length) } };
  return { trail, standing: { kind: 'off-path' } };
}

type Move =
  | { kind: 'take'; key: string; value: string; next: string; fromVehicle?: boolean }
  | { kind: 'proven'; cause: string }
  | { kind: 'skip' }
  | { kind: 'stay' };

function moveFrom(
  node: WalkStep,
  answers: Answers,
  known: KnownLayout,
  cannot: (test: string) => boolean,
): Move {
  switch (node.kind) {
    case 'test':
      if (!answers.has(node.test) && cannot(node.test)) return { kind: 'skip' };
      return moveOn(node.on, node.test, answers.get(node.test));
    case 'layout': {
      const fromVehicle = known[node.feature];
      const next = fromVehicle === undefined ? undefined : node.on[fromVehicle];
      if (fromVehicle !== undefined && next !== undefined) {
        return { kind: 'take', key: layoutKey(node.feature), value: fromVehicle, next, fromVehicle: true };
      }
      return moveOn(node.on, layoutKey(node.feature), answers.get(layoutKey(node.feature)));
    }
    case 'prove': {
      const key = proveKey(node.cause);
      const shown = node.by && answers.get(node.by.test);
      const seen =
        shown === undefined || shown === SKIPPED ? undefined : shown === node.by?.outcome ? PROVEN : NOT_IT;
      const value = answers.get(key) ?? seen;
      if (value === PROVEN) return { kind: 'proven', cause: node.cause };
      return value === undefined ? { kind: 'stay' } : { kind: 'take', key, value, next: node.otherwise };
    }
    case 'end':
      return node.causes.every((cause) => answers.get(proveKey(cause)) === NOT_IT)
        ? { kind: 'skip' }
        : { kind: 'stay' };
    case 'tree':
      return { kind: 'stay' };
  }
}

function moveOn(on: Record<string, string>, key: string, value: string | undefined): Move {
  if (value === undefined) return { kind: 'stay' };
  const next = value === SKIPPED ? undefined : on[value];
  return next === undefined ? { kind: 'skip' } : { kind: 'take', key, value, next };
}

/** The layout as far as it is known: the vehicle's, completed by what was answered in the walk. */
export function knownLayout(vehicle: KnownLayout, answers: Answers): KnownLayout {
  const known: Record<string, string> = {};
  for (const [key, value] of answers) {
    if (key.startsWith('layout.') && value !== SKIPPED) known[key.slice('layout.'.length)] = value;
  }
  return { ...known, ...vehicle } as Partial<Record<LayoutFeature, string>>;
}
