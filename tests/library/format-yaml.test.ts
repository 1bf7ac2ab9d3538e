/** The formatter moves spaces and never meaning. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { formatYaml } from '../../src/library/format-yaml.ts';

function format(text: string): string {
  const { text: formatted, ok } = formatYaml(text);
  expect(ok).toBe(true);
  return formatted;
}

describe('what it mends', () => {
  test('levels of four spaces, and lists that stand at the edge', () => {
    expect(format('a:\n    b: 1\n    c:\n    - x\n    -   d: 1\n        e: 2\n')).toBe(
      'a:\n  b: 1\n  c:\n    - x\n    -   d: 1\n        e: 2\n',
    );
    expect(format('list:\n- one\n- two\n')).toBe('list:\n  - one\n  - two\n');
    expect(format('steps:\n- do: a\n  why: b\n- - x\n  - y\n')).toBe(
      'steps:\n  - do: a\n    why: b\n  - - x\n    - y\n',
    );
  });
  test('spaces at line ends, empty lines, line ends of another system, a missing last one', () => {
    expect(format('\n\na: 1   \r\n\r\n\r\nb: 2')).toBe('a: 1\n\nb: 2\n');
  });
  test('a text over several lines moves with its field', () => {
    expect(format('a:\n     b: >-\n         one\n         two\n     c: three\n       four\n')).toBe(
      'a:\n  b: >-\n      one\n      two\n  c: three\n    four\n',
    );
  });
});

describe('what it leaves', () => {
  test.each([
    ['comments', 'a: 1 # one\n# between\nb: 2\n'],
    ['quotes and order', 'b: \'x\'\na: "y"\n'],
    ['braces over several lines', 'on: {\n  a: b,\n  c: d\n}\n'],
    ['spaces inside a literal text', 'a: |\n  one  \n\n\n  two\n'],
    ['texts whose indent is stated', 'a: |2\n    one\n'],
    ['an empty file', ''],
  ])('%s', (_what, text) => {
    expect(format(text)).toBe(text);
  });
  test('a text that is no YAML', () => {
    expect(formatYaml('a: [1\nb')).toEqual({ text: 'a: [1\nb', ok: false });
  });
});

test('meaning and comments stay, and a second time changes nothing, for anything that can be written', () => {
  const text = fc.oneof(
    fc.constantFrom(
      'plain',
      '# no comment',
      '- x',
      'a: b',
      'two\nlines',
      ' lead',
      'tail ',
      '',
      'long '.repeat(40),
      '{x}',
      '> |',
      'a\n\n\nb\n',
    ),
    fc.string({ unit: 'grapheme' }),
  );
  const value = fc.letrec((tie) => ({
    any: fc.oneof(
      { depthSize: 'small' },
      text,
      fc.integer(),
      fc.boolean(),
      fc.constant(null),
      tie('list'),
      tie('map'),
    ),
    list: fc.array(tie('any'), { maxLength: 4 }),
    map: fc.dictionary(fc.constantFrom('a', 'b-c', 'd e', 'f'), tie('any'), { maxKeys: 4 }),
  })).map;
  let formatted = 0;
  let runs = 0;
  fc.assert(
    fc.property(value, fc.integer({ min: 1, max: 7 }), fc.boolean(), (data, indent, indentSeq) => {
      const written = stringify(data, { indent, indentSeq, lineWidth: 40 });
      const once = formatYaml(written);
      runs += 1;
      if (once.ok) formatted += 1;
      expect(parse(once.text)).toEqual(parse(written));
      expect(formatYaml(once.text)).toEqual(once);
    }),
    { numRuns: 500 },
  );
  // Leaving everything as it is would also pass.
  expect(formatted / runs).toBeGreaterThan(0.95);
}, 60_000);

test('every record of the shelf means the same afterwards', () => {
  for (const name of readdirSync('content', { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.yaml')) continue;
    const text = readFileSync(join('content', name), 'utf8');
    const { text: formatted, ok } = formatYaml(text);
    expect({ name, ok }).toEqual({ name, ok: true });
    if (formatted !== text) expect(parse(formatted)).toEqual(parse(text));
  }
}, 60_000);
