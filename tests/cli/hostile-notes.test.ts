/** Notes somebody wrote to do harm: each is refused in words, or is inert where it is shown. */
import { describe, expect, test } from 'vitest';
import type { RawFile } from '../../src/library/source-file.ts';
import { takeIn } from '../../src/library/take-in.ts';
import { renderBlock, renderLine } from '../../src/site/text/render-text.ts';
import { soundShelf } from '../library/shelves.ts';

const GOOD = `title: A note
by: AW
date: 2026-11-25
vehicle: tarn
text: Words.
status: proposed
sources: [common practice]
reviewed: 2026-11-25
`;
const note = (lines: string) => {
  const names = new Set(lines.split('\n').map((line) => /^([a-z-]+):/.exec(line)?.[1]));
  const rest = GOOD.split('\n').filter((line) => !names.has(/^([a-z-]+):/.exec(line)?.[1]));
  return `${lines}\n${rest.join('\n')}`;
};
const bytes = (text: string) => new TextEncoder().encode(text);
const shelf: RawFile[] = soundShelf();
const take = (name: string, content: Uint8Array) => takeIn('content', shelf, [{ name, bytes: content }]);
const exportOf = (id: string, of: object) =>
  bytes(
    JSON.stringify({
      form: 'headertank job cards',
      version: 1,
      exported: '2026-11-25T10:00:00.000Z',
      jobs: [],
      notes: [{ id, note: of }],
    }),
  );
const NOTE = {
  title: 'A note',
  by: 'AW',
  date: '2026-11-25',
  vehicle: 'tarn',
  text: 'Words.',
  status: 'proposed',
  sources: ['common practice'],
  reviewed: '2026-11-25',
};

test('the note they are all made from is taken in', () => {
  const { notes, refused } = take('good.yaml', bytes(GOOD));
  expect(refused).toEqual([]);
  expect(notes.map(({ path }) => path)).toEqual(['notes/2026/good.yaml']);
});

const refusedFiles: [string, string, Uint8Array, RegExp][] = [
  ['a script in the text', 'x.yaml', bytes(note('text: <script>alert(1)</script>')), /raw-html/],
  ['a handler in the title', 'x.yaml', bytes(note("title: '<img src=x onerror=alert(1)>'")), /raw-html/],
  [
    'HTML in a source',
    'x.yaml',
    bytes(note("sources: [{ measured: '<iframe src=//example.org>' }]")),
    /raw-html/,
  ],
  ['an HTML comment that hides the rest', 'x.yaml', bytes(note("text: 'Good <!-- hidden'")), /raw-html/],
  [
    'an image from elsewhere',
    'x.yaml',
    bytes(note("text: '![x](https://example.org/count.png)'")),
    /image-in-text/,
  ],
  [
    'a name that climbs out of the shelf',
    '../../../x/..\\..\\evil name.yaml',
    bytes(GOOD),
    /is no name for a note/,
  ],
  ['a hidden file', '.yaml', bytes(GOOD), /neither a note/],
  ['a name with a byte that ends it', 'good\0.yaml', bytes(GOOD), /is no name for a note/],
  [
    'an id in an export that climbs out',
    'cards.json',
    exportOf('../../package', NOTE),
    /no export of job cards/,
  ],
  ['a date that climbs out', 'x.yaml', bytes(note("date: '../../etc'")), /no date/],
  ['a note of a megabyte', 'x.yaml', bytes(note(`text: ${'word '.repeat(200_000)}`)), /has at most 64 kB/],
  ['UTF-16', 'x.yaml', new Uint8Array(Buffer.from(`\ufeff${GOOD}`, 'utf16le')), /not UTF-8/],
  ['bytes that are no text', 'x.yaml', new Uint8Array([0x74, 0x3a, 0xff, 0xfe, 0x80]), /not UTF-8/],
  [
    'a tag that makes a function',
    'x.yaml',
    bytes(note("text: !!js/function 'function () { return 1 }'")),
    /YAML cannot read it|unexpected|yaml-syntax|tag/i,
  ],
  ['a tag for bytes', 'x.yaml', bytes(note('text: !!binary aGVsbG8=')), /yaml-syntax|wrong-type|text|tag/i],
  [
    'anchors that double and double',
    'x.yaml',
    bytes(note('also: { trade: &a [x, x] }\ncorrects: [*a, *a, *a]')),
    /[Aa]lias|anchor/,
  ],
  [
    'a key that reaches into every object',
    'x.yaml',
    bytes(note('__proto__: { polluted: true }')),
    /unknown-field/,
  ],
  [
    'the same by another name',
    'x.yaml',
    bytes(note('constructor: { prototype: { polluted: true } }')),
    /unknown-field/,
  ],
  [
    'prototype keys in an export',
    'cards.json',
    bytes(
      new TextDecoder()
        .decode(exportOf('x', NOTE))
        .replace('"title"', '"__proto__":{"polluted":true},"constructor":1,"title"'),
    ),
    /no export of job cards/,
  ],
  [
    'a second document behind the first',
    'x.yaml',
    bytes(`${GOOD}---\nstatus: accepted\n`),
    /YAML cannot read it|yaml-syntax|second/i,
  ],
  [
    'a field twice, the second one other',
    'x.yaml',
    bytes(`${GOOD}status: accepted\n`),
    /YAML cannot read it|duplicate-key/i,
  ],
  [
    'a note that has reviewed itself',
    'x.yaml',
    bytes(note('status: accepted\nreviewed-by: KT')),
    /comes in as proposed/,
  ],
  [
    'an address where an id belongs',
    'x.yaml',
    bytes(note("vehicle: 'javascript:alert(1)'")),
    /id-not-kebab|error/,
  ],
  ['characters that turn the line round', 'x.yaml', bytes(note('by: "A\\u202EW"')), /unfit-value/],
];

test.each(refusedFiles)('refused: %s', (_what, name, content, why) => {
  const { notes, refused } = take(name, content);
  expect(refused.length).toBeGreaterThan(0);
  expect(refused.map((each) => each.why).join('\n')).toMatch(why);
  for (const { why: words } of refused) expect(words).not.toMatch(/\n\s+at |node_modules/);
  // What was placed before the check still lies inside the notes.
  for (const { path } of notes) expect(path).toMatch(/^notes\/\d{4}\/[a-z0-9-]+\.yaml$/);
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

describe('shown, it is inert', () => {
  test.each([
    '[press](javascript:alert(1))',
    '[press](JaVaScRiPt:alert(1))',
    '[press](data:text/html;base64,PHNjcmlwdD4=)',
    '[press](vbscript:x)',
    '<javascript:alert(1)>',
    '<a href="x" onclick="alert(1)">x</a>',
    '&lt;script&gt;alert(1)&lt;/script&gt;',
    '`<script>alert(1)</script>`',
    '```\n<script>alert(1)</script>\n```',
    '[x]: javascript:alert(1)\n\n[x]',
    '![x](https://example.org/x.png)',
    '**<b onmouseover=alert(1)>**',
    '[a](https://example.org/"onmouseover="alert(1))',
  ])('%s', (text) => {
    for (const html of [renderBlock(text), renderLine(text)]) {
      const tags = html.match(/<[^>]*>/g) ?? [];
      for (const tag of tags) {
        expect(tag).not.toMatch(/^<\/?(?:script|img|iframe|b )/);
        expect(tag).not.toMatch(/\son\w+=/);
        expect(tag).not.toMatch(/href="(?:javascript|data|vbscript):/i);
      }
    }
  });
});
