import { expect, it } from 'vitest';
import { FRICTION, torqueAtFriction } from '../../src/physics/friction.ts';
import { parseThread } from '../../src/physics/thread.ts';
import { clampLoad } from '../../src/physics/tightening.ts';
import { newtonMetre } from '../../src/physics/units.ts';

const m8 = parseThread('M8');
if (!m8) throw new Error('M8');

it.each([
  // VDI 2230 part 1, table A5 (from memory): each state lies in the span of its class.
  ['paste', 0.04, 0.1],
  ['oiled', 0.08, 0.16],
  ['usual', 0.08, 0.16],
  ['dry', 0.14, 0.24],
] as const)('%s lies in the span of its class', (state, low, high) => {
  expect(FRICTION[state].span).toEqual([low, high]);
  expect(FRICTION[state].coefficient).toBeGreaterThanOrEqual(low);
  expect(FRICTION[state].coefficient).toBeLessThanOrEqual(high);
});

it('a torque for another friction clamps as much as the one it stands for, and the way back leads there', () => {
  const given = newtonMetre(24);
  const oiled = torqueAtFriction(m8, given, 'dry', 'oiled');
  expect(clampLoad(m8, oiled, FRICTION.oiled.coefficient)).toBeCloseTo(
    clampLoad(m8, given, FRICTION.dry.coefficient),
    6,
  );
  expect(torqueAtFriction(m8, oiled, 'oiled', 'dry')).toBeCloseTo(24, 9);
});

// Printed loads and torques of VDI 2230 (from memory): M8 8.8 at 0.16 17.6 kN and 29.8 N·m, at 0.10 19.1 kN and 21.6 N·m.
it('an oiled M8 takes two thirds of the dry torque', () => {
  expect(torqueAtFriction(m8, newtonMetre(29.8), 'dry', 'oiled')).toBeCloseTo((21.6 / 19.1) * 17.6, 0);
});
