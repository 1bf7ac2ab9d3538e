/** The whole built site as files: valid HTML, every address leads somewhere, nothing comes from elsewhere. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { expect, test } from 'vitest';
import { attributeOf, type PageElement, readElements } from '../../src/site/after-build/read-page.ts';
import { builtSite } from './browser.ts';
import { htmlFaults } from './html-rules.ts';

const folder = builtSite();
const files = new Set(
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/')),
);
const pages = new Map(
  [...files]
    .filter((name) => name.endsWith('.html'))
    .sort()
    .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
);

test('every page is valid HTML', { timeout: 180_000 }, async () => {
  const faults: string[] = [];
  for (const [name, page] of pages) faults.push(...(await htmlFaults(page, name)));
  expect(pages.size).toBeGreaterThan(400);
  expect(faults.slice(0, 50)).toEqual([]);
});

test('the validator is awake: a page with faults is not valid', async () => {
  const faults = await htmlFaults(
    '<!DOCTYPE html><html><head></head><body><p id=a><div id=a></p></body></html>',
    'x',
  );
  expect(faults.join('\n')).toMatch(/no-dup-id/);
  expect(faults.join('\n')).toMatch(/element-required-content|title/);
});

interface Address {
  page: string;
  tag: PageElement;
  value: string;
}

/** Everything a page links to or loads, srcset and the like too. */
function addressesOf(page: string, tags: readonly PageElement[]): Address[] {
  return tags.flatMap((tag) => {
    const values = ['href', 'src', 'action', 'formaction', 'poster', 'xlink:href', 'data', 'cite'].flatMap(
      (name) => attributeOf(tag, name) ?? [],
    );
    const refresh = tag.name === 'meta' && /url=(.*)$/i.exec(attributeOf(tag, 'content') ?? '')?.[1];
    const set = attributeOf(tag, 'srcset')?.split(',') ?? [];
    const all = [
      ...values,
      ...(refresh ? [refresh] : []),
      ...set.map((each) => each.trim().split(/\s/)[0] ?? ''),
    ];
    return all.map((value) => ({ page, tag, value }));
  });
}

/** A fragment of figures, `find=37&repair=60`, each for a field of the page; `call=…` opens a job card. */
function isStateOf(fragment: string, tags: readonly PageElement[]): boolean {
  const fields = new Set(
    tags.flatMap((tag) => (/^(?:input|select)$/.test(tag.name) ? (attributeOf(tag, 'name') ?? []) : [])),
  );
  if (tags.some((tag) => tag.name === 'ht-job-card')) fields.add('call');
  return [...new URLSearchParams(fragment).keys()].every((name) => fields.has(name));
}

test('every address in every page leads to a file and to a place in it, and nothing is loaded from elsewhere', () => {
  const tags = new Map([...pages].map(([name, page]) => [name, readElements(page)]));
  const ids = new Map(
    [...tags].map(([name, all]) => [name, new Set(all.flatMap((tag) => attributeOf(tag, 'id') ?? []))]),
  );
  const faults: string[] = [];
  let followed = 0;
  for (const { page, tag, value } of [...tags].flatMap(([name, all]) => addressesOf(name, all))) {
    followed += 1;
    const told = `${page}: <${tag.name}> ${value}`;
    if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(value)) {
      // A small picture may stand in the page itself.
      if (value.startsWith('data:image/') && tag.name !== 'a') continue;
      // Sources may be linked to; nothing else leaves the site.
      if (tag.name !== 'a' || !/^(?:https:|mailto:|tel:)/.test(value)) faults.push(`${told} leads elsewhere`);
      continue;
    }
    const [, path = '', fragment = ''] = /^([^?#]*)(?:\?[^#]*)?(?:#(.*))?$/.exec(value) ?? [];
    const target = path === '' ? page : posix.join(posix.dirname(page), decodeURIComponent(path));
    if (!files.has(target)) faults.push(`${told} leads nowhere`);
    else if (fragment.includes('=') && isStateOf(fragment, tags.get(target) ?? [])) continue;
    else if (fragment !== '' && !ids.get(target)?.has(decodeURIComponent(fragment)))
      faults.push(`${told} leads to no place in ${target}`);
  }
  expect(followed).toBeGreaterThan(10_000);
  expect(faults.slice(0, 50)).toEqual([]);
});

test('styles load nothing, so none of them loads from elsewhere', () => {
  const sheets = [...files]
    .filter((name) => name.endsWith('.css'))
    .map((name) => readFileSync(join(folder, name), 'utf8'));
  const inPages = [...pages.values()].flatMap((page) =>
    readElements(page).flatMap((tag) => (tag.name === 'style' ? (tag.text ?? '') : [])),
  );
  for (const sheet of [...sheets, ...inPages])
    expect(sheet.match(/@import[^;]*|url\((?!\s*["']?(?:data:|#))[^)]*\)/g) ?? []).toEqual([]);
});
