import { expect, test } from 'vitest';
import { editPage, hostKind, newFilePage } from '../../../src/site/note/host-address.ts';

const PATH = 'content/notes/2026/second-screw.yaml';
const TEXT = 'title: Second screw & more\ntext: a+b 100 %\n';

test.each([
  ['https://github.com/shop/shelf', 'https://github.com/shop/shelf/new/main?filename=', true],
  ['https://github.com/shop/shelf.git', 'https://github.com/shop/shelf/new/main?filename=', true],
  ['https://gitlab.com/shop/shelf/', 'https://gitlab.com/shop/shelf/-/new/main?file_name=', false],
  ['https://codeberg.org/shop/shelf', 'https://codeberg.org/shop/shelf/_new/main/?filename=', true],
  [
    'https://bitbucket.org/shop/shelf',
    'https://bitbucket.org/shop/shelf/create-file/main?at=main&filename=',
    false,
  ],
])('%s', (address, start, carries) => {
  const page = newFilePage({ address }, PATH, TEXT);
  expect(page?.href.startsWith(start)).toBe(true);
  expect(page?.carriesText).toBe(carries);
  const query = new URL(page?.href ?? '').searchParams;
  expect(query.get('filename') ?? query.get('file_name')).toBe(PATH);
  if (carries) expect(query.get('value')).toBe(TEXT);
});

test('a host of the shop’s own is told by what shop.yaml says', () => {
  const address = 'https://git.example.org/shop/shelf';
  expect(hostKind({ address })).toBeUndefined();
  expect(newFilePage({ address }, PATH, TEXT)).toBeUndefined();
  expect(newFilePage({ address, host: 'forgejo', branch: 'shelf/2026' }, PATH, TEXT)?.href).toMatch(
    /^https:\/\/git\.example\.org\/shop\/shelf\/_new\/shelf\/2026\/\?filename=/,
  );
});

test('a text too long for an address is left to be pasted', () => {
  const page = newFilePage({ address: 'https://github.com/shop/shelf' }, PATH, 'ä'.repeat(3000));
  expect(page?.carriesText).toBe(false);
  expect(page?.href.length).toBeLessThan(500);
});

test('what is no web address opens nothing', () => {
  expect(newFilePage({ address: 'javascript:alert(1)', host: 'github' }, PATH, TEXT)).toBeUndefined();
});

test.each([
  ['https://github.com/shop/shelf', 'https://github.com/shop/shelf/edit/main/content/notes/a.yaml'],
  ['https://gitlab.com/shop/shelf.git', 'https://gitlab.com/shop/shelf/-/edit/main/content/notes/a.yaml'],
  ['https://codeberg.org/shop/shelf/', 'https://codeberg.org/shop/shelf/_edit/main/content/notes/a.yaml'],
  [
    'https://bitbucket.org/shop/shelf',
    'https://bitbucket.org/shop/shelf/src/main/content/notes/a.yaml?mode=edit',
  ],
])('a record is edited where its host edits files: %s', (address, page) => {
  expect(editPage({ address }, 'content/notes/a.yaml')).toBe(page);
});

test('it is edited on the branch of shop.yaml; an unknown host has no link', () => {
  const address = 'https://git.example.org/shop/shelf';
  expect(editPage({ address, host: 'gitlab', branch: 'shelf/2026' }, 'content/a.yaml')).toBe(
    'https://git.example.org/shop/shelf/-/edit/shelf/2026/content/a.yaml',
  );
  expect(editPage({ address }, 'content/a.yaml')).toBeUndefined();
});
