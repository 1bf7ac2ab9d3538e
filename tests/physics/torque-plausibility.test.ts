import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PROPERTY_CLASSES, type PropertyClass } from '../../src/physics/bolt.ts';
import { COARSE_THREADS } from '../../src/physics/thread.ts';
import {
  HOLE_MATERIALS,
  type HoleMaterial,
  torquePlausibility,
} from '../../src/physics/torque-plausibility.ts';
import { metre, newtonMetre } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

function ask(thread: string, propertyClass: PropertyClass, torque: number, into: HoleMaterial = 'aluminium') {
  return torquePlausibility({ thread, propertyClass, torque: newtonMetre(torque), into });
}

describe('torquePlausibility', () => {
  test('refuses M6 8.8 with 50 N·m, says why, what is usual and where the slip may be', () => {
    const answer = ask('M6', '8.8', 50);
    if (answer.verdict !== 'impossible') throw new Error(answer.verdict);
    expect(answer.because).toBe('no bolt of this thread');
    expect(answer.limit).toBeCloseTo(31.7, 1);
    // Common practice: about 10 N·m.
    expect(answer.figures.usual.lowest).toBeLessThan(10);
    expect(answer.figures.usual.highest).toBeGreaterThan(10);
    expect(answer.figures.usual.highest).toBeLessThan(12);
    expect(answer.fitsThreads).toEqual(['M10', 'M12']);
    expect(answer.fitsUnits).toEqual(['lbf·in']);
  });

  test('lets M8 with 25 N·m pass', () => {
    expect(ask('M8', '8.8', 25).verdict).toBe('possible');
    expect(ask('M8', '8.8', 25, 'steel').verdict).toBe('possible');
  });

  // Common practice of the trade for class 8.8 in light alloy.
  test.each([
    ['M5', 6],
    ['M6', 9],
    ['M6', 10],
    ['M8', 20],
    ['M8', 22],
    ['M10', 40],
    ['M12', 75],
  ])('lets %s with %d N·m pass in aluminium', (thread, torque) => {
    const answer = ask(thread, '8.8', torque);
    expect(answer.verdict).toBe('possible');
  });

  test.each([
    // ISO 898-1, 800 N/mm² at least: 15.7 N·m by hand, 11.3 N·m x 800 / (0.9 x 640).
    ['M6', '8.8', 15.8, 'steel', 'no bolt of this class'],
    ['M6', '8.8', 20, 'steel', 'no bolt of this class'],
    ['M6', '8.8', 13, 'plastic insert', 'pulls the insert out'],
    ['M10', '8.8', 500, 'steel', 'no bolt of this thread'],
  ] as const)('refuses %s %s with %d N·m into %s', (thread, propertyClass, torque, into, because) => {
    expect(ask(thread, propertyClass, torque, into)).toMatchObject({ verdict: 'impossible', because });
  });

  test.each([
    ['M6', '8.8', 14, 'steel', 'above what this class takes'],
    ['M6', '8.8', 15.5, 'steel', 'above what this class takes'],
    ['M8', '10.9', 35, 'aluminium', 'above what a hole in aluminium usually takes'],
    ['M6', '8.8', 8, 'plastic insert', 'above what an insert in plastic usually takes'],
    ['M8', '8.8', 3, 'aluminium', 'far below the usual'],
  ] as const)('doubts %s %s with %d N·m into %s', (thread, propertyClass, torque, into, because) => {
    expect(ask(thread, propertyClass, torque, into)).toMatchObject({ verdict: 'doubtful', because });
  });

  test('lets 10.9 take in steel what it doubts in aluminium', () => {
    expect(ask('M8', '10.9', 40, 'steel').verdict).toBe('possible');
  });

  test('sees that few turns of thread in aluminium strip first', () => {
    const short = (engagement: number, torque: number) =>
      torquePlausibility({
        thread: 'M8',
        propertyClass: '8.8',
        torque: newtonMetre(torque),
        into: 'aluminium',
        engagement: metre(engagement),
      });
    expect(short(0.004, 22)).toMatchObject({ verdict: 'doubtful', because: 'may strip the hole' });
    // The clamp load of an oiled M8 at 20 N·m, 17.7 kN by VDI 2230, against 18.5 kN less 15 %.
    expect(short(0.005, 20)).toMatchObject({ verdict: 'doubtful', because: 'may strip the hole' });
    expect(short(0.002, 25)).toMatchObject({
      verdict: 'impossible',
      because: 'strips the hole',
      fitsThreads: [],
      fitsUnits: [],
    });
  });

  test('says so when it does not know the thread', () => {
    expect(ask('10 mm', '8.8', 10)).toEqual({ verdict: 'unknown thread', thread: '10 mm' });
  });

  test('gets no kinder as torque grows', () => {
    const harshness = { possible: 0, doubtful: 1, impossible: 2, 'unknown thread': 3 };
    fc.assert(
      fc.property(
        fc.constantFrom(...COARSE_THREADS),
        fc.constantFrom(...PROPERTY_CLASSES),
        fc.constantFrom(...HOLE_MATERIALS),
        spread(1, 20),
        (thread, propertyClass, into, times) => {
          const at = (torque: number) => ask(thread, propertyClass, torque, into);
          const start = at(0);
          if (start.verdict !== 'doubtful') throw new Error(start.verdict);
          const { highest } = start.figures.usual;
          expect(at(highest).verdict).toBe('possible');
          expect(harshness[at(highest * times).verdict]).toBeGreaterThanOrEqual(
            harshness[at(highest * Math.sqrt(times)).verdict],
          );
        },
      ),
    );
  });
});
