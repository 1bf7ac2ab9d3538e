/** Reading the fields: units, habits, and the words when something is wrong. */
import { describe, expect, test } from 'vitest';
import { benchTestCalculator } from '../../src/calculators/bench-test.ts';
import { boilMarginCalculator } from '../../src/calculators/boil-margin.ts';
import { calculatorOf } from '../../src/calculators/catalogue.ts';
import { estimate } from '../../src/calculators/estimate.ts';
import { fillAccount } from '../../src/calculators/fill-account.ts';
import { showerFor } from '../../src/calculators/reader-units.ts';
import { sayOutOfRange } from '../../src/calculators/say-out-of-range.ts';
import { torque } from '../../src/calculators/torque.ts';
import { voltageDropCalculator } from '../../src/calculators/voltage-drop.ts';
import { isExample, withoutExamples, workOut } from '../../src/calculators/work-out.ts';
import { type Habit, METRIC, US } from '../../src/model/habit.ts';
import { readersUnit } from '../../src/model/readers-unit.ts';
import { OutOfRange } from '../../src/physics/out-of-range.ts';
import { answerOf, faultsOf } from './ask.ts';

const message = (typed: Record<string, string>, habit = METRIC) =>
  faultsOf(fillAccount, typed, habit)[0]?.message;

describe('a number in a field', () => {
  test('without a unit is in the reader’s own', () => {
    const sentence = (cap: string, habit = METRIC) =>
      answerOf(boilMarginCalculator, { cap, now: '100 °C' }, habit).sentence;
    expect(sentence('15', US)).toBe(sentence('15 psi', US));
    expect(sentence('1.2')).toBe(sentence('1.2 bar'));
    expect(sentence('15', US)).not.toBe(sentence('1.5 bar', US));
  });

  test('with its own unit is understood whatever the habit', () => {
    for (const habit of [METRIC, US]) {
      const lines = ['15 psi', '103.42 kPa', '1.0342 bar'].map(
        (cap) => answerOf(boilMarginCalculator, { cap, now: '195F', strength: '50%' }, habit).sentence,
      );
      expect(new Set(lines).size).toBe(1);
    }
    for (const capacity of ['4.6l', '4,6'])
      expect(answerOf(fillAccount, { capacity }).sentence).toContain('1.7');
    expect(answerOf(torque, { torque: '7.4 lb ft' }).tone).toBe('fine');
  });

  test('takes altitudes in feet where lengths are in inches, and sizes in inches', () => {
    expect(readersUnit('m', US).symbol).toBe('ft');
    expect(readersUnit('mm', US).symbol).toBe('in');
    expect(showerFor(US).quantity(2500, 'm', 0)).toBe('8202\u00a0ft');
    expect(showerFor(US).difference(10)).toBe('18\u00a0°F');
    expect(showerFor(METRIC).difference(10)).toBe('10\u00a0K');
  });
});

describe('what cannot be read', () => {
  test.each([
    ['4,600', '"4,600" may be read in two ways. Write 4.600 or 4600, whichever is meant.'],
    ['much', '"much" is not a number with a unit. Write a number with its unit, such as 4.6 l.'],
    [
      '4 pails',
      '"pails" is not a unit known here. Write one of l, ml, cc, cl, dl, US qt, fl oz, US pt, US gal, imp gal.',
    ],
    [
      '4 bar',
      '"4 bar" is a pressure, and this place takes a volume. Write one of l, ml, cc, cl, dl, US qt, fl oz, US pt, US gal, imp gal, such as 4.6 l.',
    ],
    ['200', '200 l cannot be meant here. Write 1 to 60 l.'],
    ['0.999', '0.999 l cannot be meant here. Write 1 to 60 l.'],
    ['9'.repeat(20), 'So large a number cannot be meant here. Write 1 to 60 l.'],
    ['9'.repeat(400), 'So large a number cannot be meant. Write a number with its unit, such as 4.6 l.'],
    ['4 to 5', 'One number is wanted here, not a range. Write 4 l, then 5 l, and see both answers.'],
  ])('%s', (capacity, said) => {
    expect(message({ capacity })).toBe(said);
  });

  test('says of a reading that is missing what would do', () => {
    expect(faultsOf(fillAccount, { drained: '' })[0]?.message).toBe('Write a number, such as 4.0 l.');
  });

  test('is said in the reader’s units', () => {
    expect(message({ capacity: '200' }, US)).toBe('200 US qt cannot be meant here. Write 1 to 63 US qt.');
  });

  test('is said with an example that belongs in the field, in the reader’s units', () => {
    const example = (habit: Habit = METRIC) =>
      faultsOf(boilMarginCalculator, { altitude: 'high' }, habit)[0]?.message.replaceAll('\u00a0', ' ');
    expect(example()).toContain('such as 0 m.');
    expect(example(US)).toContain('such as 0 ft.');
  });

  test('is said at every field at once, with nothing lost', () => {
    expect(faultsOf(fillAccount, { capacity: '4,600', drained: 'x' }).map(({ name }) => name)).toEqual([
      'capacity',
      'drained',
    ]);
  });

  test('of a choice and of a word', () => {
    expect(message({ level: 'gone' })).toBe(
      'Choose one of: stands at the mark and takes no more, still goes down.',
    );
    expect(faultsOf(estimate, { currency: 'euro' })[0]?.message).toBe(
      'Write three letters, such as EUR, or leave it empty.',
    );
  });
});

describe('a figure outside its formula', () => {
  test('is said in the reader’s units, with what would do', () => {
    const fault = new OutOfRange('coolant temperature', 393.15, [273.15, 373.15], 'K');
    expect(sayOutOfRange(fault, showerFor(METRIC))).toBe(
      'Coolant temperature comes to 120\u00a0°C and can only be worked with from 0\u00a0°C to 100\u00a0°C. No figure is given outside that.',
    );
    expect(sayOutOfRange(fault, showerFor(US))).toContain('248\u00a0°F');
    const open = new OutOfRange('air left at the end', Number.NaN, [1e-5, Infinity], 'm3');
    expect(sayOutOfRange(open, showerFor(METRIC))).toBe(
      'Air left at the end can only be worked with from 0.01\u00a0l upwards. No figure is given outside that.',
    );
  });
});

describe('an answer is an example', () => {
  const by = (person: string[], vehicle: string[] = []) => ({
    person: new Set(person),
    vehicle: new Set(vehicle),
  });

  test('until somebody has typed a figure', () => {
    expect(isExample(fillAccount, {}, by([]))).toBe(true);
    expect(isExample(fillAccount, {}, by(['level']))).toBe(true);
    expect(isExample(fillAccount, {}, by(['refilled']))).toBe(false);
  });

  test('and from then on a reading that is not typed was not taken', () => {
    const figures = new Set(['capacity', 'drained', 'refilled']);
    const typed = { capacity: '4.6 l', drained: '4.0 l', refilled: '3.9 l' };
    expect(withoutExamples(fillAccount, typed, by([]))).toEqual(typed);
    expect(withoutExamples(fillAccount, typed, by(['refilled']))).toMatchObject({
      capacity: '',
      drained: '',
    });
    expect(withoutExamples(fillAccount, typed, by(['refilled'], ['drained']))).toMatchObject({
      drained: '4.0 l',
      refilled: '3.9 l',
    });
    expect(withoutExamples(fillAccount, typed, { person: figures, vehicle: new Set() })).toEqual(typed);
    // A choice alone is no figure of this car.
    expect(withoutExamples(fillAccount, typed, by(['level']))).toEqual(typed);
  });

  test('still when the vehicle gives what it can, and only a reading on the car would tell', () => {
    expect(isExample(fillAccount, {}, by([], ['capacity', 'drained']))).toBe(true);
    expect(isExample(boilMarginCalculator, {}, by([], ['cap', 'strength']))).toBe(true);
  });

  test('no longer when the vehicle gives all that is read', () => {
    expect(isExample(torque, {}, by([], ['torque', 'thread', 'class', 'into']))).toBe(false);
    expect(isExample(benchTestCalculator, {}, by([], ['stamp']))).toBe(false);
  });

  test('by what is asked: a cable needs no reading', () => {
    expect(isExample(voltageDropCalculator, { measured: 'cable' }, by([], ['current']))).toBe(false);
    expect(isExample(voltageDropCalculator, { measured: 'joint' }, by([], ['current']))).toBe(true);
  });
});

test('a choice with blanks around it is the same choice, for what it makes asked too', () => {
  const sensor = calculatorOf('sensor');
  expect(workOut(sensor, { curve: ' b' })).toEqual(workOut(sensor, { curve: 'b' }));
});
