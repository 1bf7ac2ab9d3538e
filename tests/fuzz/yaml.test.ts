/** Records: whatever stands in a file, the check answers in findings, and what it lets onto the shelf is inert on a page. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stringify } from 'yaml';
import { checkFiles } from '../../src/library/check-files.ts';
import { reportHost } from '../../src/library/report/host.ts';
import { reportText } from '../../src/library/report/text.ts';
import { RULES } from '../../src/library/rules/index.ts';
import type { RawFile } from '../../src/library/source-file.ts';
import { plainText, renderBlock, renderLine } from '../../src/site/text/render-text.ts';
import { soundShelf } from '../library/shelves.ts';
import { escapes, HOSTILE, hostileText, LIMIT, runs } from './runs.ts';

const SOUND = soundShelf().filter(({ path }) => path.endsWith('.yaml'));
const TEXTS = SOUND.map(({ path, bytes }) => ({ path, lines: new TextDecoder().decode(bytes).split('\n') }));
/** Rules about one file; those about the whole shelf are not about what somebody wrote into this one. */
const OWN_RULES = RULES.filter(({ on }) => on !== 'shelf');

const YAML_PIECES = [
  '&a',
  '*a',
  '!!js/function',
  '!!binary',
  '? ',
  '---',
  '...',
  '%YAML 1.1',
  '<<: *a',
  '[',
  '{',
  ']',
  '}',
  '|',
  '>-',
  '\t',
  '  ',
  '~',
  'null',
  'yes',
  '.inf',
  '.nan',
  '0o17',
  '1e999',
  '2026-13-45',
  '- - - -',
  'a: b: c',
  ...HOSTILE,
];

/** One line put in another's place, doubled, moved in, cut, or given another value. */
const change = fc.tuple(
  fc.nat(),
  fc.constantFrom('value', 'insert', 'drop', 'double', 'indent', 'cut', 'quoted'),
  fc.oneof(fc.constantFrom(...YAML_PIECES), hostileText),
);

function changed(lines: readonly string[], changes: readonly [number, string, string][]): string {
  const now = [...lines];
  for (const [where, how, text] of changes) {
    const at = where % Math.max(1, now.length);
    const line = now[at] ?? '';
    if (how === 'value') now[at] = line.replace(/(:\s|-\s)?[^:]*$/, (_, start = '') => `${start}${text}`);
    else if (how === 'quoted')
      now[at] = line.replace(/(:\s|-\s).*$/, (_, start) => `${start}${JSON.stringify(text)}`);
    else if (how === 'insert') now.splice(at, 0, text);
    else if (how === 'drop') now.splice(at, 1);
    else if (how === 'double') now.splice(at, 0, line);
    else if (how === 'indent') now[at] = ` ${line}`;
    else now[at] = line.slice(0, line.length / 2);
  }
  return now.join('\n');
}

const nested = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    hostileText,
    fc.double(),
    fc.boolean(),
    fc.constant(null),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(hostileText, tie('value'), { maxKeys: 4 }),
  ),
})).value;

const record: fc.Arbitrary<RawFile> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .tuple(fc.constantFrom(...TEXTS), fc.array(change, { minLength: 1, maxLength: 4 }))
      .map(([{ path, lines }, changes]) => ({
        path,
        bytes: new TextEncoder().encode(changed(lines, changes)),
      })),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...TEXTS), nested)
      .map(([{ path }, value]) => ({ path, bytes: new TextEncoder().encode(stringify(value)) })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...TEXTS), fc.uint8Array({ maxLength: 300 }))
      .map(([{ path }, bytes]) => ({ path, bytes })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        hostileText,
        fc.constantFrom('[', '{a: ', '- ', '&a [*a, '),
        fc.oneof(
          { weight: 9, arbitrary: fc.integer({ min: 1, max: 200 }) },
          { weight: 1, arbitrary: fc.constant(3000) },
        ),
      )
      .map(([name, piece, times]) => ({
        path: `causes/${name}.yaml`,
        bytes: new TextEncoder().encode(piece.repeat(times)),
      })),
  },
);

/** Every text in a value, names of fields too. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) => [name, ...textsIn(each)]);
}

test('any record: findings in words, no rule breaks, and what is let in is inert', { timeout: LIMIT }, () => {
  let letIn = 0;
  fc.assert(
    fc.property(record, (file) => {
      const { findings, shelf } = checkFiles('content', [file], { rules: OWN_RULES });
      expect(findings.filter(({ rule }) => rule === 'rule-broke').map(({ found }) => found)).toEqual([]);
      for (const { found, expected = 'x', place } of findings) {
        expect(found.length).toBeGreaterThan(5);
        expect(expected).not.toBe('');
        expect(place.line).toBeGreaterThan(0);
      }
      // One line a finding, however many the text has: no line of a host's log is of the writer's making.
      const host = reportHost(findings);
      for (const line of host.split('\n').filter((each) => each !== ''))
        expect(line).toMatch(/^::(?:error|warning|notice)/);
      expect(reportText(findings)).not.toMatch(/\[object Object\]/);
      if (findings.some(({ level }) => level === 'error')) return;
      letIn += 1;
      for (const records of Object.values(shelf.records))
        for (const { data } of (records as Map<string, { data: unknown }>).values())
          for (const text of textsIn(data)) {
            expect([...escapes(renderBlock(text)), ...escapes(renderLine(text))]).toEqual([]);
            plainText(text);
          }
    }),
    runs(2000),
  );
  expect(letIn).toBeGreaterThan(20);
});

test('any text at all is inert once rendered, let in or not', { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(fc.oneof(hostileText, fc.string({ unit: 'binary', maxLength: 300 })), (text) => {
      for (const render of [renderBlock, renderLine]) {
        try {
          expect(escapes(render(text))).toEqual([]);
        } catch (error) {
          // The rule unknown-figure lets none of these onto the shelf; should one get there, the build stops with its name.
          if (!(error instanceof Error && error.message.startsWith('No figure is called'))) throw error;
        }
      }
    }),
    runs(3000),
  );
});

test('the look for escapes is awake', () => {
  expect(escapes('<p>87 °C <b>&lt;script&gt;</b> <a href="https://example.org/">x</a></p>')).toEqual([]);
  for (const markup of [
    '<script>',
    '<img src=x onerror=hurt()>',
    '<a href="javascript:hurt()">',
    '<p onclick="hurt()">',
    '<p title="" onclick="hurt()">',
    "<p title='a'>",
    '<svg/onload=hurt()>',
    '<!-- x',
    '<b',
  ])
    expect(escapes(markup)).not.toEqual([]);
});
