import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { published } from './published.ts';

test('every worked example is used by a test, and says what it is', () => {
  const here = new URL('.', import.meta.url);
  const tests = readdirSync(here)
    .filter((name) => name.endsWith('.test.ts') && name !== 'every-example.test.ts')
    .map((name) => readFileSync(new URL(name, here), 'utf8'))
    .join('\n');
  const ids = published.entries.map((entry) => entry.id);
  expect(ids.filter((id) => !tests.includes(`'${id}'`))).toEqual([]);
  expect(ids.length).toBeGreaterThan(35);
  const kinds = ['published', 'from memory', 'computed by exhaustive enumeration'];
  for (const entry of published.entries) {
    expect(kinds, entry.id).toContain(entry.kind);
    expect(entry.source.length, entry.id).toBeGreaterThan(10);
  }
});
