/** What a road test can point to stands on the shelf. */
import { expect, test } from 'vitest';
import { FINDINGS, pointsTo } from '../../src/trace/verdict.ts';
import { shelf } from './shelf.ts';

const { records } = shelf;

test.each(FINDINGS)('%s: its causes and its complaint are records', (finding) => {
  const { causes, symptom } = pointsTo(finding);
  expect(causes.filter((id) => !records.cause.has(id))).toEqual([]);
  expect(symptom === undefined || records.symptom.has(symptom)).toBe(true);
});
