import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { METRIC, US } from '../../src/model/habit.ts';
import { exampleOf, type Quantity, readQuantity } from '../../src/model/quantity.ts';
import { quantityText, showNumber, showQuantity } from '../../src/model/show-quantity.ts';
import { type Dimension, fromSI, UNITS, unitsOf } from '../../src/model/units.ts';

const DIMENSIONS = [...new Set(UNITS.map((unit) => unit.dimension))];

function read(text: string, dimension: Dimension, assume?: string): Quantity {
  const result = readQuantity(text, dimension, assume);
  if (!result.ok) throw new Error(`${result.fault.found} ${result.fault.expected}`);
  return result.quantity;
}

function fault(text: string, dimension: Dimension) {
  const result = readQuantity(text, dimension);
  return result.ok ? 'none' : { ...result.fault };
}

describe('as people write them', () => {
  test.each<[string, Dimension, number, number]>([
    ['87 °C', 'temperature', 360.15, 360.15],
    ['87°C', 'temperature', 360.15, 360.15],
    ['188.6 °F', 'temperature', 360.15, 360.15],
    ['1.4 bar', 'pressure', 140_000, 140_000],
    ['96 to 98 °C', 'temperature', 369.15, 371.15],
    ['96 – 98 °C', 'temperature', 369.15, 371.15],
    ['88 ± 2 °C', 'temperature', 359.15, 363.15],
    ['2.5 kΩ', 'resistance', 2500, 2500],
    ['−37 to −30 °C', 'temperature', 236.15, 243.15],
    ['-5 °C', 'temperature', 268.15, 268.15],
    ['.5 l', 'volume', 0.0005, 0.0005],
    ['10 Nm', 'torque', 10, 10],
    ['50 %', 'share', 0.5, 0.5],
    ['3', 'plain', 3, 3],
    ['0.02 to 0.1 bar', 'pressure', 2000, 10_000],
  ])('%s', (text, dimension, low, high) => {
    const quantity = read(text, dimension);
    expect(quantity.low).toBeCloseTo(low, 9);
    expect(quantity.high).toBeCloseTo(high, 9);
    expect(quantity.dimension).toBe(dimension);
  });

  test.each(DIMENSIONS)('the example for %s can be read', (dimension) => {
    expect(readQuantity(exampleOf(dimension), dimension).ok).toBe(true);
  });

  test('a unit is taken for granted only where that is asked for', () => {
    expect(read('87', 'temperature', '°C').low).toBeCloseTo(360.15, 9);
    expect(fault('87', 'temperature')).toMatchObject({ rule: 'wrong-unit' });
  });
});

describe('what is not a quantity says what would be', () => {
  test.each<[string, Dimension, 'unreadable-quantity' | 'wrong-unit', string]>([
    ['', 'temperature', 'unreadable-quantity', 'a number with its unit, such as 87 °C'],
    ['hot', 'temperature', 'unreadable-quantity', 'a number with its unit, such as 87 °C'],
    ['1,4 bar', 'pressure', 'unreadable-quantity', 'a point for decimals: 1.4 bar'],
    ['087 °C', 'temperature', 'unreadable-quantity', 'the number without it, such as 87 °C'],
    ['98 to 96 °C', 'temperature', 'unreadable-quantity', 'the smaller end first'],
    ['87', 'temperature', 'wrong-unit', 'the unit behind it, such as 87 °C'],
    ['87 bar', 'temperature', 'wrong-unit', 'one of °C, °F, such as 87 °C'],
    ['87 degrees', 'temperature', 'wrong-unit', 'one of °C, °F'],
  ])('"%s"', (text, dimension, rule, expected) => {
    expect(fault(text, dimension)).toMatchObject({ rule, expected });
  });
});

/** A number with so many decimals that it is written without an exponent. */
const written = fc
  .tuple(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([digits, decimals]) => ({ value: digits / 10 ** decimals, decimals }));

describe('properties', () => {
  test('what is shown is read as the same quantity', () => {
    fc.assert(
      fc.property(fc.constantFrom(...UNITS), written, written, (unit, one, other) => {
        const decimals = Math.max(one.decimals, other.decimals);
        const [low, high] = [one.value, other.value].sort((a, b) => a - b);
        const text =
          `${showNumber(low ?? 0, decimals)} to ${showNumber(high ?? 0, decimals)} ${unit.symbol}`.trim();
        const quantity = read(text, unit.dimension);
        const { number, unit: symbol } = showQuantity(quantity, METRIC);
        const again = read(`${number.replace('\u2009–\u2009', ' to ')} ${symbol}`.trim(), unit.dimension);
        expect(again).toEqual(quantity);
        expect(fromSI(again.low, unit)).toBeCloseTo(low ?? 0, 6);
      }),
    );
  });

  test('the reader’s unit changes what is shown, not what is meant', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS.filter((unit) => US[unit.dimension] !== undefined)),
        written,
        (unit, { value, decimals }) => {
          const quantity = read(`${showNumber(value, decimals)} ${unit.symbol}`, unit.dimension);
          const shown = showQuantity(quantity, US);
          expect(shown.unit).toBe(US[unit.dimension]);
          const back = read(`${shown.number} ${shown.unit}`, unit.dimension);
          // Rounded to a step no finer than the written one: at most half a shown step away, and that is under
          // ten written steps whatever the units are.
          const step = 10 ** -decimals * unit.factor;
          expect(Math.abs(back.low - quantity.low)).toBeLessThanOrEqual(5 * step * (1 + 1e-6) + 1e-9);
        },
      ),
    );
  });
});

test('numbers are shown with a true minus and never as minus nothing', () => {
  expect(showNumber(-5, 0)).toBe('\u22125');
  expect(showNumber(-0.01, 1)).toBe('0.0');
  expect(quantityText(read('96 to 98 °C', 'temperature'))).toBe('96\u2009–\u200998\u00a0°C');
  expect(unitsOf('temperature')[0]?.symbol).toBe('°C');
});
