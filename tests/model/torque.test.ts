import { describe, expect, test } from 'vitest';
import { torqueEntry } from '../../src/model/torque.ts';
import { besidesTorque } from '../../src/model/torque-stages.ts';
import { vehicleSchema } from '../../src/model/vehicle.ts';

const BOLT = {
  is: '5 N·m',
  bolt: 'M6',
  class: '8.8',
  into: 'aluminium',
  from: 'manual',
  checked: '2026-11-20',
  sure: 'read off the source',
};

describe('a torque in stages', () => {
  test('is read in its order and said as it is done', () => {
    const read = torqueEntry.parse({
      ...BOLT,
      stages: [{ to: '9 N·m' }, { turn: '90°' }],
      'one-use': true,
    });
    expect(besidesTorque(read)).toBe('then 9\u00a0N·m, then 90° further; new bolts');
    expect(besidesTorque(read, { torque: 'lbf·ft' })).toContain('lbf·in');
  });

  test('one stage asks for nothing more', () => {
    expect(besidesTorque(torqueEntry.parse(BOLT))).toBe('');
  });

  test('an angle without a word on the bolt is refused', () => {
    const read = torqueEntry.safeParse({ ...BOLT, stages: [{ turn: '90°' }] });
    expect(read.success).toBe(false);
    expect(read.error?.issues[0]?.path).toEqual(['one-use']);
    expect(torqueEntry.safeParse({ ...BOLT, stages: [{ turn: '90°' }], 'one-use': false }).success).toBe(
      true,
    );
  });

  test.each([['5°'], ['400°'], ['10 N·m']])('a turn of %s cannot be meant', (turn) => {
    expect(torqueEntry.safeParse({ ...BOLT, stages: [{ turn }], 'one-use': true }).success).toBe(false);
  });
});

test('a loop that no vehicle has is refused, and so is a plug without pins', () => {
  const { loops, plugs } = vehicleSchema.shape;
  expect(loops.safeParse({ radiator: {} }).success).toBe(false);
  expect(loops.parse(undefined)).toEqual({});
  const origin = { from: 'manual', checked: '2026-11-20', sure: 'read off the source' };
  expect(plugs.safeParse({ fan: { pins: [], ...origin } }).success).toBe(false);
  expect(plugs.safeParse({ fan: { pins: [{ pin: '1', does: 'earth' }], ...origin } }).success).toBe(true);
});
