/** Ordinary spellings are read as what they mean, and what could mean two things is not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import { inOrdinarySpelling } from '../../src/library/ordinary-spelling.ts';
import { vehicleSchema } from '../../src/model/vehicle.ts';
import { wordMeant } from '../../src/model/word-aliases.ts';
import { writtenDay } from '../../src/model/written-day.ts';
import { soundShelf } from './shelves.ts';

function tarnWith(...changes: [string, string][]) {
  const files = soundShelf().map((file) => {
    if (file.path !== 'vehicles/tarn.yaml') return file;
    let text = new TextDecoder().decode(file.bytes);
    for (const [old, now] of changes) {
      expect(text).toContain(old);
      text = text.replace(old, now);
    }
    return { path: file.path, bytes: new TextEncoder().encode(text) };
  });
  const { shelf, findings } = checkFiles('content', files);
  return { data: shelf.records.vehicle.get('tarn')?.data, findings };
}

test('a page and a class written as numbers are read without a word', () => {
  const { data, findings } = tarnWith(['page: 3-14', 'page: 12.10'], ['class: "8.8"', 'class: 8.8']);
  expect(findings).toEqual([]);
  expect(data?.figures['thermostat.opens']?.page).toBe('12.10');
  expect(data?.torques['thermostat-housing']?.class).toBe('8.8');
});

test('a decimal comma in braces and out of them is one number', () => {
  const { data, findings } = tarnWith(['is: 1.4 bar', 'is: 1,4 to 1,6 bar'], ['is: 10 N·m', 'is: 10,5 N·m']);
  expect(findings.map(({ rule, level }) => `${rule} ${level}`)).toEqual([
    'ordinary-spelling warning',
    'ordinary-spelling warning',
  ]);
  expect(data?.figures['cap.opens']?.is).toMatchObject({ low: 1.4e5, high: 1.6e5 });
  expect(data?.torques['thermostat-housing']?.is.low).toBeCloseTo(10.5, 12);
});

test('a comma between thousands or decimals is not guessed', () => {
  const { findings } = tarnWith(['size: 1.6 l', 'size: "1,598 l"']);
  expect(findings.map(({ rule }) => rule)).toEqual(['unreadable-quantity']);
});

test('the trade’s other words, a day with points, nothing behind torques', () => {
  const { data, findings } = tarnWith(
    ['reservoir: header tank', 'reservoir: Expansion tank'],
    ['thermostat-kind: plain wax', 'thermostat-kind: wax'],
    ['fuel: petrol', 'fuel: gasoline'],
    ['into: aluminium', 'into: alloy'],
    ['reviewed: 2026-11-25', 'reviewed: 25.11.2026'],
    ['size: 1.6 l', 'size: 1598 cc'],
  );
  expect(findings.map(({ rule }) => rule)).toEqual(Array(5).fill('ordinary-spelling'));
  expect(data).toMatchObject({
    layout: { reservoir: 'header tank', 'thermostat-kind': 'plain wax' },
    engine: { fuel: 'petrol', size: { unit: 'cc' } },
    reviewed: '2026-11-25',
  });
});

describe('days', () => {
  test.each([
    ['30.11.2026', { day: '2026-11-30' }],
    ['3.4.2026', { day: '2026-04-03' }],
    ['11/30/2026', { day: '2026-11-30' }],
    ['30/11/2026', { day: '2026-11-30' }],
    ['2026/11/30', { day: '2026-11-30' }],
    ['4/4/2026', { day: '2026-04-04' }],
    ['3/4/2026', { either: ['2026-04-03', '2026-03-04'] }],
    ['31.02.2026', undefined],
    ['30.11.26', undefined],
  ])('%s', (text, read) => expect(writtenDay(text)).toEqual(read));
});

test('a word is read as another only where the list has one that is meant', () => {
  expect(wordMeant('Diesel', ['petrol', 'diesel'])).toBe('diesel');
  expect(wordMeant('electric', ['accessory belt', 'electric'])).toBeUndefined();
  expect(wordMeant('alloy', ['petrol'])).toBeUndefined();
  expect(wordMeant('__proto__', ['petrol'])).toBeUndefined();
});

test('whatever stands in a record, reading it throws nothing and leaves what fits alone', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const { value: read } = inOrdinarySpelling(vehicleSchema, value);
      if (vehicleSchema.safeParse(value).success) expect(read).toEqual(value);
    }),
  );
});
