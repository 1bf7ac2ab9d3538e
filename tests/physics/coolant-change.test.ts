import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysBetween, monthsAfter, nextChange, paceOf } from '../../src/physics/coolant-change.ts';
import { OutOfRange } from '../../src/physics/out-of-range.ts';

describe('monthsAfter', () => {
  test.each([
    // A spreadsheet maker's help on adding months to a date: 15 January 2011 and 1, −1 and 2 months. From memory.
    ['2011-01-15', 1, '2011-02-15'],
    ['2011-01-15', -1, '2010-12-15'],
    ['2011-01-15', 2, '2011-03-15'],
    // Java's LocalDate.plusMonths: 2007-03-31 plus one month is 2007-04-30; plusYears: 2008-02-29 plus one year is 2009-02-28. From memory.
    ['2007-03-31', 1, '2007-04-30'],
    ['2008-02-29', 12, '2009-02-28'],
    ['2023-12-31', 2, '2024-02-29'],
  ])('%s and %i months is %s', (day, months, expected) => {
    expect(monthsAfter(day, months)).toBe(expected);
  });

  test('refuses half a month and what is no day', () => {
    expect(() => monthsAfter('2024-01-01', 1.5)).toThrow(OutOfRange);
    expect(() => monthsAfter('2024-13-01', 1)).toThrow(OutOfRange);
  });
});

describe('daysBetween', () => {
  // ISO 8601 week calendar: 2004-01-01 to 2005-01-01 is a leap year.
  test('counts leap years', () => {
    expect(daysBetween('2004-01-01', '2005-01-01')).toBe(366);
    expect(daysBetween('2005-01-01', '2004-01-01')).toBe(-366);
  });
});

const days = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2050-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

describe('nextChange', () => {
  test('takes whichever comes first, and never a day after the calendar’s', () => {
    fc.assert(
      fc.property(
        days,
        fc.integer({ min: 1, max: 240 }),
        fc.integer({ min: 1000, max: 500_000 }),
        fc.integer({ min: 100, max: 300_000 }),
        (last, months, kilometres, aYear) => {
          const next = nextChange({ last, months, distance: kilometres * 1e3, pace: aYear * 1e3 });
          expect(next.first <= next.byCalendar).toBe(true);
          expect([next.byCalendar, next.byDistance]).toContain(next.first);
          expect(daysBetween(last, next.first)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('reckons only what is left with the pace, from the last look on', () => {
    const seen = { day: '2024-12-01', driven: 194e6 };
    const next = nextChange({ last: '2022-05-10', months: 60, distance: 200e6, pace: 80e6, seen });
    // 6,000 km at 80,000 a year: 0.075 of 365.25 days.
    expect(next.byDistance).toBe('2024-12-28');
  });
});

describe('paceOf', () => {
  test('is nothing over a few days or metres, and refuses what no car drives', () => {
    expect(paceOf('2024-01-01', '2024-01-20', 2e6)).toBeUndefined();
    expect(paceOf('2024-01-01', '2025-01-01', 10)).toBeUndefined();
    expect(paceOf('2023-01-01', '2024-01-01', 20e6)).toBeCloseTo(20.0137e6, -3);
    expect(() => paceOf('2023-01-01', '2024-01-01', 900e6)).toThrow(OutOfRange);
  });
});
