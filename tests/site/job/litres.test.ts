import { expect, test } from 'vitest';
import type { Job } from '../../../src/model/job.ts';
import { litresForCustomer, litresSentence } from '../../../src/site/job/litres.ts';

const poured = (drained: number, filled: number): Job['litres'] => [
  { id: 'a', way: 'drained', litres: drained, at: '2026-11-25T10:00:00Z' },
  { id: 'b', way: 'filled', litres: filled, at: '2026-11-25T11:00:00Z' },
];

test('the customer is not worried by what stays in a jug, and is told of more', () => {
  expect(litresSentence(poured(3.4, 3.2))).toBe('Drained 3.4 l, filled 3.2 l: 0.2 l less than came out.');
  expect(litresForCustomer(poured(3.4, 3.2))).toBe('Refilled with 3.2 l.');
  expect(litresForCustomer(poured(3.4, 3.7))).toBe('Refilled with 3.7 l.');
  expect(litresForCustomer(poured(3.4, 2.9))).toBe('Drained 3.4 l, filled 2.9 l: 0.5 l less than came out.');
  expect(litresForCustomer([])).toBeUndefined();
});
