import { completeRow, describeRowFault, type EvidenceRow } from '../../diagnosis/likelihood.ts';
import type { Path } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** A row of evidence that no set of cars could show: too many outcomes too often, or too few. */
export const evidenceContradictsItself: ShelfRule = {
  id: 'evidence-contradicts-itself',
  level: 'error',
  on: 'shelf',
  check: ({ records }) =>
    [...records.test.values()].flatMap(({ file, data }) => {
      const outcomes = Object.keys(data.outcomes);
      const rows: [Path, EvidenceRow][] = Object.entries(data.evidence).map(([cause, row]) => [
        ['evidence', cause],
        row,
      ]);
      rows.push([['otherwise'], data.otherwise]);
      return rows.flatMap(([path, row]) => {
        const completed = completeRow(outcomes, row);
        // A wrong name is another rule's.
        if (completed.ok || completed.fault.kind === 'unknown-outcome') return [];
        return [
          {
            at: { file, path, on: 'key' },
            found: describeRowFault(completed.fault, outcomes),
            byHand: 'choose other frequency words for this row',
          },
        ];
      });
    }),
};
