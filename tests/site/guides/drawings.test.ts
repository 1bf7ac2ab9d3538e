import { describe, expect, it } from 'vitest';
import { airPlaces, drawAirPlaces } from '../../../src/site/guides/air-places.ts';
import { chain, drawDropChain, lostOn } from '../../../src/site/guides/drop-chain.ts';
import { drawTorqueSplit } from '../../../src/site/guides/torque-split.ts';
import { drawWordScale } from '../../../src/site/guides/word-scale.ts';
import { faultsOf } from '../drawings/well-formed.ts';

const drawings = {
  'where air stays': drawAirPlaces('air'),
  'volts lost': drawDropChain('drop'),
  'where torque goes': drawTorqueSplit('torque', 'M6', 0.14),
  'frequency words': drawWordScale('words'),
};

describe('drawings of the guides', () => {
  it.each(Object.entries(drawings))('%s: well formed, no style attribute', (_, svg) => {
    expect(faultsOf(svg)).toEqual([]);
    expect(svg).not.toContain('style=');
  });

  it('number every place where air stays, in the picture and in the list', () => {
    for (let number = 1; number <= airPlaces.length; number++)
      expect(drawings['where air stays']).toContain(`>${number}</text>`);
  });

  it('lose over the burnt holder alone more than its limit, and the supply side with it', () => {
    expect(chain.filter(({ withinLimit }) => !withinLimit).map(({ name }) => name)).toEqual([
      'Fuse holder, one leg burnt',
    ]);
    // Limit of the whole supply side, common practice.
    expect(lostOn('supply')).toBeGreaterThan(0.4);
    expect(lostOn('supply') - (chain[0]?.volts ?? 0)).toBeLessThan(0.4);
  });
});
