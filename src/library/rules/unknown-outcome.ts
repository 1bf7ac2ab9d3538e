import type { Fault, Path } from '../finding.ts';
import { listed, nearestOf } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/** Outcomes are named in four places besides the test's own list: evidence, otherwise, a cause's proof, and what a case shows. */
export const unknownOutcome: ShelfRule = {
  id: 'unknown-outcome',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    const faults: Fault[] = [];
    const hold = (
      file: string,
      path: Path,
      on: 'key' | 'value',
      outcome: string,
      test: string,
      known: string[],
    ) => {
      if (known.includes(outcome)) return;
      const nearest = nearestOf(outcome, known);
      const all = `It has ${listed(known)}.`;
      faults.push({
        at: { file, path, on },
        found: `The test "${test}" has no outcome "${outcome}".`,
        expected: nearest ? `Nearest: "${nearest.word}". ${all}` : all,
        byHand: 'use one of the outcomes listed',
        ...(nearest?.sure && { replaceBy: nearest.word }),
      });
    };
    for (const { id, file, data } of records.test.values()) {
      const known = Object.keys(data.outcomes);
      if (data.sound !== undefined) hold(file, ['sound'], 'value', data.sound, id, known);
      for (const outcome of Object.keys(data.otherwise))
        hold(file, ['otherwise', outcome], 'key', outcome, id, known);
      for (const [cause, row] of Object.entries(data.evidence))
        for (const outcome of Object.keys(row))
          hold(file, ['evidence', cause, outcome], 'key', outcome, id, known);
    }
    for (const { file, data } of records.case.values())
      for (const [test, { sees }] of Object.entries(data.shows)) {
        const outcomes = records.test.get(test)?.data.outcomes;
        if (outcomes) hold(file, ['shows', test, 'sees'], 'value', sees, test, Object.keys(outcomes));
      }
    for (const { file, data } of records.cause.values()) {
      for (const [at, other] of (data.confirm?.or ?? []).entries()) {
        const outcomes = records.test.get(other.test)?.data.outcomes;
        if (outcomes)
          hold(
            file,
            ['confirm', 'or', at, 'outcome'],
            'value',
            other.outcome,
            other.test,
            Object.keys(outcomes),
          );
      }
      const { test, outcome } = data.confirm ?? {};
      const known = test === undefined ? undefined : records.test.get(test)?.data.outcomes;
      if (test !== undefined && outcome !== undefined && known)
        hold(file, ['confirm', 'outcome'], 'value', outcome, test, Object.keys(known));
    }
    return faults;
  },
};
