import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figureLookup } from '../../src/model/figure-lookup.ts';
import { parsed } from '../../src/model/scalars.ts';
import {
  type FigureLookup,
  type Limit,
  limitValue,
  outcomeOfReading,
  readLimit,
  type ScaledTest,
} from '../../src/model/scale.ts';

function limit(text: string): Limit {
  const read = readLimit(text);
  if (!read.ok) throw new Error(read.fault.found);
  return read.limit;
}

/** A test whose outcomes are called after where they stand: "below", "band 1" ... */
function cutAt(...texts: string[]): ScaledTest {
  const limits = texts.map(limit);
  const bands = [undefined, ...limits].map((from, at) => [
    at === 0 ? 'below' : `band ${at}`,
    { ...(from && { from }), ...(limits[at] && { to: limits[at] }) },
  ]);
  return { outcomes: Object.fromEntries([...bands, ['no-reading', {}]]) };
}

const NOTHING_KNOWN = figureLookup({}, {});
const STAMP_88 = figureLookup({ 'thermostat.opens': { is: parsed('88 °C', 'temperature') } }, {});
const kelvin = (celsius: number) => celsius + 273.15;

describe('a limit is read', () => {
  test.each([
    ['15 K', { times: 1, plus: 15, unit: 'K' }],
    ['0.3 bar', { times: 1, plus: 30_000, unit: 'bar' }],
    ['-5 K', { times: 1, plus: -5, unit: 'K' }],
    ['80 °C', { times: 1, plus: 353.15, unit: '°C' }],
    ['15 %', { times: 1, plus: 0.15, unit: '%' }],
    ['{fan.on}', { figure: 'fan.on', times: 1, plus: 0 }],
    ['{thermostat.opens} - 5 K', { figure: 'thermostat.opens', times: 1, plus: -5, unit: 'K' }],
    ['{thermostat.opens} − 5 K', { figure: 'thermostat.opens', times: 1, plus: -5, unit: 'K' }],
    ['{cap.opens} + 0.2 bar', { figure: 'cap.opens', times: 1, plus: 20_000, unit: 'bar' }],
    ['0.75 × {fan.current}', { figure: 'fan.current', times: 0.75, plus: 0 }],
    ['1.5 x {warm-up.time} + 1 min', { figure: 'warm-up.time', times: 1.5, plus: 60, unit: 'min' }],
  ])('%s', (text, expected) => {
    const { plus, ...read } = limit(text);
    expect(read).toEqual({ text, ...expected, plus: undefined });
    expect(plus).toBeCloseTo(expected.plus, 9);
  });

  test.each([
    ['5 to 8 K', 'unreadable-quantity'],
    ['warm', 'unreadable-quantity'],
    ['', 'unreadable-quantity'],
    ['{fan.on', 'unreadable-quantity'],
    ['0 × {fan.current}', 'unreadable-quantity'],
    ['5 furlongs', 'wrong-unit'],
    ['{fan.on} - 5 °C', 'wrong-unit'],
    ['{fan.on} - 5 furlongs', 'wrong-unit'],
  ])('"%s" is refused', (text, rule) => {
    const read = readLimit(text);
    expect(read.ok ? 'read' : read.fault.rule).toBe(rule);
  });
});

describe('a reading chooses its outcome', () => {
  const hoses = cutAt('8 K', '15 K', '25 K');
  test.each([
    [-40, 'below'],
    [7.9, 'below'],
    [8, 'band 1'],
    [15, 'band 2'],
    [24.999, 'band 2'],
    [25, 'band 3'],
    [90, 'band 3'],
  ])('%s K is "%s"', (value, outcome) => {
    expect(outcomeOfReading(hoses, value, NOTHING_KNOWN)).toEqual({ is: 'outcome', outcome, general: [] });
  });

  const opening = cutAt('{thermostat.opens} - 15 K', '{thermostat.opens} - 5 K', '{thermostat.opens} + 5 K');
  test.each([
    [72, 'below'],
    [73, 'band 1'],
    [83, 'band 2'],
    [92.9, 'band 2'],
    [93, 'band 3'],
  ])('the vehicle’s own figure is taken: %s °C with a stamp of 88 is "%s"', (celsius, outcome) => {
    expect(outcomeOfReading(opening, kelvin(celsius), STAMP_88)).toEqual({
      is: 'outcome',
      outcome,
      general: [],
    });
  });

  // The general range is 82 to 92 °C: 15 K below it lies between 67 and 77 °C.
  test('outside what the general range leaves open the answer stands, and says what it was taken from', () => {
    expect(outcomeOfReading(opening, kelvin(60), NOTHING_KNOWN)).toEqual({
      is: 'outcome',
      outcome: 'below',
      general: ['thermostat.opens'],
    });
    expect(outcomeOfReading(opening, kelvin(98), NOTHING_KNOWN)).toMatchObject({ outcome: 'band 3' });
  });

  test('inside it the figure that decides is named', () => {
    expect(outcomeOfReading(opening, kelvin(75), NOTHING_KNOWN)).toEqual({
      is: 'needs figures',
      between: ['below', 'band 1'],
      figures: ['thermostat.opens'],
    });
  });

  test('a figure that the vehicle cannot have is not taken from the general range', () => {
    const oneStage = figureLookup({}, { fan: 'electric, one stage' });
    expect(outcomeOfReading(cutAt('{fan.fast}'), kelvin(140), oneStage)).toEqual({
      is: 'needs figures',
      between: ['below', 'band 1'],
      figures: ['fan.fast'],
    });
  });

  test('a test without a scale takes no reading', () => {
    expect(outcomeOfReading({ outcomes: { dry: {}, wet: {} } }, 3, NOTHING_KNOWN)).toEqual({
      is: 'no scale',
    });
  });

  test('a figure of the vehicle that is a range counts as its middle', () => {
    const range = figureLookup({ 'fan.on': { is: parsed('96 to 98 °C', 'temperature') } }, {});
    expect(limitValue(limit('{fan.on} + 1 K'), range)).toEqual({ low: kelvin(98), high: kelvin(98) });
  });
});

describe('whatever the limits and the reading', () => {
  const ascending = fc
    .uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 6 })
    .map((values) => values.sort((a, b) => a - b));

  test('a scale that is tiled by numbers has exactly one answer, the band that the reading stands in', () => {
    fc.assert(
      fc.property(ascending, fc.double({ min: -2000, max: 2000, noNaN: true }), (limits, value) => {
        const answer = outcomeOfReading(cutAt(...limits.map((each) => `${each} K`)), value, NOTHING_KNOWN);
        // Counted the other way: as many limits lie at or below the reading as bands lie below its own.
        const passed = limits.filter((each) => each <= value).length;
        expect(answer).toEqual({
          is: 'outcome',
          outcome: passed === 0 ? 'below' : `band ${passed}`,
          general: [],
        });
      }),
    );
  });

  test('with a general range, every figure in it gives one of the answers left open, and only those', () => {
    const offsets = fc
      .uniqueArray(fc.integer({ min: -40, max: 40 }), { minLength: 1, maxLength: 4 })
      .map((values) => values.sort((a, b) => a - b));
    fc.assert(
      fc.property(
        offsets,
        fc.integer({ min: 0, max: 160 }),
        fc.integer({ min: 82, max: 92 }),
        (cuts, celsius, stamp) => {
          const scale = cutAt(
            ...cuts.map((cut) => `{thermostat.opens} ${cut < 0 ? '-' : '+'} ${Math.abs(cut)} K`),
          );
          const open = outcomeOfReading(scale, kelvin(celsius), NOTHING_KNOWN);
          const known: FigureLookup = figureLookup(
            { 'thermostat.opens': { is: parsed(`${stamp} °C`, 'temperature') } },
            {},
          );
          const answer = outcomeOfReading(scale, kelvin(celsius), known);
          if (answer.is !== 'outcome') throw new Error('a known figure decides');
          const left =
            open.is === 'needs figures' ? open.between : open.is === 'outcome' ? [open.outcome] : [];
          expect(left).toContain(answer.outcome);
        },
      ),
    );
  });

  test('no text makes the reader of limits break, and what it reads it reads again', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readLimit(text);
        if (read.ok) expect(readLimit(read.limit.text)).toEqual(read);
      }),
    );
  });
});
