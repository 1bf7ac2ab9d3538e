import type { Draft } from './draft.ts';
import type { Fault } from './finding.ts';

/** Faults that a schema of the model has given to a rule by name. */
export function ruledFaults(
  { file, faults }: Draft,
  rule: string,
  byHand: string,
  right = 'Right is',
): Fault[] {
  return faults.flatMap((fault) =>
    fault.is === 'ruled' && fault.rule === rule
      ? [
          {
            at: { file, path: fault.path },
            found: fault.found,
            ...(fault.expected !== undefined && { expected: `${right} ${fault.expected}.` }),
            byHand,
          },
        ]
      : [],
  );
}
