/** Look-ups and plugs of a record as lines at their places. */
import { expect, test } from 'vitest';
import { whereItSits } from '../../../../src/site/vehicle/build/where-it-sits.ts';

const source = { from: 'manual', checked: '2026-11-20', sure: 'read off the source' } as const;

test('where a fuse sits and what a pin carries stand at the place they belong to; a part number stands at none', () => {
  const lines = whereItSits({
    'look-ups': {
      'cap-number': { is: 'CQ-1', ...source },
      'fan-fuse': { is: 'Carrier on the battery', ...source },
    },
    plugs: {
      fan: {
        pins: [
          { pin: '1', wire: 'red', does: 'battery plus' },
          { pin: '2', does: 'earth' },
        ],
        ...source,
      },
    },
  });
  expect(lines).toEqual([
    { is: 'Fan fuse sits: Carrier on the battery', at: ['fan-fuse'] },
    { is: 'Plug, Fan or its module: pin 1, red, battery plus; pin 2, earth', at: ['fan-plug'] },
  ]);
});
