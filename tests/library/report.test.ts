import { describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import type { Finding } from '../../src/library/finding.ts';
import { reportHost } from '../../src/library/report/host.ts';
import { reportJson } from '../../src/library/report/json.ts';
import { reportShort, reportText, summary } from '../../src/library/report/text.ts';
import type { Rule } from '../../src/library/rule.ts';
import { RULES } from '../../src/library/rules/index.ts';
import { faultyShelf, soundShelf } from './shelves.ts';

const slip: Finding = {
  rule: 'unknown-reference',
  level: 'error',
  place: {
    file: 'content/tests/hose-warm-up.yaml',
    line: 15,
    column: 3,
    length: 20,
    source: '  thermostat-stuck-opn: { warm-early: nearly always }',
  },
  found: 'No cause has the id "thermostat-stuck-opn".',
  expected: 'Nearest: "thermostat-stuck-open".',
  byHand: 'use the name of a file in content/causes/',
  mend: [{ start: 1, end: 2, text: 'x' }],
};

test('a finding in full shows the place, what is wrong, what is right and what to do', () => {
  expect(reportText([slip])).toBe(
    [
      'content/tests/hose-warm-up.yaml:15:3  error  unknown-reference',
      '  15 |   thermostat-stuck-opn: { warm-early: nearly always }',
      '     |   ^^^^^^^^^^^^^^^^^^^^',
      '  No cause has the id "thermostat-stuck-opn". Nearest: "thermostat-stuck-open".',
      '  To mend: npm run check -- --mend, or use the name of a file in content/causes/.',
      '',
    ].join('\n'),
  );
});

test('a finding in one line', () => {
  expect(reportShort([slip])).toBe(
    'content/tests/hose-warm-up.yaml:15:3  No cause has the id "thermostat-stuck-opn" — Nearest: "thermostat-stuck-open"\n',
  );
});

test('of a long line the part around the place is shown', () => {
  const source = `${'a'.repeat(150)}WRONG${'b'.repeat(150)}`;
  const long = { ...slip, place: { ...slip.place, column: 151, length: 5, source } };
  const [, shown = '', carets = ''] = reportText([long]).split('\n');
  expect(shown.length).toBeLessThan(115);
  expect(shown.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('WRONG');
});

describe('the last line', () => {
  const totals = { records: 412, seconds: 0.93 };
  test('counts errors, records and mends', () => {
    const other: Finding = { ...slip, rule: 'bad-date' };
    expect(summary([slip, { ...other, mend: [] }], totals)).toBe(
      '2 errors in 1 of 412 records, 2 can be mended. 0.9 s',
    );
  });
  test('says that there is nothing', () => {
    expect(summary([], { records: 1, seconds: 0 })).toBe('1 record checked, nothing to mend. 0.0 s');
  });
  test('tells errors from warnings', () => {
    expect(summary([slip, { ...slip, level: 'warning' }], totals)).toContain('1 error and 1 warning in');
  });
});

describe('annotations for the host', () => {
  test('escape what the host would take as its own', () => {
    const odd: Finding = { ...slip, found: '50 % of\nthem', place: { ...slip.place, file: 'a,b:c.yaml' } };
    expect(reportHost([odd])).toBe(
      '::error file=a%2Cb%3Ac.yaml,line=15,col=3,title=unknown-reference::50 %25 of<U+000A>them Nearest: "thermostat-stuck-open". To mend: use the name of a file in content/causes/.\n',
    );
  });
  test('beyond ten it says how many are left', () => {
    const report = reportHost(Array.from({ length: 13 }, () => slip));
    expect(report.match(/^::error/gm)).toHaveLength(10);
    expect(report).toContain('::notice::3 more errors');
  });
});

test('the report for tools has every finding whole', () => {
  expect(JSON.parse(reportJson([slip], 7))).toEqual({ records: 7, findings: [slip] });
});

test('a rule that breaks becomes a finding, and the others go on', () => {
  const broken: Rule = {
    id: 'does-not-work',
    level: 'error',
    on: 'record',
    check: ({ kind }) => {
      if (kind === 'tool') throw new Error('no hands');
      return [];
    },
  };
  const { findings } = checkFiles('content', faultyShelf('bad-date'), { rules: [broken, ...RULES] });
  expect(findings.map((finding) => finding.rule)).toEqual(['rule-broke', 'bad-date']);
  expect(findings[0]?.found).toBe(
    'The rule "does-not-work" broke down here and has checked nothing: Error: no hands.',
  );
});

test('findings of all files come in one run, in the order of file, line and column', () => {
  const shelf = soundShelf().map((file) => ({
    ...file,
    bytes: new TextEncoder().encode(
      new TextDecoder().decode(file.bytes).replace('reviewed: 2026-11-25', 'reviewed: 2026-11-31'),
    ),
  }));
  const { findings } = checkFiles('content', shelf);
  expect(findings.length).toBe(15);
  const places = findings.map(({ place }) => place.file);
  expect(places).toEqual([...places].sort());
});
