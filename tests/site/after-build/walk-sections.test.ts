/** The live walk's sections are cut from the page of all steps. */
import { expect, test } from 'vitest';
import { walkScript } from '../../../src/site/after-build/walk-sections.ts';

const section = (kind: string, id: string, inside: string) =>
  `<section class="step" id="x" data-${kind}="${id}" aria-label="Question">${inside}</section>`;

/** What the script hands over. */
function partsOf(page: string, name: string): Record<string, string> {
  let received: Record<string, string> = {};
  new Function('headertank', walkScript(page, name))({
    receiveWalkParts: (parts: Record<string, string>) => {
      received = parts;
    },
  });
  return received;
}

test('every step, spare test and proof becomes a part, named by what it is', () => {
  const page = `<main>${section('step', 'level', 'A')}<h2>Out of turn</h2>${section('spare', 'code-read', 'B')}${section('proof', 'coolant-low', 'C')}</main>`;
  const parts = partsOf(page, 'never-warms-up.html');
  expect(Object.keys(parts)).toEqual(['step level', 'spare code-read', 'proof coolant-low']);
  expect(parts['spare code-read']).toBe(section('spare', 'code-read', 'B'));
});

test('a link within the page leads back to that page; others stay', () => {
  const page = section('step', 'a', '<a href="#step-b">on</a> <a href="../tests/x.html#y">how</a>');
  expect(partsOf(page, 'w.html')['step a']).toContain('<a href="../walks/w.html#step-b">on</a>');
  expect(partsOf(page, 'w.html')['step a']).toContain('<a href="../tests/x.html#y">how</a>');
});

test('a section within a section is not where it ends', () => {
  const whole = section('step', 'a', '<section>inner</section> and on');
  expect(partsOf(`<main>${whole}</main>`, 'w.html')).toEqual({ 'step a': whole });
});

test('a script hands over what would end a script', () => {
  const page = section('step', 'a', '“</script>”');
  expect(walkScript(page, 'w.html')).not.toBe('');
  expect(Object.keys(partsOf(page, 'w.html'))).toEqual(['step a']);
});
