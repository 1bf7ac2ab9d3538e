/** Rows of the evidence that part from physics and that nobody has settled, as findings of the quality report. */
import { readFileSync } from 'node:fs';
import { LineCounter, parseDocument } from 'yaml';
import type { Finding } from '../finding.ts';
import type { Records } from '../shelf.ts';
import { type Parted, partedRows } from './compare.ts';
import { isSettled, keptRows, settledRows } from './kept.ts';

const percent = (share: number) => `${Math.round(share * 100)} %`;

/**
 * @param records the shelf as read
 * @returns a warning a row, the furthest apart first; none of them is an error, for the simulation may be wrong
 * @throws when a file of the records has gone since it was read
 */
export function physicsFindings(records: Pick<Records, 'test'>): Finding[] {
  const settled = settledRows();
  const { rows, made } = keptRows();
  return partedRows(records, rows)
    .filter((row) => !isSettled(settled, row))
    .flatMap((row) => findingOf(records, row, made) ?? []);
}

function findingOf(records: Pick<Records, 'test'>, row: Parted, made: string): Finding | undefined {
  const entry = records.test.get(row.test);
  if (!entry) return undefined;
  return {
    rule: 'evidence-against-physics',
    level: 'warning',
    place: { file: entry.file, ...lineOf(entry.file, row) },
    found: `"${row.outcome}" is seen with ${row.cause} on ${percent(row.written)} of the cars${row.isNamed ? '' : ', by the row of all others'}; of ${row.cars} simulated cars that complain ${row.seen} show it (${made}).`,
    expected: `They part by ${row.steps.toFixed(1)} words of frequency; one is allowed.`,
    byHand:
      'find out who is right, by physics or a published figure, and say so in src/library/against-physics/settled.yaml.',
  };
}

/** Line and column of the row, or of the row of all others. */
function lineOf(file: string, { cause, isNamed }: Parted): Omit<Finding['place'], 'file'> {
  const text = readFileSync(file, 'utf8');
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const node: unknown = document.getIn(isNamed ? ['evidence', cause] : ['otherwise'], true);
  const start =
    typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range)
      ? Number(node.range[0])
      : 0;
  const { line, col } = lines.linePos(start);
  return { line, column: col, length: 0, source: text.split('\n')[line - 1] ?? '' };
}
