/** The live walk's sections are cut from the page of all steps. */
import { expect, test } from 'vitest';
import { walkScript } from '../../../src/site/after-build/walk-parts.ts';
import { cutSections } from '../../../src/site/walk/cut-sections.ts';

const section = (kind: string, id: string, inside: string) =>
  `<section class="step" id="x" data-${kind}="${id}" aria-label="Question">${inside}</section>`;

test('every step, spare test and proof becomes a part, named by what it is', () => {
  const page = `<main>${section('step', 'level', 'A')}<h2>Out of turn</h2>${section('spare', 'code-read', 'B')}${section('proof', 'coolant-low', 'C')}</main>`;
  const parts = cutSections(page, 'never-warms-up.html');
  expect(Object.keys(parts)).toEqual(['step level', 'spare code-read', 'proof coolant-low']);
  expect(parts['spare code-read']).toBe(section('spare', 'code-read', 'B'));
});

test('a link within the page leads back to that page; others stay', () => {
  const page = section('step', 'a', '<a href="#step-b">on</a> <a href="../tests/x.html#y">how</a>');
  expect(cutSections(page, 'w.html')['step a']).toContain('<a href="../walks/w.html#step-b">on</a>');
  expect(cutSections(page, 'w.html')['step a']).toContain('<a href="../tests/x.html#y">how</a>');
});

test('a section within a section would be cut in two, so it is refused', () => {
  const page = section('step', 'a', '<section>inner</section>');
  expect(() => cutSections(page, 'w.html')).toThrow('w.html: the step a has a section inside');
});

test('the script hands over exactly the parts', () => {
  const received: unknown[] = [];
  const page = section('step', 'a', '“</script>”');
  new Function('headertank', walkScript(page, 'w.html'))({
    receiveWalkParts: (parts: unknown) => received.push(parts),
  });
  expect(received).toEqual([{ 'step a': section('step', 'a', '“</script>”') }]);
});
