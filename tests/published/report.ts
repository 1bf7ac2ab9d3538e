import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { compareAll, summarise, type TrustLine } from './trust.ts';

/** The summary as the site reads it. */
export const TRUST_FILE = new URL('../../src/physics/trust.json', import.meta.url);

/** Text of the summary file. */
export function trustText(lines: readonly TrustLine[]): string {
  return `${JSON.stringify(lines, null, 2)}\n`;
}

/** Table for the terminal. */
export function reportText(lines: readonly TrustLine[]): string {
  const head = ['n', 'mean', 'p90', 'largest', 'passes', 'unit', 'quantity', 'against'];
  const rows = lines.map((line) => [
    String(line.n),
    String(line.mean),
    String(line.p90),
    String(line.largest),
    `${line.accept}${line.explained && ' *'}`,
    line.unit,
    line.quantity,
    `${line.source} (${line.kind})`,
  ]);
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const total = lines.reduce((sum, { n }) => sum + n, 0);
  const notes = lines
    .filter(({ explained }) => explained)
    .map((line) => `* ${line.quantity}: ${line.explained}`);
  return [
    ...[head, ...rows].map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    ),
    '',
    `${total} outside figures over ${new Set(lines.map(({ quantity }) => quantity)).size} quantities.`,
    ...notes,
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { write: { type: 'boolean', default: false } } });
  const lines = summarise(compareAll());
  console.log(reportText(lines));
  if (values.write) writeFileSync(TRUST_FILE, trustText(lines));
  else if (readFileSync(TRUST_FILE, 'utf8') !== trustText(lines))
    console.log('\nsrc/physics/trust.json is out of date: run with --write.');
}
