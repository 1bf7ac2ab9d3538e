import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { METRIC, US } from '../../src/model/habit.ts';
import { exampleOf, type Quantity, readQuantity, takenFor } from '../../src/model/quantity.ts';
import { quantityText, showNumber, showQuantity } from '../../src/model/show-quantity.ts';
import { type Dimension, fromSI, UNITS, unitsOf } from '../../src/model/units.ts';

/** Where a US reader has another unit than the usual one of the dimension. */
const OWN_US_UNIT: Readonly<Record<string, string>> = {
  m: 'ft',
  km: 'mi',
  ml: 'fl oz',
  'ml/min': 'fl oz/min',
  'mm²': 'mm²',
};

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

describe('typed with a decimal comma', () => {
  test.each<[string, Dimension, string, number]>([
    ['33,5', 'temperature', '°C', 306.65],
    ['4,6', 'volume', 'l', 0.0046],
    ['0,125', 'voltage', 'V', 0.125],
    ['-0,5 °C', 'temperature', '°C', 272.65],
    ['−12,25', 'temperature', '°C', 260.9],
    [',5 l', 'volume', 'l', 0.0005],
    ['1,4 bar', 'pressure', 'bar', 140_000],
    ['2,50 kΩ', 'resistance', 'Ω', 2500],
  ])('%s is read', (text, dimension, unit, si) => {
    expect(read(text, dimension, unit).low).toBeCloseTo(si, 9);
  });

  test('in both ends of a range', () => {
    expect(read('4,5 to 5,25 l', 'volume', 'l')).toEqual(read('4.5 to 5.25 l', 'volume', 'l'));
  });

  test.each([
    ['1,234', '"1,234" may be read in two ways.', '1.234 or 1234, whichever is meant'],
    ['12,345 l', '"12,345 l" may be read in two ways.', '12.345 l or 12345 l, whichever is meant'],
    ['1,2345', '"1,2345" has a comma in the number.', 'a point for decimals: 1.2345'],
    [
      '1.400,5',
      '"1.400,5" has more than one sign in a number.',
      'the number with a point before its decimals and nothing between its thousands',
    ],
    [
      '1,234,567',
      '"1,234,567" has more than one sign in a number.',
      'the number with a point before its decimals and nothing between its thousands',
    ],
    ['00,5', '"00,5" starts a number with a zero.', 'the number without it, such as 0.5'],
    [',0e0', '",0e0" has a power of ten in it.', 'the number in full, such as 4.6 l'],
  ])('%s is refused: thousands are never guessed', (text, found, expected) => {
    const result = readQuantity(text, 'volume', 'l');
    expect(result).toEqual({ ok: false, fault: { rule: 'unreadable-quantity', found, expected } });
  });

  test.each([
    ['6 200 ml', 'volume', '"6 200 ml" has a gap in the number.', 'the number without it: 6200 ml'],
    [
      '8\u200b8 °C',
      'temperature',
      'A character that cannot be seen stands in "8·8 °C", at the dot.',
      'the same typed again',
    ],
    [
      '10 Nm + 90°',
      'torque',
      '"10 Nm + 90°" holds two stages.',
      'the torque here, and the angle in the file as a stage of it: stages: [{ turn: 90° }]',
    ],
  ] as const)('%s in a record says what it takes', (text, dimension, found, expected) => {
    expect(readQuantity(text, dimension)).toMatchObject({ ok: false, fault: { found, expected } });
  });

  test('nor on the shelf, where both readings are offered', () => {
    expect(readQuantity('150,000 km', 'length')).toMatchObject({
      fault: { expected: '150.000 km or 150000 km, whichever is meant' },
    });
  });

  test('and said how it was taken', () => {
    expect(takenFor('33,5 °C', 'temperature', '°C')).toBe('33.5 °C');
    for (const text of ['33.5', '1,234', '1.400,5', '', 'a, b'])
      expect(takenFor(text, 'temperature', '°C')).toBeUndefined();
  });
});

describe('as it is typed at a bench', () => {
  test.each<[string, Dimension, string, string]>([
    ['2k5', 'resistance', 'Ω', '2.5 kΩ'],
    ['4R7', 'resistance', 'Ω', '4.7 Ω'],
    ['1M2', 'resistance', 'Ω', '1.2 MΩ'],
    ['1h30', 'time', 'min', '90 min'],
    ['1:30', 'time', 'min', '90 min'],
    ['2 h 15 min', 'time', 'min', '135 min'],
    ['2 hrs 05', 'time', 'min', '125 min'],
    ['2 min 30 s', 'time', 'min', '150 s'],
    ['1:1', 'share', '%', '50 %'],
    ['50/50', 'share', '%', '50 %'],
    ['1:2', 'share', '%', '33.3 %'],
    ['60/40', 'share', '%', '60 %'],
    ['12 x 8 cm', 'area', 'cm²', '96 cm²'],
    ['12x8', 'area', 'cm²', '96 cm²'],
    ['8-10 Nm', 'torque', 'N·m', '8 to 10 Nm'],
    ['82-95', 'temperature', '°C', '82 to 95'],
    ['0,5-1,5 l', 'volume', 'l', '0.5 to 1.5 l'],
    ['2.5 kΩ ± 10 %', 'resistance', 'Ω', '2.25 to 2.75 kΩ'],
    ['18 A +/- 5%', 'current', 'A', '17.1 to 18.9 A'],
    ['87 °C ± 2 °C', 'temperature', '°C', '87 ± 2 °C'],
    ['1.2 bar to 1.5 bar', 'pressure', 'bar', '1.2 to 1.5 bar'],
    ['9 Nm - 11 Nm', 'torque', 'N·m', '9 to 11 Nm'],
  ])('%s is read, and said as what', (typed, dimension, unit, as) => {
    expect(takenFor(typed, dimension, unit)).toBe(as);
    expect(read(typed, dimension, unit)).toEqual(read(as, dimension, unit));
    // The shelf has the plain form only.
    expect(readQuantity(typed, dimension).ok).toBe(false);
  });

  test.each<[string, Dimension, string, string]>([
    ['10 N·m + 90°', 'torque', '"10 N·m + 90°" is a torque and then an angle.', 'the torque alone, 10 N·m;'],
    [
      '30 Nm then 90 deg',
      'torque',
      '"30 Nm then 90 deg" is a torque and then an angle.',
      'the torque alone, 30 Nm;',
    ],
    ['sixty', 'plain', '"sixty" is not a number.', 'a number alone, such as 3'],
    ['60 EUR', 'plain', '"60 EUR" has a unit, and this place takes none.', 'the number alone, such as 3'],
    ['3 furlong', 'length', '"furlong" is not a unit known here.', 'one of m, mm, cm'],
    ['2m5', 'resistance', '"m5" is not a unit known here.', 'one of Ω, kΩ'],
  ])('%s is refused with what would be read', (typed, dimension, found, expected) => {
    const result = readQuantity(typed, dimension, dimension === 'torque' ? 'N·m' : '');
    if (result.ok) throw new Error('read after all');
    expect(result.fault.found).toBe(found);
    expect(result.fault.expected).toContain(expected);
  });

  test('a difference is typed in the degrees of the tool', () => {
    expect(read('9 °F', 'temperature difference', 'K')).toMatchObject({ unit: 'K', low: 5, decimals: 1 });
    expect(read('9', 'temperature difference', '°F').low).toBeCloseTo(5, 9);
    expect(read('8 °C', 'temperature difference', 'K')).toMatchObject({ unit: 'K', low: 8, decimals: 0 });
    // The shelf writes it in kelvin, so that nobody takes it for a temperature.
    expect(readQuantity('9 °F', 'temperature difference').ok).toBe(false);
  });

  test('a minus stays a minus: only a stroke between two numbers is a range', () => {
    expect(read('-30', 'temperature', '°C').low).toBeCloseTo(243.15, 9);
    expect(read('-30 to -25', 'temperature', '°C').high).toBeCloseTo(248.15, 9);
  });

  test('numbers alone are never turned into a form', () => {
    fc.assert(
      fc.property(fc.constantFrom(...DIMENSIONS), written, (dimension, { value, decimals }) => {
        expect(takenFor(showNumber(value, decimals), dimension, '')).toBeUndefined();
      }),
    );
  });
});

describe('what is not a quantity says what would be', () => {
  test.each<[string, Dimension, 'unreadable-quantity' | 'wrong-unit', string]>([
    ['', 'temperature', 'unreadable-quantity', 'a number with its unit, such as 87 °C'],
    ['hot', 'temperature', 'unreadable-quantity', 'a number with its unit, such as 87 °C'],
    ['1,4 bar', 'pressure', 'unreadable-quantity', 'a point for decimals: 1.4 bar'],
    ['0,125 V', 'voltage', 'unreadable-quantity', 'a point for decimals: 0.125 V'],
    ['087 °C', 'temperature', 'unreadable-quantity', 'the number without it, such as 87 °C'],
    ['98 to 96 °C', 'temperature', 'unreadable-quantity', 'the smaller end first'],
    ['87', 'temperature', 'wrong-unit', 'the unit behind it, such as 87 °C'],
    ['87 bar', 'temperature', 'wrong-unit', 'one of °C, °F, such as 87 °C'],
    ['87 degrees', 'temperature', 'wrong-unit', 'one of °C, °F, such as 87 °C'],
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
          const small =
            unit.dimension === 'torque' && unit.symbol !== 'lbf·ft' && Math.abs(quantity.high) < 20;
          // A service interval is driven, not measured; an altitude, a drop and a cable have units of their own.
          const driven = unit.dimension === 'length' && unit.symbol !== 'in' && quantity.high >= 10_000;
          const own = OWN_US_UNIT[unit.symbol];
          expect(shown.unit).toBe(own ?? (small ? 'lbf·in' : driven ? 'mi' : US[unit.dimension]));
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

test('a comma is the point or is refused, whatever stands before and behind it', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('', '-', '−', '+'),
      fc.nat({ max: 99_999 }),
      fc.stringMatching(/^\d{1,6}$/),
      fc.constantFrom('', ' l', 'l'),
      (sign, whole, decimals, unit) => {
        const result = readQuantity(`${sign}${whole},${decimals}${unit}`, 'volume', 'l');
        const pointed = readQuantity(`${sign}${whole}.${decimals}${unit}`, 'volume', 'l');
        const taken = decimals.length <= 2 || whole === 0;
        expect(result.ok).toBe(taken);
        if (taken) expect(result).toEqual(pointed);
        // A record on the shelf is read by the next person too: there a comma stays a fault.
        expect(readQuantity(`${sign}${whole},${decimals} l`, 'volume').ok).toBe(false);
      },
    ),
  );
});

test('a small torque goes by the inch for a US reader, and one written in feet stays so', () => {
  const shown = (text: string) => quantityText(read(text, 'torque'), US).replace('\u00a0', ' ');
  expect(shown('10 N·m')).toBe('89 lbf·in');
  expect(shown('8 to 12 N·m')).toBe('71\u2009–\u2009106 lbf·in');
  expect(shown('20 N·m')).toBe('15 lbf·ft');
  expect(shown('9 to 25 N·m')).toBe('7\u2009–\u200918 lbf·ft');
  expect(shown('10 lbf·ft')).toBe('10 lbf·ft');
});

test('numbers are shown with a true minus and never as minus nothing', () => {
  expect(showNumber(-5, 0)).toBe('\u22125');
  expect(showNumber(-0.01, 1)).toBe('0.0');
  expect(quantityText(read('96 to 98 °C', 'temperature'))).toBe('96\u2009–\u200998\u00a0°C');
  expect(unitsOf('temperature')[0]?.symbol).toBe('°C');
});
