/** Styles of calculators and drawings stand where there is one, and come with the questions of a walk. */
import { expect, test } from 'vitest';
import { fitStyles } from '../../../src/site/finish/page-styles.ts';
import { cutSections } from '../../../src/site/walk/cut-sections.ts';
import { sortStyle } from '../../../src/site/walk/part-rules.ts';

const OTHERS = 'a,.fig{color:red}@media print{.calculator{display:none}}.step .calculator{margin:0}';
const OF_PARTS = '.calculator .field,.answer-sentence{margin:0}.drawing text{fill:none}';
const STYLE = `a,.fig{color:red}.calculator .field,.answer-sentence{margin:0}@media print{.calculator{display:none}}.drawing text{fill:none}.step .calculator{margin:0}`;

test('a style is parted into the rules of calculators and drawings and all others, in their order', () => {
  expect(sortStyle(STYLE)).toEqual({ ofParts: OF_PARTS, others: OTHERS });
  expect(sortStyle('')).toEqual({ ofParts: '', others: '' });
});

test.each([
  ['without either goes without their rules', '<p class="calculators">', OTHERS],
  ['with a calculator keeps them', '<section class="calculator folded">', STYLE],
  ['with a drawing keeps them', '<svg class="drawing drawing-tree">', STYLE],
  ['that draws later keeps them', '<script src="/scripts/trace.js"></script>', STYLE],
])('a page %s', (_, markup, style) => {
  const page = (text: string) => `<style>${text}</style>${markup}`;
  const output = { folder: '', pages: new Map([['a.html', page(STYLE)]]), others: new Set<string>() };
  fitStyles(output);
  expect(output.pages.get('a.html')).toBe(page(style));
});

test('the parts of a walk bring the rules its page may lack', () => {
  expect(cutSections(`<style>${STYLE}</style>`, 'w.html')).toEqual({ style: OF_PARTS });
});
