import { describe, expect, test } from 'vitest';
import {
  COARSE_THREADS,
  parseThread,
  pitchDiameter,
  rootDiameter,
  stressArea,
} from '../../src/physics/thread.ts';

describe('parseThread', () => {
  test.each([
    ['M6', 'M6', 0.006, 0.001],
    ['m8', 'M8', 0.008, 0.00125],
    [' M 10 ', 'M10', 0.01, 0.0015],
    ['M8x1', 'M8x1', 0.008, 0.001],
    ['M12×1,5', 'M12x1.5', 0.012, 0.0015],
    ['M8 x 1.25', 'M8', 0.008, 0.00125],
  ])('reads %j as %s', (text, name, diameter, pitch) => {
    expect(parseThread(text)).toMatchObject({ name, diameter, pitch });
  });

  test.each(['', 'M', 'M9', 'M64', '10 mm', 'M8x2', 'M8x0', 'M6x0.1', '1/4-20', 'M6.5', '__proto__', 'Mx'])(
    'knows no thread %j',
    (text) => {
      expect(parseThread(text)).toBeUndefined();
    },
  );

  test('knows each coarse thread by its own name', () => {
    for (const name of COARSE_THREADS) expect(parseThread(name)?.name).toBe(name);
  });
});

describe('a thread', () => {
  test('gets thinner inwards: nominal, pitch and root diameter', () => {
    for (const name of COARSE_THREADS) {
      const thread = parseThread(name);
      if (!thread) throw new Error(name);
      expect(pitchDiameter(thread)).toBeLessThan(thread.diameter);
      expect(rootDiameter(thread)).toBeLessThan(pitchDiameter(thread));
      expect(stressArea(thread)).toBeLessThan((Math.PI / 4) * thread.diameter ** 2);
    }
  });

  // ISO 724 (pitch diameter) and the root diameter of VDI 2230, printed to 0.001 mm; from memory.
  test.each([
    ['M5', 4.48, 4.019],
    ['M6', 5.35, 4.773],
    ['M8', 7.188, 6.466],
    ['M10', 9.026, 8.16],
    ['M12', 10.863, 9.853],
    ['M16', 14.701, 13.546],
  ])('%s has the printed pitch and root diameter', (name, pitch, root) => {
    const thread = parseThread(name);
    if (!thread) throw new Error(name);
    expect(pitchDiameter(thread) * 1000).toBeCloseTo(pitch, 3);
    expect(rootDiameter(thread) * 1000).toBeCloseTo(root, 3);
  });

  // ISO 898-1 gives the same area in a second form, pi/4 (d - 0.9382 P)^2.
  test('has the stress area of the second form of the standard', () => {
    for (const name of COARSE_THREADS) {
      const thread = parseThread(name);
      if (!thread) throw new Error(name);
      const area = (Math.PI / 4) * (thread.diameter - 0.9382 * thread.pitch) ** 2;
      expect(stressArea(thread) / area).toBeCloseTo(1, 4);
    }
  });
});
