import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../src/library/apply-edits.ts';
import { checkFiles } from '../../src/library/check-files.ts';
import { reportText } from '../../src/library/report/text.ts';
import { RULES } from '../../src/library/rules/index.ts';
import type { RawFile } from '../../src/library/source-file.ts';
import { EXPECTED, FAULTY, faultyNames, faultyShelf, soundShelf } from './shelves.ts';

test('the sound shelf has nothing to mend', () => {
  const { findings, count } = checkFiles('content', soundShelf());
  expect(reportText(findings)).toBe('');
  expect(count).toBe(15);
});

test('every rule has a faulty shelf, and every faulty shelf a rule', () => {
  const shown = new Set(faultyNames().map((name) => name.split('.')[0]));
  expect([...shown].sort()).toEqual(RULES.map((rule) => rule.id).sort());
});

describe('a faulty shelf gives its one finding, word for word', () => {
  test.each(faultyNames())('%s', (name) => {
    const { findings } = checkFiles('content', faultyShelf(name));
    expect(findings.map((finding) => finding.rule)).toEqual([name.split('.')[0]]);
    expect(reportText(findings)).toBe(readFileSync(join(FAULTY, name, EXPECTED), 'utf8'));
  });
});

describe('what can be mended is sound afterwards', () => {
  const mendable = faultyNames().filter((name) =>
    checkFiles('content', faultyShelf(name)).findings.some((finding) => finding.mend),
  );
  // An empty list would leave nothing to fail below.
  test('some can be mended, and some cannot', () => {
    expect(mendable.length).toBeGreaterThan(0);
    expect(mendable.length).toBeLessThan(faultyNames().length);
  });

  test.each(mendable)('%s', (name) => {
    const files = faultyShelf(name);
    const { findings, texts } = checkFiles('content', files);
    const mended = files.map((file): RawFile => {
      const edits = findings.flatMap(({ place, mend }) =>
        place.file === `content/${file.path}` ? (mend ?? []) : [],
      );
      const text = applyEdits(texts.get(`content/${file.path}`) ?? '', edits);
      return edits.length === 0 ? file : { path: file.path, bytes: new TextEncoder().encode(text) };
    });
    expect(reportText(checkFiles('content', mended).findings)).toBe('');
  });
});
