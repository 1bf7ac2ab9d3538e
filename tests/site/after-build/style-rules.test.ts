/** A style is cut down to what a page can need, and to nothing else. */
import { expect, test } from 'vitest';
import { dropUnread, readRules, rulesFor } from '../../../src/site/after-build/style-rules.ts';

const cut = (style: string, ...names: string[]) => rulesFor(readRules(style), (name) => names.includes(name));

test('a rule stays when every class and element of a selector may be there', () => {
  const style = 'a{x:1}.work>li:before{x:2}.work li.done{x:3}ht-units [aria-pressed=true]{x:4}*{x:5}';
  expect(cut(style, 'a', 'li', '.work')).toBe('a{x:1}.work>li:before{x:2}*{x:5}');
  expect(cut(style, 'li', '.work', '.done', 'ht-units')).toBe(
    '.work>li:before{x:2}.work li.done{x:3}ht-units [aria-pressed=true]{x:4}*{x:5}',
  );
});

test('a class is no element of that name', () => {
  expect(cut('.button{x:1}button{x:2}', 'button')).toBe('button{x:2}');
  expect(cut('.button{x:1}button{x:2}', '.button')).toBe('.button{x:1}');
});

test('of a list the selectors that may match stay', () => {
  expect(cut('ul,ol,dl:not(.facts)>dt{x:1}', 'ul', 'dl', 'dt')).toBe('ul,dl:not(.facts)>dt{x:1}');
});

test('what stands in brackets is taken to be fulfilled', () => {
  const style = '.top :is(a,summary){x:1}h2:has(+.list li){x:2}a:not(:has(b:empty)) span{x:3}';
  expect(cut(style, '.top', 'h2', 'a', 'span')).toBe(style);
});

test('an at-rule goes when nothing in it stays; one that holds no selectors stays', () => {
  const style =
    '@media (width>=60rem){.top{x:1}.foot{x:2}}@media print{.foot{x:3}@page{margin:1cm;@bottom-right{x:4}}}';
  expect(cut(style, '.top')).toBe(
    '@media (width>=60rem){.top{x:1}}@media print{@page{margin:1cm;@bottom-right{x:4}}}',
  );
  expect(cut('@media (width>=60rem){.foot{x:1}}', '.top')).toBe('');
});

test('custom properties that nobody reads go, wherever they stand', () => {
  const style = ':root{--ink:#000;--hot:red;--font:"A", b}p{color:var(--ink)}';
  expect(dropUnread(style, style)).toBe(':root{--ink:#000}p{color:var(--ink)}');
  expect(dropUnread(style, `${style}b{font:1px var(--font)}`)).toBe(
    ':root{--ink:#000;--font:"A", b}p{color:var(--ink)}',
  );
});
