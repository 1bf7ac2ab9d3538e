/** Findings for the terminal. */
import type { Finding } from '../finding.ts';
import { printable, withoutUnseen } from '../unseen.ts';

/** Characters of a long line that are shown around the place. */
const WINDOW = 100;

/** Findings in full sentences, an excerpt with each, a blank line between them; empty when there are none. */
export function reportText(findings: readonly Finding[]): string {
  return findings.map((finding) => `${oneFinding(finding)}\n`).join('\n');
}

function oneFinding({ rule, level, place, found, expected, byHand, mend }: Finding): string {
  const head = `${printable(place.file)}:${place.line}:${place.column}  ${level}  ${rule}`;
  const says = expected === undefined ? found : `${found} ${expected}`;
  const ways = [mend && 'npm run check -- --mend', byHand].filter((way) => way !== undefined);
  const lines = [head, ...excerptOf(place), `  ${printable(says)}`];
  if (ways.length > 0) lines.push(`  To mend: ${ways.join(', or ')}.`);
  return lines.join('\n');
}

function excerptOf({ line, column, length, source }: Finding['place']): string[] {
  if (source === undefined) return [];
  const number = String(line).padStart(4);
  const from = source.length <= WINDOW ? 0 : Math.max(0, Math.min(column - 21, source.length - WINDOW));
  const cut = source.slice(from, from + WINDOW);
  const before = from > 0 ? '…' : '';
  const after = from + WINDOW < source.length ? '…' : '';
  const shown = `${before}${withoutUnseen(cut.replaceAll('\t', '→'))}${after}`;
  const start = column - 1 - from + before.length;
  const carets = '^'.repeat(Math.max(1, Math.min(length, shown.length - start)));
  return [`${number} | ${shown}`, `${' '.repeat(number.length)} | ${' '.repeat(start)}${carets}`];
}

/** One line for each finding, for people in a hurry and for editors. */
export function reportShort(findings: readonly Finding[]): string {
  return findings
    .map(({ place, found, expected }) => {
      const right = expected === undefined ? '' : ` — ${withoutStop(expected)}`;
      const says = printable(`${withoutStop(found)}${right}`);
      return `${printable(place.file)}:${place.line}:${place.column}  ${says}\n`;
    })
    .join('');
}

function withoutStop(sentence: string): string {
  return sentence.replace(/\.$/, '');
}

export interface Totals {
  /** Record files looked at. */
  records: number;
  seconds: number;
}

/** `2 errors in 1 of 412 records, 1 can be mended. 0.9 s` */
export function summary(findings: readonly Finding[], { records, seconds }: Totals): string {
  const errors = findings.filter((finding) => finding.level === 'error').length;
  const warnings = findings.length - errors;
  const time = `${seconds.toFixed(1)} s`;
  if (findings.length === 0) return `${many(records, 'record')} checked, nothing to mend. ${time}`;
  const counts = [
    ...(errors > 0 ? [many(errors, 'error')] : []),
    ...(warnings > 0 ? [many(warnings, 'warning')] : []),
  ].join(' and ');
  const files = new Set(findings.map((finding) => finding.place.file)).size;
  const mendable = findings.filter((finding) => finding.mend).length;
  const mended = mendable > 0 ? `, ${mendable} can be mended` : '';
  return `${counts} in ${files} of ${many(records, 'record')}${mended}. ${time}`;
}

function many(count: number, word: string): string {
  return `${count.toLocaleString('en-GB')} ${word}${count === 1 ? '' : 's'}`;
}
