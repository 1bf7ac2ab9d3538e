/** A page has the rules it can need: of what stands in it, what its scripts make, and what a walk brings. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { fitStyles } from '../../../src/site/after-build/page-styles.ts';
import { applyEdits, scan } from '../../../src/site/after-build/scanned.ts';

const folder = mkdtempSync(join(tmpdir(), 'page-styles-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Each page's style after fitting. */
function styled(pages: Record<string, string>, scripts: Record<string, string> = {}): Record<string, string> {
  for (const [name, text] of Object.entries(scripts)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const output = { folder, pages: new Map(Object.entries(pages)), others: new Set(Object.keys(scripts)) };
  const scanned = scan(output);
  applyEdits(output, [fitStyles(output, scanned)]);
  for (const [name, { tags }] of scanned)
    expect(output.pages.get(name), 'the policy is made of the tags').toContain(
      `<style>${tags.find((tag) => tag.name === 'style')?.text}</style>`,
    );
  return Object.fromEntries(
    [...output.pages].map(([name, page]) => [name, /<style>([^<]*)</.exec(page)?.[1] ?? 'none']),
  );
}
const styleOf = (style: string, body: string, scripts: Record<string, string> = {}) =>
  styled({ 'a.html': `<script src="/scripts/page.js"></script><style>${style}</style>${body}` }, scripts)[
    'a.html'
  ];

test('a page has the rules of what stands in it', () => {
  const style = 'a{x:1}.fig b{x:2}.calculator .field{x:3}.drawing text{x:4}';
  expect(styleOf(style, '<p class="fig calculators">')).toBe('');
  expect(styleOf(style, '<p class="fig"><b>7</b> <a>')).toBe('a{x:1}.fig b{x:2}');
  expect(styleOf(style, '<section class="calculator folded"><p class="field">')).toBe(
    '.calculator .field{x:3}',
  );
  expect(styleOf(style, '<svg class="drawing tree"><text>')).toBe('.drawing text{x:4}');
});

test('and of what its scripts make, and those that they load', () => {
  const style = '.quiet{x:1}ht-menu p{x:2}.ticks{x:3}.never{x:4}';
  const scripts = {
    'scripts/page.js': 'load("menu"),load("steps"),document.createElement("ht-menu")',
    'scripts/menu.js': 'make("p",{class:"quiet main"}),customElements.define("ht-menu",a)',
    'scripts/steps.js': 'make("p",{class:"ticks"}),customElements.define("ht-steps",a)',
  };
  expect(styleOf(style, '<p>', scripts)).toBe('.quiet{x:1}ht-menu p{x:2}');
  expect(styleOf(style, '<ht-steps>', scripts), 'only where its element is').toBe(
    '.quiet{x:1}ht-menu p{x:2}.ticks{x:3}',
  );
  expect(
    styleOf('.curve{x:1}', '<script src="/scripts/trace.js"></script>', { 'scripts/trace.js': '"curve"' }),
  ).toBe('.curve{x:1}');
});

test('a complaint has the rules of the sections its walk brings', () => {
  const style = '.trail{x:1}.drawing text{x:2}.why{x:3}';
  const page = (body: string) => `<style>${style}</style>${body}`;
  const fitted = styled({
    'symptoms/s.html': page('<p>'),
    'walks/s.html': page('<p class="why"><svg class="drawing tree"><text>'),
    'symptoms/other.html': page('<p>'),
  });
  expect(fitted).toEqual({
    'symptoms/s.html': '.drawing text{x:2}.why{x:3}',
    'walks/s.html': '.drawing text{x:2}.why{x:3}',
    'symptoms/other.html': '',
  });
});

test('a class that a script puts together of a beginning and a rest is not taken away', () => {
  const style = '.t-hot{x:1}.t-cold-start{x:2}.tick{x:3}';
  expect(styleOf(style, '<p>', { 'scripts/page.js': 'draw("t-"+name)' })).toBe('.t-hot{x:1}');
});

test('what is read by the styles of a calculator that comes later stays', () => {
  const style = ':root{--ink:#000;--stop:red}p{x:1}';
  const later = {
    'scripts/calculator.js': 'load("calculator-live")',
    'styles/calculator.css': 'b{color:var(--stop)}',
  };
  expect(styleOf(style, '<p><script src="/scripts/calculator.js"></script>', later)).toBe(
    ':root{--stop:red}p{x:1}',
  );
  expect(styleOf(style, '<p>', later)).toBe(':root{}p{x:1}');
});
