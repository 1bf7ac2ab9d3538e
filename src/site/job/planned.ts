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
  const at = work.findIndex(({ finishes }, index) => finishes && index > 0);
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

/** Lines that are about coolant to be filled, and what they say of it. */
const COOLANT = /^coolant(?!\s+or\b)(?:[\s,:]+(?<words>.+))?$/i;
/** What says no more than how much, where the litres stand beside it. */
const ONLY_AMOUNT = /^(?:(?:for )?(?:a|the) (?:whole|full) \w+|\{coolant\.(?:capacity|drain)\})$/i;
const WHOLE_FILL =
  /\{coolant\.capacity\}|\b(?:whole|full) (?:capacity|system|change|flush|fill)\b|\bthan the capacity\b/i;

/** What a plan says of its coolant, whoever says it. */
export interface PlannedCoolant {
  /** Whether one of its lines asks for a whole fill; otherwise what is drained goes in again. */
  whole: boolean;
  /** Everything said of it beside the amount, each once. */
  words: string[];
}

/** The coolant of a plan, or undefined when it needs none. */
export function coolantOf(plan: JobPlan, work: readonly PlannedWork[]): PlannedCoolant | undefined {
  const lines = linesOf(plan, work).filter((line) => COOLANT.test(line));
  const isFilled = work.some(({ fills }) => fills);
  if (lines.length === 0 && !isFilled) return undefined;
  const words = lines.flatMap((line) => COOLANT.exec(line)?.groups?.words ?? []);
  return {
    whole: words.some((each) => WHOLE_FILL.test(each)),
    words: [...new Set(words)].filter((each) => !isFilled || !ONLY_AMOUNT.test(each)),
  };
}

/**
 * What to have ready, by what it is for. What the cause itself names stands in place of the repair's own parts, which
 * say the same less exactly. A line that stands twice is written once; so is coolant, however many works ask for it: where
 * one of them fills, with its litres beside the list, otherwise where it is named first.
 */
export function partsFor(plan: JobPlan, work: readonly PlannedWork[]): PartsOf[] {
  const told = new Set<string>();
  let coolant = work.some(({ fills }) => fills) ? undefined : coolantOf(plan, work);
  const fresh = (lines: readonly string[]) =>
    lines.flatMap((line) => {
      if (COOLANT.test(line)) {
        const once = coolant && coolantLine('Coolant', coolant);
        coolant = undefined;
        return once ?? [];
      }
      const key = line.toLowerCase();
      if (told.has(key)) return [];
      told.add(key);
      return line;
    });
  return groupsOf(plan, work)
    .map(({ title, parts, consumables }) => ({ title, parts: fresh(parts), consumables: fresh(consumables) }))
    .filter(({ parts, consumables }) => parts.length + consumables.length > 0);
}

/** One line: how much, then what else is said of it. */
export function coolantLine(amount: string, { words }: PlannedCoolant): string {
  return words.length === 0 ? amount : `${amount}: ${words.join('; ')}`;
}

function groupsOf(plan: JobPlan, [repair, ...after]: readonly PlannedWork[]): PartsOf[] {
  const first = {
    title: repair?.title ?? plan.title,
    parts: plan.parts.length > 0 ? plan.parts : (repair?.parts ?? []),
    consumables: [...plan.consumables, ...(repair?.consumables ?? [])],
  };
  return [first, ...after];
}

function linesOf(plan: JobPlan, work: readonly PlannedWork[]): string[] {
  return groupsOf(plan, work).flatMap(({ parts, consumables }) => [...parts, ...consumables]);
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
