/** Follow the authored tree with the answers given so far: where the walk stands, and how it came there. */
import type { KnownLayout, LayoutFeature } from '../../../model/layout.ts';
import { type Answers, layoutKey, NOT_IT, PROVEN, proveKey, SKIPPED } from '../answers.ts';
import type { WalkStep, WalkTree } from '../walk-tree.ts';

export interface TrailEntry {
  step: string;
  /** Key in the answers; what Change takes back. */
  key: string;
  value: string;
  /** What the answer says of the cause that was to be proven. */
  proves?: { cause: string; verdict: string };
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

/** What stands in the way of steps here; nothing, unless it is given. */
export interface Obstacles {
  /** Whether a test cannot be done here: its tool is missing, or the layout has no place for it. */
  cannot?(test: string): boolean;
  /** Whether this vehicle cannot have a cause: its layout has no such part. */
  cannotHave?(cause: string): boolean;
}

/**
 * @param answers in the order they were given
 * @param known the layout of the chosen vehicle; what it does not say is asked
 */
export function replay(
  tree: WalkTree,
  answers: Answers,
  known: KnownLayout,
  obstacles: Obstacles = {},
): Replay {
  const trail: TrailEntry[] = [];
  const provenKey = [...answers].find(([key, value]) => key.startsWith('prove.') && value === PROVEN)?.[0];
  let at = tree.start;
  // A sound tree has no loop; a damaged one must not hang the page.
  for (let turns = Object.keys(tree.steps).length + 1; turns > 0; turns--) {
    const node = tree.steps[at];
    if (!node) break;
    const move = moveFrom(node, answers, known, obstacles);
    if (move.kind === 'pass') {
      at = move.next;
      continue;
    }
    if (move.kind === 'take') {
      const { kind: _, next, ...entry } = move;
      trail.push({ step: at, ...entry });
      at = next;
      continue;
    }
    if (move.kind === 'proven' && move.entry) trail.push({ step: at, ...move.entry });
    if (move.kind === 'proven') return { trail, standing: { kind: 'proven', cause: move.cause } };
    if (provenKey) break;
    if (move.kind === 'skip') return { trail, standing: { kind: 'off-path' } };
    return { trail, standing: { kind: 'at', step: at, node } };
  }
  if (provenKey) return { trail, standing: { kind: 'proven', cause: provenKey.slice('prove.'.length) } };
  return { trail, standing: { kind: 'off-path' } };
}

type Taken = Omit<TrailEntry, 'step'>;
type Move =
  | ({ kind: 'take'; next: string } & Taken)
  /** There is nothing to do here on this vehicle. */
  | { kind: 'pass'; next: string }
  | { kind: 'proven'; cause: string; entry?: Taken }
  | { kind: 'skip' }
  | { kind: 'stay' };

function moveFrom(
  node: WalkStep,
  answers: Answers,
  known: KnownLayout,
  { cannot, cannotHave }: Obstacles,
): Move {
  switch (node.kind) {
    case 'test':
      if (!answers.has(node.test) && cannot?.(node.test)) return { kind: 'skip' };
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
      if (cannotHave?.(node.cause)) return { kind: 'pass', next: node.otherwise };
      const taken = proofOf(node, answers);
      if (taken?.proves?.verdict === PROVEN) return { kind: 'proven', cause: node.cause, entry: taken };
      return taken ? { kind: 'take', next: node.otherwise, ...taken } : { kind: 'stay' };
    }
    case 'end':
      return node.causes.every((cause) => cannotHave?.(cause) || answers.get(proveKey(cause)) === NOT_IT)
        ? { kind: 'skip' }
        : { kind: 'stay' };
    case 'tree':
      return { kind: 'stay' };
  }
}

/** What was said of a cause: that it is proven or not, or the answer of the test that tells. */
function proofOf({ cause, by }: Extract<WalkStep, { kind: 'prove' }>, answers: Answers): Taken | undefined {
  const key = proveKey(cause);
  const said = answers.get(key);
  if (said !== undefined) return { key, value: said, proves: { cause, verdict: said } };
  const seen = by && answers.get(by.test);
  if (seen === undefined) return undefined;
  const verdict = seen === SKIPPED ? SKIPPED : seen === by?.outcome ? PROVEN : NOT_IT;
  return { key: by?.test ?? key, value: seen, proves: { cause, verdict } };
}

/**
 * The answers with what they say of causes written out, as the engine wants it: a cause whose test showed something
 * else is ruled out.
 */
export function withVerdicts(answers: Answers, trail: readonly TrailEntry[]): Map<string, string> {
  const all = new Map(answers);
  for (const { proves } of trail) if (proves) all.set(proveKey(proves.cause), proves.verdict);
  return all;
}

/** The answers of the drawn path, then those given out of turn. */
export function allAnswers(answers: Answers, trail: readonly TrailEntry[]): TrailEntry[] {
  const told = new Set(trail.map(({ key }) => key));
  const rest = [...answers].filter(([key]) => !told.has(key));
  return [...trail, ...rest.map(([key, value]) => ({ step: '', key, value }))];
}

/** The name of the section at which the drawn path stands; none where it has no way on. */
export function partOnPath(standing: Replay['standing']): string | undefined {
  if (standing.kind === 'at') return `step ${standing.step}`;
  return standing.kind === 'proven' ? `proof ${standing.cause}` : undefined;
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
