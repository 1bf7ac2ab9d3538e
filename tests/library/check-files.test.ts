/** What the check hands on: which record of two stands, and when a warning is worth reading. */
import { expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import type { RawFile } from '../../src/library/source-file.ts';
import { faultyShelf } from './shelves.ts';

test('of two files with one id the first stands on the shelf, the other is reported', () => {
  const { shelf, findings } = checkFiles('content', faultyShelf('id-twice'));
  expect(shelf.records.note.get('slow-opening')?.file).toBe('content/notes/2025/slow-opening.yaml');
  expect(findings.map(({ place }) => place.file)).toEqual(['content/notes/2026/slow-opening.yaml']);
});

test('beside an error no warning is read: what is missing may be its reason', () => {
  const levels = (files: readonly RawFile[]) =>
    checkFiles('content', files).findings.map(({ rule, level }) => `${level} ${rule}`);
  const unused = faultyShelf('unused-record');
  const broken = faultyShelf('missing-field');
  const both = [...broken, ...unused.filter(({ path }) => path === 'tools/pyrometer.yaml')];
  expect(levels(unused)).toEqual(['warning unused-record']);
  expect(levels(both)).toEqual(['error missing-field']);
});

test('a warning about a record does not keep what else is wrong from being told', () => {
  const files = faultyShelf('cause-without-evidence').map(({ path, bytes }): RawFile => {
    const text = new TextDecoder().decode(bytes).replace('settles: Whether', 'settles: "To write: whether');
    return { path, bytes: new TextEncoder().encode(text.replace(/(settles: ".*)/, '$1"')) };
  });
  expect(
    checkFiles('content', files)
      .findings.map(({ rule }) => rule)
      .sort(),
  ).toEqual(['cause-without-evidence', 'left-to-write']);
});
