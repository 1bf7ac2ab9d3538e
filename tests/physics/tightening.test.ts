import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isPropertyClass, PROPERTY_CLASSES, proofLoad } from '../../src/physics/bolt.ts';
import { strippingLoad } from '../../src/physics/stripping.ts';
import { COARSE_THREADS, parseThread } from '../../src/physics/thread.ts';
import {
  assemblyPreload,
  clampLoad,
  clampLoadByNutFactor,
  nutFactor,
  tighteningTorque,
  torqueShares,
} from '../../src/physics/tightening.ts';
import { metre, newtonMetre } from '../../src/physics/units.ts';
import { spread } from './spread.ts';

const threads = fc.constantFrom(...COARSE_THREADS).map((name) => {
  const thread = parseThread(name);
  if (!thread) throw new Error(name);
  return thread;
});
const classes = fc.constantFrom(...PROPERTY_CLASSES);
const frictions = spread(0.04, 0.4);

describe('tightening', () => {
  test('gives back the clamp load that a torque was made for', () => {
    fc.assert(
      fc.property(threads, classes, frictions, (thread, propertyClass, friction) => {
        const preload = assemblyPreload(thread, propertyClass, friction);
        const torque = tighteningTorque(thread, propertyClass, friction);
        expect(clampLoad(thread, torque, friction) / preload).toBeCloseTo(1, 9);
      }),
    );
  });

  test('sends about a seventh of the torque of a dry M6 into the clamp, the rest into friction', () => {
    const thread = parseThread('M6');
    if (!thread) throw new Error('M6');
    const shares = torqueShares(thread, 0.14);
    // By hand from VDI 2230: 0.16 P = 0.16 mm, 0.58 d2 mu = 0.4345 mm, D_Km/2 mu = 0.5418 mm.
    expect(shares.clamp).toBeCloseTo(0.1408, 3);
    expect(shares.thread).toBeCloseTo(0.3824, 3);
    expect(shares.head).toBeCloseTo(0.4768, 3);
  });

  test('loses none of the torque between clamp, thread and head', () => {
    fc.assert(
      fc.property(threads, frictions, (thread, friction) => {
        const { clamp, thread: rubbed, head } = torqueShares(thread, friction);
        expect(clamp + rubbed + head).toBeCloseTo(1, 12);
        expect(clamp * nutFactor(thread, friction) * thread.diameter).toBeCloseTo(0.16 * thread.pitch, 12);
      }),
    );
  });

  test('wants more torque for less clamp load the rougher the thread', () => {
    fc.assert(
      fc.property(threads, classes, frictions, (thread, propertyClass, friction) => {
        fc.pre(friction < 0.39);
        const rougher = friction + 0.01;
        expect(assemblyPreload(thread, propertyClass, rougher)).toBeLessThan(
          assemblyPreload(thread, propertyClass, friction),
        );
        const torque = newtonMetre(10);
        expect(clampLoad(thread, torque, rougher)).toBeLessThan(clampLoad(thread, torque, friction));
      }),
    );
  });

  test('stays below the load that breaks the bolt, for every class', () => {
    fc.assert(
      fc.property(threads, classes, frictions, (thread, propertyClass, friction) => {
        expect(assemblyPreload(thread, propertyClass, friction)).toBeLessThan(
          proofLoad(thread, propertyClass),
        );
      }),
    );
  });

  test('is the same by nut factor as by friction', () => {
    fc.assert(
      fc.property(threads, frictions, (thread, friction) => {
        const torque = newtonMetre(20);
        const byFactor = clampLoadByNutFactor(thread, torque, nutFactor(thread, friction));
        expect(byFactor / clampLoad(thread, torque, friction)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('refuses a friction that no thread has', () => {
    const m6 = parseThread('M6');
    if (!m6) throw new Error('M6');
    expect(() => tighteningTorque(m6, '8.8', 0)).toThrow('friction coefficient 0 is outside 0.04 to 0.4');
    expect(() => clampLoadByNutFactor(m6, newtonMetre(10), 0)).toThrow('nut factor');
  });
});

describe('strippingLoad', () => {
  /** An M6 of 8.8, N: ISO 898-1, printed table, from memory. The comparison is that of the machine-element handbooks. */
  const BREAKS = 16_100;

  test('puts an M6 in 1 d of cast aluminium on a level with the bolt, and 2 d well above it', () => {
    const m6 = parseThread('M6');
    if (!m6) throw new Error('M6');
    expect(strippingLoad(m6, metre(0.006), 'aluminium') / BREAKS).toBeCloseTo(1, 1);
    expect(strippingLoad(m6, metre(0.012), 'aluminium') / BREAKS).toBeGreaterThan(1.5);
  });
});

test('isPropertyClass takes no other text', () => {
  expect(['8.8', '10.9'].every(isPropertyClass)).toBe(true);
  expect(['8,8', '88', 'A2-70', 'constructor', ''].some(isPropertyClass)).toBe(false);
});
