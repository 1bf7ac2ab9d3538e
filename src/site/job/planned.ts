/** A plan as it is for one vehicle: the way through its procedures, minutes, cautions, joints and parts. Pure. */
import type { Joint } from '../../model/figures.ts';
import { type KnownLayout, layoutAllows } from '../../model/layout.ts';
import type { JobPlan, PlannedWork } from './job-plan.ts';

/** The procedures of a plan that this layout goes through, in order. */
export function workFor({ work }: JobPlan, layout: KnownLayout): PlannedWork[] {
  const fits = new Map(
    work.filter((each) => layoutAllows(each.layout, layout)).map((each) => [each.id, each]),
  );
  const [first] = work;
  const reached = new Set(first ? [first.id] : []);
  // Work that is not on this vehicle leads nowhere, so that what only it is followed by falls away with it.
  for (const id of reached) for (const next of fits.get(id)?.followedBy ?? []) reached.add(next);
  return work.filter(({ id }) => reached.has(id) && fits.has(id));
}

/** Minutes of the repair, and of what comes after it: filling, proving, handing back. */
export function minutesOf(work: readonly PlannedWork[]): { repair: number; extra: number } {
  const at = work.findIndex(({ stage }, index) => stage !== 'repair' && index > 0);
  const sum = (some: readonly PlannedWork[]) => some.reduce((total, { minutes }) => total + minutes, 0);
  const repair = sum(at < 0 ? work : work.slice(0, at));
  return { repair, extra: sum(work) - repair };
}

/** The joints a job tightens, in the order of its work, each once. */
export function jointsOf(work: readonly PlannedWork[], layout: KnownLayout): Joint[] {
  const joints = work.flatMap((each) => each.joints.filter((one) => layoutAllows(one.layout, layout)));
  return [...new Set(joints.map(({ joint }) => joint))];
}

export interface PartsOf {
  title: string;
  parts: string[];
  consumables: string[];
}

/** What each work warns of, each once; what only another drive has is left out. */
export function cautionsOf(
  work: readonly PlannedWork[],
  layout: KnownLayout,
): { id: string; title: string }[] {
  const all = work.flatMap(({ cautions }) => cautions.filter((each) => layoutAllows(each.layout, layout)));
  return [...new Map(all.map((each) => [each.id, each])).values()];
}

/** What a plan says of its coolant, whoever says it. */
export interface PlannedCoolant {
  /** Whether one of them asks for the whole system; otherwise what is drained goes in again. */
  whole: boolean;
  /** Everything said of it beside the amount, each once. */
  notes: string[];
}

/** The coolant of a plan, or undefined when it needs none. */
export function coolantOf(plan: JobPlan, work: readonly PlannedWork[]): PlannedCoolant | undefined {
  const wanted = [plan, ...work].flatMap(({ coolant }) => coolant ?? []);
  if (wanted.length === 0) return undefined;
  return {
    whole: wanted.some(({ amount }) => amount === 'the whole system'),
    notes: [...new Set(wanted.flatMap(({ note }) => note ?? []))],
  };
}

/** Whether one of the works fills, so that its litres are known. */
export function isFilled(work: readonly PlannedWork[]): boolean {
  return work.some(({ stage }) => stage === 'fill');
}

/**
 * What to have ready, by what it is for. What the cause itself names stands in place of the repair's own parts, which
 * say the same less exactly. A line that stands twice is written once. Coolant is one line of the repair; where a work
 * fills it is left out, since its litres stand beside the list.
 */
export function partsFor(plan: JobPlan, work: readonly PlannedWork[]): PartsOf[] {
  const told = new Set<string>();
  const fresh = (lines: readonly string[]) =>
    lines.filter((line) => {
      const key = line.toLowerCase();
      if (told.has(key)) return false;
      told.add(key);
      return true;
    });
  const coolant = isFilled(work) ? undefined : coolantOf(plan, work);
  const [repair, ...after] = work;
  const first = {
    title: repair?.title ?? plan.title,
    parts: plan.parts.length > 0 ? plan.parts : (repair?.parts ?? []),
    consumables: [
      ...(coolant ? [coolantLine('Coolant', coolant)] : []),
      ...plan.consumables,
      ...(repair?.consumables ?? []),
    ],
  };
  return [first, ...after]
    .map(({ title, parts, consumables }) => ({ title, parts: fresh(parts), consumables: fresh(consumables) }))
    .filter(({ parts, consumables }) => parts.length + consumables.length > 0);
}

/** One line: how much, then what else is said of it. */
export function coolantLine(amount: string, { notes }: PlannedCoolant): string {
  return notes.length === 0 ? amount : `${amount}: ${notes.join('; ')}`;
}

/**
 * Address of the estimate with its fields filled in.
 * @param find minutes of finding the cause, on average and nine in ten, while it is not found
 */
export function estimateAddress(
  { repair, extra }: { repair: number; extra: number },
  find = { expected: 0, nineInTen: 0 },
): string {
  const whole = (minutes: number) => String(Math.round(minutes));
  const fields = new URLSearchParams({
    find: whole(find.expected),
    'find-nine': whole(find.nineInTen),
    repair: whole(repair),
    extra: whole(extra),
    // What the parts cost nobody knows yet: the price says that it is without them.
    parts: '',
  });
  return `/calculators/estimate.html#${fields}`;
}
