import type { Job } from '../../../model/job.ts';

/** Longest words of a step that a card takes. */
const LONGEST = 1000;

/**
 * Ticks a step of a procedure, or takes its tick away.
 * @param step its number in the record, from 1
 * @param what its words as they stand on the page; undefined takes the tick away
 */
export function tickStep(
  job: Job,
  { id, title }: { id: string; title: string },
  step: number,
  what: string | undefined,
): Job {
  const { [id]: before, ...others } = job.steps ?? {};
  const rest = (before?.done ?? []).filter((each) => each.step !== step);
  const done =
    what === undefined
      ? rest
      : [...rest, { step, at: new Date().toISOString(), what: what.slice(0, LONGEST) }].sort(
          (a, b) => a.step - b.step,
        );
  return { ...job, steps: { ...others, ...(done.length > 0 && { [id]: { title, done } }) } };
}
