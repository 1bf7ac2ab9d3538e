/** Findings for tools: the whole of each, unshortened. */
import type { Finding } from '../finding.ts';

/** Findings and the number of records as JSON, for tools. */
export function reportJson(findings: readonly Finding[], records: number): string {
  return `${JSON.stringify({ records, findings }, null, 2)}\n`;
}
