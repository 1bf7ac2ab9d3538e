import { expect, test } from 'vitest';
import type { Output } from '../../../src/site/after-build/output.ts';
import { policies } from '../../../src/site/after-build/policy.ts';
import { applyEdits, scan } from '../../../src/site/after-build/scanned.ts';

/** Sets the policy; @returns the faults. */
function setPolicies(output: Output) {
  const outcome = policies(scan(output));
  applyEdits(output, [outcome]);
  return outcome.faults;
}

const site = (page: string): Output => ({
  folder: '',
  pages: new Map([['a.html', page]]),
  others: new Set(),
});

test('styles of the page are named by their hash; no script text is allowed', () => {
  const output = site('<head><meta charset="utf-8"><style></style><style>p{color:red}</style></head>');
  expect(setPolicies(output)).toEqual([]);
  const policy = /content="([^"]*)"/.exec(output.pages.get('a.html') ?? '')?.[1]?.split('; ');
  // SHA-256 of the empty text is FIPS 180-4's well-known e3b0c442…; here in base64.
  expect(policy?.find((part) => part.startsWith('style-src'))).toMatch(
    /^style-src 'self' 'sha256-47DEQpj8HBSa\+\/TImW\+5JCeuQeRkm5NMpJWZG3hSuFU=' 'sha256-[A-Za-z0-9+/]{43}='$/,
  );
  expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
  expect(policy).toContain("default-src 'none'");
});

test('the policy stands right behind the character set, before anything it governs', () => {
  const output = site('<head><meta charset="utf-8"><style>p{}</style></head>');
  setPolicies(output);
  expect(output.pages.get('a.html')).toMatch(
    /^<head><meta charset="utf-8"><meta http-equiv="content-security-policy"/,
  );
});

test.each([
  ['<p style="color:red">', '<p style="color:red">'],
  ['<button onclick="x()">', '<button onclick>'],
  ['<script>x()</script>', '<script>x()'],
  ['<script type="module">x()</script>', '<script>x()'],
])('what it would switch off without a word is a fault: %s', (part, found) => {
  expect(setPolicies(site(`<meta charset="utf-8">${part}`)).map((fault) => fault.found)).toEqual([found]);
});

test('data in a script element is no script; a page without a character set is a fault', () => {
  expect(setPolicies(site('<meta charset="utf-8"><script type="application/json">{}</script>'))).toEqual([]);
  expect(setPolicies(site('<p>'))).toHaveLength(1);
});
