/** How the answers of a walk came about: the drawn path in its order, then what was answered out of turn. */
import type { WalkPlace, WalkTree } from '../../../diagnosis/walk.ts';
import type { KnownLayout, LayoutFeature } from '../../../model/layout.ts';
import { recheckId } from '../../../model/recheck.ts';
import { type Answers, isReadingKey, isToldKey, layoutKey, readingKey, SKIPPED } from '../answers.ts';

export interface TrailEntry {
  step: string;
  /** Key in the answers; what Change takes back. */
  key: string;
  value: string;
  /** What was read, where it chose the answer. */
  reading?: string;
  /** The chosen vehicle answered it. */
  fromVehicle?: boolean;
}

/**
 * The answers on the drawn path, in its order.
 * @param proofs the tests that prove a cause, the first the one to ask
 * @param vehicle layout of the chosen vehicle
 */
export function trailOf(
  tree: WalkTree,
  { passed }: WalkPlace,
  answers: Answers,
  proofs: (cause: string) => readonly string[],
  vehicle: KnownLayout,
): TrailEntry[] {
  const told = new Set<string>();
  return passed.flatMap((step): TrailEntry[] => {
    const node = tree.steps[step];
    if (node === undefined || node.kind === 'end' || node.kind === 'tree') return [];
    const key =
      node.kind === 'test'
        ? node.test
        : node.kind === 'layout'
          ? layoutKey(node.feature)
          : [...proofs(node.cause), recheckId(node.cause)].find((each) => answers.has(each));
    if (key === undefined || told.has(key)) return [];
    told.add(key);
    const ofVehicle = node.kind === 'layout' ? vehicle[node.feature as LayoutFeature] : undefined;
    if (ofVehicle !== undefined) return [{ step, key, value: ofVehicle, fromVehicle: true }];
    const value = answers.get(key);
    return value === undefined ? [] : [{ step, key, value }];
  });
}

/** The answers of the drawn path, then those given out of turn; what the customer told stands at its question. */
export function allAnswers(answers: Answers, trail: readonly TrailEntry[]): TrailEntry[] {
  const told = new Set(trail.map(({ key }) => key));
  const rest = [...answers].filter(([key]) => !told.has(key) && !isReadingKey(key) && !isToldKey(key));
  const all: TrailEntry[] = [...trail, ...rest.map(([key, value]) => ({ step: '', key, value }))];
  return all.map((entry) => {
    const reading = answers.get(readingKey(entry.key));
    return reading === undefined ? entry : { ...entry, reading };
  });
}

/** The layout as far as it is known: the vehicle's, completed by what was answered in the walk. */
export function knownLayout(vehicle: KnownLayout, answers: Answers): KnownLayout {
  const known: Record<string, string> = {};
  for (const [key, value] of answers) {
    if (key.startsWith('layout.') && value !== SKIPPED) known[key.slice('layout.'.length)] = value;
  }
  return { ...known, ...vehicle } as Partial<Record<LayoutFeature, string>>;
}
