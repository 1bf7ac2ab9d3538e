/** Findings as annotations that the repository's host shows beside the changed lines. */
import type { Finding } from '../finding.ts';
import { inOneLine } from './in-one-line.ts';

/** GitHub shows this many annotations of a kind a step and drops the rest without a word. */
const SHOWN = 10;

/** Workflow commands as GitHub documents them: `::error file=…,line=…,col=…,title=…::text`. */
export function reportHost(findings: readonly Finding[]): string {
  return (['error', 'warning'] as const)
    .map((level) => {
      const ofLevel = findings.filter((finding) => finding.level === level);
      const left = ofLevel.length - SHOWN;
      const lines = ofLevel.slice(0, SHOWN).map(annotation);
      if (left > 0) lines.push(`::notice::${left} more ${level}s stand in the log, in full.\n`);
      return lines.join('');
    })
    .join('');
}

function annotation(finding: Finding): string {
  const { rule, level } = finding;
  const { file, line, column } = finding.place;
  const fields = `file=${property(file)},line=${line},col=${column},title=${property(rule)}`;
  return `::${level} ${fields}::${data(inOneLine(finding))}\n`;
}

function data(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
