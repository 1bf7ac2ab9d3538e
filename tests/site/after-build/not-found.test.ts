import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { NOT_FOUND, notFoundScript } from '../../../src/site/after-build/not-found.ts';
import { policies } from '../../../src/site/after-build/policy.ts';
import { applyEdits, scan } from '../../../src/site/after-build/scanned.ts';

test('its script is allowed by its hash, and on no other page', async () => {
  const head = '<head><meta charset="utf-8"></head>';
  const output = {
    folder: '',
    pages: new Map([
      [NOT_FOUND, head],
      ['a.html', head],
    ]),
    others: new Set<string>(),
  };
  const outcome = policies(scan(output), new Map([[NOT_FOUND, await notFoundScript('src/site')]]));
  expect(outcome.faults).toEqual([]);
  applyEdits(output, [outcome]);
  const page = output.pages.get(NOT_FOUND) ?? '';
  const script = /<script>([\s\S]+)<\/script><\/head>/.exec(page)?.[1] ?? '';
  expect(script).toContain('headertank.webmanifest');
  const hash = createHash('sha256').update(script).digest('base64');
  expect(page).toContain(`script-src 'self' 'sha256-${hash}' 'wasm-unsafe-eval'; style-src 'self'`);
  expect(page).not.toContain('unsafe-inline');
  expect(output.pages.get('a.html')).toContain("script-src 'self' 'wasm-unsafe-eval'");
  expect(output.pages.get('a.html')).not.toContain('<script>');
});
