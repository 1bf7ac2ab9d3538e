import { expect, test } from 'vitest';
import type { Job } from '../../../../src/model/job.ts';
import { litresForCustomer, litresSentence } from '../../../../src/site/job/page/litres.ts';

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

test('what was topped up after the drive is filled as well', () => {
  const topped = [
    ...poured(3.4, 3),
    { id: 'c', way: 'topped up after the drive' as const, litres: 0.5, at: '' },
  ];
  expect(litresSentence(topped)).toBe('Drained 3.4 l, filled 3.5 l: 0.1 l more than came out.');
  expect(litresForCustomer(topped)).toBe('Refilled with 3.5 l.');
});

test('with one side not measured nothing is said of the difference', () => {
  expect(litresSentence(poured(0, 3.2))).toBe('Drained 0 l, filled 3.2 l.');
  expect(litresSentence(poured(3.4, 0))).toBe('Drained 3.4 l, filled 0 l.');
  expect(litresForCustomer(poured(3.4, 0))).toBe('Drained 3.4 l, filled 0 l.');
});

test('as much as came out is said so, whatever adding decimals leaves', () => {
  const thrice = [0.1, 0.1, 0.1].map((litres, at) => ({
    id: `${at}`,
    way: 'filled' as const,
    litres,
    at: '',
  }));
  const [drained] = poured(0.3, 0);
  expect(litresSentence([...(drained ? [drained] : []), ...thrice])).toBe(
    'Drained 0.3 l, filled 0.3 l: as much as came out.',
  );
});
