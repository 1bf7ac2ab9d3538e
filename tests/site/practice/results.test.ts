/** What a device keeps of practice is read whatever lies there, and what is shown says what was kept. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type CaseResult,
  gotWrong,
  readPractice,
  resultsText,
  shortResults,
  withResult,
} from '../../../src/site/practice/results.ts';

const result = (code: string, more: Partial<CaseResult> = {}): CaseResult => ({
  code,
  symptom: 'reads-low-at-cruise',
  title: 'Reads low at cruise',
  on: '2026-11-30',
  did: ['Level, cold', 'Compare the readings'],
  named: 'Thermostat stuck open',
  right: true,
  shown: true,
  minutes: 24.4,
  planner: 19,
  tree: 31,
  ...more,
});

test('anything that lies on a device is read, and what was kept comes back', () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      expect(Array.isArray(readPractice(value).results)).toBe(true);
    }),
  );
  const practice = { results: [result('aaaaaa')], open: { code: 'bbbbbb', tests: ['level-cold'] } };
  expect(readPractice(JSON.parse(JSON.stringify(practice)))).toEqual(practice);
  expect(readPractice({ results: [result('aaaaaa'), { code: 'cccccc' }, null] }).results).toHaveLength(1);
});

test('a case answered again counts as answered last', () => {
  const first = withResult({ results: [] }, result('aaaaaa', { right: false }));
  expect(gotWrong(first)).toEqual(['aaaaaa']);
  const second = withResult(withResult(first, result('bbbbbb', { right: false })), result('aaaaaa'));
  expect(gotWrong(second)).toEqual(['bbbbbb']);
  expect(second.results.map(({ code }) => code)).toEqual(['bbbbbb', 'aaaaaa']);
});

test('a teacher reads who, what, how long and what was done', () => {
  const some = [
    result('aaaaaa'),
    result('bbbbbb', { shown: false }),
    result('cccccc', { right: false, did: [] }),
  ];
  const text = resultsText(some, 'Sam', '2026-12-01');
  expect(text).toContain('Practice results of Sam, 2026-12-01\n2 of 3 right, 1 of them shown by a test');
  expect(text).toContain('24 min; planner 19 min, tree 31 min');
  expect(text).toContain('Level, cold > Compare the readings');
  expect(text).toContain('Right: Thermostat stuck open, shown by no test');
  expect(text).toContain(
    'Not right: Thermostat stuck open\n   24 min; planner 19 min, tree 31 min\n   No test',
  );
  expect(shortResults(some, '', '2026-12-01').split('\n')).toEqual([
    'Practice 2026-12-01',
    'aaaaaa right 24 min (19, 31)',
    'bbbbbb right, not shown 24 min (19, 31)',
    'cccccc not right 24 min (19, 31)',
    'in brackets: planner, tree',
  ]);
});
