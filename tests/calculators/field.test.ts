/** Number and unit apart in the page, together in the arithmetic; and the curve that shows the reading. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALCULATORS } from '../../src/calculators/catalogue.ts';
import type { QuantityInput } from '../../src/calculators/declaration.ts';
import { unitsOffered } from '../../src/calculators/reader-units.ts';
import { METRIC, US } from '../../src/model/habit.ts';
import { readQuantity } from '../../src/model/quantity.ts';
import { joinField, keypadOf, splitField, writeDefault } from '../../src/site/calculator/calculator-field.ts';
import { drawCurve } from '../../src/site/drawings/curve.ts';

const QUANTITIES = CALCULATORS.flatMap(({ inputs }) =>
  inputs.filter((input): input is QuantityInput => input.kind === 'quantity'),
);

function siOf(text: string, input: QuantityInput): number {
  const read = readQuantity(text, input.dimension, input.unit);
  if (!read.ok) throw new Error(`${text}: ${read.fault.found}`);
  return read.quantity.low;
}

describe('a field', () => {
  test('apart and together again means the same, in every unit offered', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...QUANTITIES),
        fc.integer({ min: -99, max: 9999 }),
        fc.nat(5),
        (input, number, at) => {
          const units = unitsOffered(input);
          const whole = `${number / 10} ${units[at % units.length]}`.trim();
          const apart = splitField(whole, input, input.unit);
          expect(apart.text).not.toMatch(/[a-zΩ°%]/i);
          expect(siOf(joinField(apart), input)).toBe(siOf(whole, input));
        },
      ),
    );
  });

  test('keeps whole what it cannot take apart, and a unit that is not offered', () => {
    const pressure = QUANTITIES.find(({ name }) => name === 'cap');
    if (!pressure) throw new Error('A cap is asked for');
    for (const whole of ['900 mbar', 'much', '1.4 °C', ''])
      expect(splitField(whole, pressure, 'bar')).toEqual({ text: whole, unit: 'bar' });
    expect(joinField({ text: '900 mbar', unit: 'psi' })).toBe('900 mbar');
    expect(joinField({ text: ' 15 ', unit: 'psi' })).toBe('15 psi');
    expect(joinField({ text: '', unit: 'psi' })).toBe('');
  });

  test('shows every default in a unit that is offered, and nearly the same in US units', () => {
    for (const input of QUANTITIES.filter((each) => each.default !== '')) {
      expect(siOf(joinField(writeDefault(input, input.default, METRIC)), input)).toBeCloseTo(
        siOf(input.default, input),
        9,
      );
      const other = writeDefault(input, input.default, US);
      expect(unitsOffered(input)).toContain(other.unit);
      const [meant, shown] = [siOf(input.default, input), siOf(joinField(other), input)];
      expect(Math.abs(shown - meant)).toBeLessThanOrEqual(0.06 * Math.abs(meant));
    }
  });

  test('opens letters where a minus sign may be wanted', () => {
    for (const input of QUANTITIES) if (input.limits[0].startsWith('-')) expect(keypadOf(input)).toBe('text');
    expect(QUANTITIES.map(keypadOf)).toContain('decimal');
  });
});

describe('the curve', () => {
  const curve = (points: { x: number; y: number; label: string }[], habit = METRIC) =>
    drawCurve({
      id: 'c',
      title: 'Boiling',
      x: { label: 'cap', unit: 'bar', low: 0, high: 2 },
      y: { label: 'boils', unit: '°C', low: 100, high: 150 },
      curves: [
        {
          points: [
            [0, 108],
            [2, 143],
          ],
        },
      ],
      points,
      habit,
    });

  test('draws the reading on it with its words made safe', () => {
    const drawn = curve([{ x: 1, y: 125, label: '<b>125</b>' }]);
    expect(drawn).toContain('class="spot" cx="194" cy="116"');
    expect(drawn).toContain('&lt;b&gt;125');
    expect(drawn).not.toContain('<b>');
  });

  test('draws no reading that lies outside, and still says it', () => {
    const drawn = curve([{ x: 3, y: 125, label: 'at 3 bar' }]);
    expect(drawn).not.toContain('class="spot"');
    expect(drawn).toContain('at 3 bar');
  });

  test('puts round numbers of the reader’s unit on the axes, and the reading at the same place', () => {
    const [metric, other] = [METRIC, US].map((habit) => curve([{ x: 1, y: 125, label: '' }], habit));
    const ticks = (drawn = '') => [...drawn.matchAll(/class="tick"[^>]*>([^<]+)</g)].map((found) => found[1]);
    expect(ticks(metric)).toEqual(['100', '110', '120', '130', '140', '150', '0', '0.5', '1', '1.5', '2']);
    expect(ticks(other)).toEqual(['220', '240', '260', '280', '300', '0', '5', '10', '15', '20', '25']);
    const spot = (drawn = '') => /class="spot" cx="[\d.]+" cy="[\d.]+"/.exec(drawn)?.[0];
    expect(spot(other)).toBe(spot(metric));
  });
});
