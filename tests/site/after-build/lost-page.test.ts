import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { writeLostPage } from '../../../src/site/after-build/lost-page.ts';
import type { Output } from '../../../src/site/after-build/output.ts';

const site = (page: string): Output => ({
  folder: '',
  pages: new Map([['404.html', page]]),
  others: new Set(),
});

test('its script is allowed by its hash, and by nothing else', async () => {
  const output = site(`<head><meta content="script-src 'self' 'wasm-unsafe-eval'; style-src 'self'"></head>`);
  await writeLostPage(output, 'src/site');
  const page = output.pages.get('404.html') ?? '';
  const script = /<script>([\s\S]+)<\/script><\/head>/.exec(page)?.[1] ?? '';
  expect(script).toContain('headertank.webmanifest');
  const hash = createHash('sha256').update(script).digest('base64');
  expect(page).toContain(`script-src 'self' 'sha256-${hash}' 'wasm-unsafe-eval'; style-src 'self'"`);
  expect(page).not.toContain('unsafe-inline');
});

test('a page without a policy is not let through', async () => {
  await expect(writeLostPage(site('<head></head>'), 'src/site')).rejects.toThrow('no policy');
});
