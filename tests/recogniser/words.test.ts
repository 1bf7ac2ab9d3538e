import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesIn } from '../../src/recogniser/codes.ts';
import { mender } from '../../src/recogniser/mend.ts';
import { stemOf } from '../../src/recogniser/stem.ts';
import { clausesOf } from '../../src/recogniser/words.ts';

describe('a sentence parts into clauses', () => {
  test.each([
    ['It drops, but comes back when I stop.', ['it drops', 'but comes back', 'when i stop']],
    ['won’t go down - at 1.4 bar', ['wont go down', 'at 1', '4 bar']],
    ['P 0128 and no heat', ['p0128', 'and no heat']],
    ['...', []],
  ])('%s', (text, clauses) => {
    expect(clausesOf(text).map((clause) => clause.map(({ word }) => word).join(' '))).toEqual(clauses);
  });

  test('what was typed stands in them, in its order', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[A-Za-z]{1,9}$/), { maxLength: 12 }), (words) => {
        const said = clausesOf(words.join(' ')).flatMap((clause) => clause.map((word) => word.said));
        // Letters that make a code with what follows are joined to it; none of these has a figure.
        expect(said).toEqual(words);
      }),
    );
  });
});

test.each([
  ['drop', 'drops', 'dropped', 'dropping'],
  ['overheat', 'overheats', 'overheated', 'overheating'],
  ['hose', 'hoses'],
  ['leak', 'leaks', 'leaked', 'leaking'],
  ['bubble', 'bubbles', 'bubbled', 'bubbling'],
  ['fill', 'fills', 'filled', 'filling'],
  ['hiss', 'hisses', 'hissed', 'hissing'],
  ['battery', 'batteries'],
  ['squeal', 'squeals', 'squealing'],
  ['carry', 'carries', 'carried', 'carrying'],
  ['slow', 'slowly'],
])('%s has one stem in all its forms', (...forms) => {
  expect(new Set(forms.map(stemOf)).size).toBe(1);
});

test('words that only look alike keep their stems', () => {
  for (const [a, b] of [
    ['gas', 'gasket'],
    ['bus', 'but'],
    ['thing', 'the'],
    ['spring', 'spry'],
    ['hot', 'hose'],
  ] as const)
    expect(stemOf(a)).not.toBe(stemOf(b));
});

describe('a misspelt word', () => {
  const known = [
    'gauge',
    'thermostat',
    'motorway',
    'coolant',
    'leak',
    'hold',
    'radiator',
    'temperature',
    'heater',
  ];
  const mend = mender(known);
  test.each([
    ['guage', 'gauge'],
    ['gage', 'gauge'],
    ['themostat', 'thermostat'],
    ['moterway', 'motorway'],
    ['coolent', 'coolant'],
    ['leek', 'leak'],
    ['raditor', 'radiator'],
    ['temprature', 'temperature'],
    ['heeter', 'heater'],
  ])('%s is meant to be %s', (typed, meant) => {
    expect(mend(typed)).toBe(meant);
  });

  test('short words, codes and figures are never guessed at', () => {
    for (const word of ['hit', 'p0128', '100km', 'xyzzy']) expect(mend(word)).toBeUndefined();
  });

  test('one slip anywhere is mended', () => {
    const long = known.filter((word) => word.length > 5);
    fc.assert(
      fc.property(
        fc.constantFrom(...long),
        fc.nat(),
        fc.constantFrom('out', 'double', 'swap'),
        (word, n, slip) => {
          const at = n % (word.length - 1);
          const [before, here, next, after] = [
            word.slice(0, at),
            word.charAt(at),
            word.charAt(at + 1),
            word.slice(at + 2),
          ];
          const typed = {
            out: before + next + after,
            double: before + here + here + next + after,
            swap: before + next + here + after,
          };
          expect(mend(typed[slip as keyof typeof typed])).toBe(word);
        },
      ),
    );
  });
});

test('trouble codes however they are typed', () => {
  const known = new Set(['p0128', 'p0480']);
  expect(codesIn('P0128', known)).toEqual(['p0128']);
  expect(codesIn('code p 0128 and P-0480', known)).toEqual(['p0128', 'p0480']);
  expect(codesIn('P01 28', known)).toEqual(['p0128']);
  expect(codesIn('p128', known)).toEqual(['p0128']);
  expect(codesIn('0128', known)).toEqual(['p0128']);
  expect(codesIn('P1234', known)).toEqual(['p1234']);
  // A year or a speed of the engine is no code.
  expect(codesIn('built 2012, 3000 revs', known)).toEqual([]);
});
