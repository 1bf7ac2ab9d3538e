/** Findings as a code quality report: a list of issues that GitLab shows on the changed lines. */
import { createHash } from 'node:crypto';
import type { Finding } from '../finding.ts';
import { inOneLine } from './in-one-line.ts';

/** The fields GitLab documents for its code quality widget: description, check_name, fingerprint, severity, location. */
export function reportQuality(findings: readonly Finding[]): string {
  const issues = findings.map((finding) => {
    const { rule, level, place, found } = finding;
    // The same finding keeps its name when lines above it come and go.
    const name = JSON.stringify([rule, place.file, place.source?.trim() ?? '', found]);
    return {
      description: inOneLine(finding),
      check_name: rule,
      fingerprint: createHash('sha256').update(name).digest('hex'),
      severity: level === 'error' ? 'major' : 'minor',
      location: { path: place.file, lines: { begin: place.line } },
    };
  });
  return `${JSON.stringify(issues, null, 2)}\n`;
}
