import { describe, expect, test } from 'vitest';
import { widthOf } from '../../../src/site/drawings/text-width.ts';
import { airPlaces, drawAirPlaces } from '../../../src/site/guides/air-places.ts';
import { drawBoxPlan } from '../../../src/site/guides/box-plan.ts';
import { chain, drawDropChain, lostOn } from '../../../src/site/guides/drop-chain.ts';
import { fanCircuits } from '../../../src/site/guides/fan-circuits.ts';
import { heaterBox } from '../../../src/site/guides/heater-box.ts';
import { drawInfraredBars, shownOn, TRUE_CELSIUS } from '../../../src/site/guides/infrared-bars.ts';
import { drawLeakPlaces, leakPlaces } from '../../../src/site/guides/leak-places.ts';
import { loopsMap } from '../../../src/site/guides/loops-map.ts';
import { drawProofGrid } from '../../../src/site/guides/proof-grid.ts';
import { drawTorqueSplit } from '../../../src/site/guides/torque-split.ts';
import { drawWordScale } from '../../../src/site/guides/word-scale.ts';
import { faultsOf } from '../drawings/well-formed.ts';

const PLANS = [loopsMap, heaterBox, ...fanCircuits.map(({ plan }) => plan)];

const drawings = {
  'where air stays': drawAirPlaces('air'),
  'volts lost': drawDropChain('drop'),
  'where torque goes': drawTorqueSplit('torque', 'M6', 0.14),
  'frequency words': drawWordScale('words'),
  'where it leaks': drawLeakPlaces('leak'),
  'what infrared shows': drawInfraredBars('infrared'),
  ...Object.fromEntries(PLANS.map((plan) => [plan.title, drawBoxPlan('plan', plan)])),
  'what proofs see': drawProofGrid(
    'proofs',
    'Proofs',
    ['gas', 'into oil'],
    [
      { name: 'Milk on the dipstick', seen: [0.04, 0.85] },
      { name: 'Gas test', seen: [0.65, 0.002] },
    ],
  ),
};

describe('drawings of the guides', () => {
  test.each(Object.entries(drawings))('%s: well formed, no style attribute', (_, svg) => {
    expect(faultsOf(svg)).toEqual([]);
    expect(svg).not.toContain('style=');
  });

  test.each(PLANS)('$title: boxes inside the plan, none on another, every line ends at a box', (plan) => {
    for (const [index, one] of plan.parts.entries()) {
      expect(one.x + one.width).toBeLessThanOrEqual(plan.width);
      expect(one.y + one.height).toBeLessThanOrEqual(plan.height);
      for (const other of plan.parts.slice(index + 1))
        expect(
          one.x + one.width <= other.x ||
            other.x + other.width <= one.x ||
            one.y + one.height <= other.y ||
            other.y + other.height <= one.y,
          `${one.lines.join(' ')} on ${other.lines.join(' ')}`,
        ).toBe(true);
      for (const text of one.lines)
        expect(widthOf(text, 13), `${text} is too wide for its box`).toBeLessThanOrEqual(one.width);
    }
    for (const { points } of plan.lines) {
      const [start] = points;
      expect(
        plan.parts.some(
          ({ x, y, width, height }) =>
            start && start.x >= x && start.x <= x + width && start.y >= y && start.y <= y + height,
        ),
      ).toBe(true);
    }
  });

  test('number every place where air stays, in the picture and in the list', () => {
    for (let number = 1; number <= airPlaces.length; number++)
      expect(drawings['where air stays']).toContain(`>${number}</text>`);
  });

  test('number every place where it leaks, in the picture and in the list', () => {
    for (let number = 1; number <= leakPlaces.length; number++)
      expect(drawings['where it leaks']).toContain(`>${number}</text>`);
  });

  test('show matt surfaces near the truth and bare aluminium far under it, never over', () => {
    const [hose] = shownOn;
    const bare = shownOn.at(-1);
    // Common practice, no source: rubber and tape are trusted, a bare casting at 90 °C shows 34 to 50 °C.
    expect(hose?.low).toBeGreaterThan(TRUE_CELSIUS - 5);
    expect(bare?.high).toBeLessThan(55);
    expect(shownOn.every(({ high }) => high <= TRUE_CELSIUS + 0.01)).toBe(true);
  });

  test('fill a field as high as its share, and say the share', () => {
    const svg = drawings['what proofs see'];
    expect(svg).toContain('>85</text>');
    expect(svg).toContain('&lt;1');
    expect(svg).toContain('Milk on the dipstick: gas 4 %, into oil 85 %');
  });

  test('lose over the burnt holder alone more than its limit, and the supply side with it', () => {
    expect(chain.filter(({ withinLimit }) => !withinLimit).map(({ name }) => name)).toEqual([
      'Fuse holder, one leg burnt',
    ]);
    // Limit of the whole supply side, common practice.
    expect(lostOn('supply')).toBeGreaterThan(0.4);
    expect(lostOn('supply') - (chain[0]?.volts ?? 0)).toBeLessThan(0.4);
  });
});
