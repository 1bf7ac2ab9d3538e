import { describe, expect, test } from 'vitest';
import { walkCase } from '../../src/library/case-walk.ts';
import { checkFiles } from '../../src/library/check-files.ts';
import type { CarCase } from '../../src/model/case.ts';
import { soundShelf } from './shelves.ts';

const { shelf } = checkFiles('content', soundShelf());

const CAR: CarCase = {
  title: 'Stays open',
  symptom: 'runs-cold',
  vehicle: 'tarn',
  faults: ['thermostat-open'],
  said: 'Never gets warm.',
  mechanism: 'It stands open.',
  shows: { 'hose-watch': { sees: 'warm-early', why: 'It stands open.' } },
  sources: ['from memory'],
  reviewed: '2026-11-25',
};

describe('a case is walked as the page walks', () => {
  test('a car that shows what its fault shows has the fault proven or first', () => {
    const walk = walkCase(shelf, CAR);
    expect(walk.asked).toContainEqual({ test: 'hose-watch', outcome: 'warm-early' });
    expect(['proven', 'first']).toContain(walk.ending);
    expect(walk.minutes).toBeGreaterThan(0);
  });

  test('a cause that the car has not, called proven, is counted as wrong', () => {
    const fooled: CarCase = {
      ...CAR,
      faults: ['thermostat-open'],
      shows: { 'hose-watch': { sees: 'warm-late', why: 'A thermometer in the wrong place.' } },
      rechecks: { 'sensor-low': true },
    };
    expect(walkCase(shelf, fooled)).toMatchObject({ ending: 'wrongly proven', proven: 'sensor-low' });
  });

  test('what a case does not say is passed over and named', () => {
    const walk = walkCase(shelf, { ...CAR, shows: {} });
    expect(walk.unanswered).toEqual(['hose-watch']);
    expect(walk.asked).not.toContainEqual(expect.objectContaining({ test: 'hose-watch' }));
  });

  test('with the wrong complaint chosen, something else is a right answer', () => {
    const other: CarCase = { ...CAR, faults: [], 'should-be': 'runs-cold', shows: {} };
    expect(walkCase(shelf, other).ending).not.toBe('missed');
  });

  test('says which vehicle is missing', () => {
    expect(() => walkCase(shelf, { ...CAR, vehicle: 'gone' })).toThrow('The shelf has no vehicle "gone".');
  });
});
