import type { Fault } from '../finding.ts';
import type { FileRule } from '../rule.ts';

/**
 * A guide is MDX, which would run whatever stands in it while the site is built. It holds words, links and the parts of the
 * site with plain values; nothing else.
 */
export const guideRunsCode: FileRule = {
  id: 'guide-runs-code',
  level: 'error',
  on: 'file',
  check: ({ file, role, text }) => {
    if (role.is !== 'guide') return [];
    const body = withoutSamples(text);
    return CODE.flatMap(({ pattern, is }): Fault[] => {
      const found = pattern.exec(body);
      if (!found) return [];
      return [
        {
          at: { file, start: found.index, end: found.index + Math.min(found[0].length, 60) },
          found: is,
          expected: 'A guide holds words, links and parts of the site such as <Fig … />, with plain values.',
          byHand: 'take it out',
        },
      ];
    }).concat(expressions(file, body));
  },
};

const CODE = [
  { pattern: /^(?:import|export)\b.*/m, is: 'This line would be run as a program while the site is built.' },
  { pattern: /<\/?[a-z!?][^>\n]*>?/, is: 'There is HTML in this guide.' },
  {
    pattern: /\]\(\s*<?\s*(?!https:|\/|#|mailto:)[a-z][a-z0-9+.-]*:[^)]*/i,
    is: 'This link leads neither into the site nor to an https:// address.',
  },
];

/** What stands in braces is a plain value: strings, numbers, names before a colon, brackets. */
function expressions(file: string, body: string): Fault[] {
  for (const { index, 0: whole } of body.matchAll(/\{[\s\S]*?\}(?=\s*(?:\/?>|[a-z]+=)|[^}\]]|$)/g)) {
    const left = whole
      .replace(/'[^'\n]*'|"[^"\n]*"/g, '')
      .replace(/[A-Za-z][\w-]*\s*:/g, '')
      .replace(/-?\d+(?:\.\d+)?|\btrue\b|\bfalse\b/g, '');
    if (/^[\s,[\]{}]*$/.test(left)) continue;
    return [
      {
        at: { file, start: index, end: index + Math.min(whole.length, 60) },
        found: 'What stands in these braces would be run as a program while the site is built.',
        expected: "In braces stands a plain value, such as {['scald']}; a brace in the text is written \\{.",
        byHand: 'take it out',
      },
    ];
  }
  return [];
}

/** The text with its code samples and escaped braces blanked: they are shown, not run. */
function withoutSamples(text: string): string {
  const blank = (sample: string) => sample.replace(/[^\n]/g, ' ');
  return text
    .replace(/^```[\s\S]*?^```/gm, blank)
    .replace(/`[^`\n]*`/g, blank)
    .replace(/\\[{}<]/g, '  ');
}
