import { parse } from 'yaml';
import { guideHeadSchema } from '../../model/guide.ts';
import type { FileRule } from '../rule.ts';

/** Title, summary, sources and date of a guide: without them the build stops, so the check says it first. */
export const guideHead: FileRule = {
  id: 'guide-head',
  level: 'error',
  on: 'file',
  check: ({ file, role, text }) => {
    if (role.is !== 'guide') return [];
    const head = /^---\r?\n([\s\S]*?)\r?\n---/.exec(text)?.[1];
    const fault = (found: string, field = '---') => {
      const start = Math.max(text.indexOf(field), 0);
      return [
        {
          at: { file, start, end: start + Math.min(field.length, text.length - start) },
          found,
          expected: 'A guide begins with title, summary, sources and reviewed, between two lines "---".',
          byHand: 'write them as another guide has them',
        },
      ];
    };
    if (head === undefined) return fault('This guide has no head.');
    const read = guideHeadSchema.safeParse(yamlOf(head));
    if (read.success) return [];
    const [{ path, message } = { path: [], message: '' }] = read.error.issues;
    const field = path.length > 0 ? String(path[0]) : '---';
    if (/received undefined/.test(message)) return fault(`"${field}" is missing.`);
    return fault(`"${field}" of the guide cannot stand like this: ${message}`, field);
  },
};

function yamlOf(text: string): unknown {
  try {
    return parse(text, { maxAliasCount: 0, logLevel: 'error' });
  } catch {
    return undefined;
  }
}
