import { describe, expect, test } from 'vitest';
import type { Output } from '../../../src/site/after-build/output.ts';
import { readElements } from '../../../src/site/after-build/read-page.ts';
import { relativeLinks } from '../../../src/site/after-build/relative-links.ts';
import { applyEdits, scan } from '../../../src/site/after-build/scanned.ts';
import { SiteError } from '../../../src/site/after-build/site-error.ts';

const site = (pages: Record<string, string>, others: string[] = []): Output => ({
  folder: '',
  pages: new Map(Object.entries(pages)),
  others: new Set(others),
});

/** Changes the pages; @returns the faults. */
function makeRelative(output: Output) {
  const outcome = relativeLinks(output, scan(output));
  applyEdits(output, [outcome]);
  return outcome.faults;
}

describe('elements', () => {
  test('values in either quotation mark, without any, and none; text that looks like a tag is no tag', () => {
    const page = `<!-- <a href="/x"> --><A HREF='/a&amp;b' hidden data-x=1><script>if (a<b) "<a href='/y'>"</script><img src="/i.svg"/>`;
    const elements = readElements(page);
    expect(elements.map(({ name }) => name)).toEqual(['a', 'script', 'img']);
    expect(elements[0]?.attributes.map(({ name, value }) => [name, value])).toEqual([
      ['href', '/a&b'],
      ['hidden', ''],
      ['data-x', '1'],
    ]);
    expect(elements[1]?.text).toBe(`if (a<b) "<a href='/y'>"`);
    const [source] = elements[2]?.attributes ?? [];
    expect(page.slice(source?.start, source?.end)).toBe('src="/i.svg"');
  });

  test('an element ends behind its end tag; what is in a template, in <noscript> or in a drawing is found too', () => {
    const page =
      '<div id="a"><div>in</div></div><template><i></i></template><noscript><b></b></noscript><svg><use xlink:href="#a"/></svg>';
    const elements = readElements(page);
    expect(page.slice(elements[0]?.start, elements[0]?.end)).toBe('<div id="a"><div>in</div></div>');
    expect(elements.map(({ name }) => name)).toEqual([
      'div',
      'div',
      'template',
      'i',
      'noscript',
      'b',
      'svg',
      'use',
    ]);
    expect(elements.at(-1)?.attributes.map(({ name }) => name)).toEqual(['xlink:href']);
  });
});

describe('addresses become relative and explicit', () => {
  test.each([
    ['index.html', '/', 'index.html'],
    ['tests/x.html', '/', '../index.html'],
    ['tests/x.html', '/tests/', 'index.html'],
    ['tests/x.html', '/tests/y', 'y.html'],
    ['tests/x.html', '/tests/y.html?a=1&amp;b=2#part', 'y.html?a=1&amp;b=2#part'],
    ['tests/x.html', 'y.html', 'y.html'],
    ['tests/x.html', '../scripts/page.js', '../scripts/page.js'],
    ['tests/x.html', '#own', '#own'],
    ['tests/x.html', '?q=1', '?q=1'],
    ['tests/x.html', 'https://example.org/', 'https://example.org/'],
    ['tests/x.html', 'tel:112', 'tel:112'],
  ])('%s: %s -> %s', (page, address, wanted) => {
    const pages: Record<string, string> = {
      'index.html': '<p>',
      'tests/index.html': '<p>',
      'tests/x.html': '<p id="own">',
      'tests/y.html': '<p id="part">',
    };
    pages[page] += `<a href="${address}">`;
    const output = site(pages, ['scripts/page.js']);
    expect(makeRelative(output)).toEqual([]);
    expect(output.pages.get(page)).toContain(`<a href="${wanted}">`);
  });

  test('scripts, forms and drawings too, everything else stays letter for letter', () => {
    const page = `<script defer src="/scripts/page.js"></script>\n<form action='/b.html'><use href="#own" /><i id=own title="/b.html">`;
    const output = site({ 'a/x.html': page, 'b.html': '' }, ['scripts/page.js']);
    expect(makeRelative(output)).toEqual([]);
    expect(output.pages.get('a/x.html')).toBe(
      page.replace('/scripts/page.js', '../scripts/page.js').replace(`'/b.html'`, '"../b.html"'),
    );
  });
});

test('the state of a calculator is an address when each name is a field of its page', () => {
  const state = '<a href="/calculators/estimate.html#find=40&amp;repair=60">';
  const output = site({
    'a.html': state,
    'b.html': state.replace('repair', 'repare'),
    'calculators/estimate.html': '<input id="estimate-1-find"><input id="estimate-1-repair">',
  });
  expect(new SiteError(makeRelative(output)).message).toContain(
    'b.html\n  /calculators/estimate.html#find=40&repare=60\n  calculators/estimate.html has no part',
  );
  expect(output.pages.get('a.html')).toBe('<a href="calculators/estimate.html#find=40&amp;repair=60">');
});

describe('an address that leads nowhere stops the build', () => {
  test('with what stands there and the nearest that exists; the same one on many pages is told once', () => {
    const link = '<a href="/causes/trapped-iar.html">';
    const output = site({
      'causes/trapped-air.html': link,
      'index.html': `${link}<a href="/causes/trapped-air.html#prof"><a href="%E0%">`,
      'tests/a.html': `<p id="proof">${link}<a href="#prof"><img src="https://example.org/x.png">`,
    });
    expect(new SiteError(makeRelative(output)).message).toBe(`causes/trapped-air.html and 2 more pages
  /causes/trapped-iar.html
  No such page. Nearest: causes/trapped-air.html

index.html
  /causes/trapped-air.html#prof
  causes/trapped-air.html has no part with the id "prof". There is none at all.

index.html
  %E0%
  No such page. Nearest: index.html

tests/a.html
  #prof
  tests/a.html has no part with the id "prof". Nearest: proof

tests/a.html
  https://example.org/x.png
  Loads from outside the site. Put the file into public/.

5 faults; the site is not finished.`);
  });
});
