import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { findUnit, fromSI } from '../../../src/model/units.ts';
import { figureCalled, figureNames } from '../../../src/site/guides/figures.ts';

const GUIDES = 'content/guides';
const texts = readdirSync(GUIDES).map((name) => readFileSync(`${GUIDES}/${name}`, 'utf8'));
const quoted = new Set(
  texts.flatMap((text) => [...text.matchAll(/<Fig of="([^"]+)"/g)].map(([, name]) => name)),
);

function shown(name: string): number {
  const { low, unit } = figureCalled(name);
  const found = findUnit(unit);
  if (!found) throw new Error(unit);
  return fromSI(low, found);
}

describe('figures of the guides', () => {
  test('are numbers, every one', () => {
    for (const name of figureNames) expect(Number.isFinite(shown(name)), name).toBe(true);
  });

  test('are quoted by a guide, and every quoted one is known', () => {
    expect([...quoted].sort()).toEqual([...figureNames].sort());
  });

  test('refuse a name they do not know', () => {
    expect(() => figureCalled('boils on the moon')).toThrow('boils on the moon');
  });

  // IAPWS-IF97 and Kamihama et al. (2012), evaluated outside this project: 107.98, 135.51, 99.27, 131.54 and 91.64 °C.
  test.each([
    ['half boils open', 107.98],
    ['half boils under 1.4 bar', 135.51],
    ['half boils open high up', 99.27],
    ['half boils under 1.4 bar high up', 131.54],
    ['water boils open high up', 91.64],
  ])('%s within a tenth of a degree of the published model', (name, celsius) => {
    expect(Math.abs(shown(name) - celsius)).toBeLessThan(0.1);
  });

  test('a tester pumped to 100 kPa at 80 °C shows 57.8 kPa at 60 °C, gas law, vapour and shrinking coolant together', () => {
    expect(Math.abs(shown('tester after cooling') - 57.8)).toBeLessThan(1);
  });

  test('0.4 V at 30 A is 12 W in 13.3 milliohm, by Ohm’s law', () => {
    expect(shown('holder heat')).toBeCloseTo(12, 9);
    expect(shown('holder resistance')).toBeCloseTo(13.333, 2);
  });

  test('half by volume is 52.73 % by mass: densities 1113.6 and 998.21 kg/m3 at 20 °C, CRC and IAPWS', () => {
    expect(shown('half by volume, by mass')).toBeCloseTo((100 * 1113.6) / (1113.6 + 998.21), 2);
  });

  test('10 lbf·ft is 13.558 N·m, NIST SP 811', () => {
    expect(shown('ten pound-feet')).toBeCloseTo(13.558, 3);
  });

  test('a 50 mm crow-foot on 250 mm wants 8.33 for 10 N·m, lever rule', () => {
    expect(shown('setting with crow-foot')).toBeCloseTo(8.333, 3);
  });
});
