import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asMostAre,
  contradictionIn,
  type KnownLayout,
  LAYOUT,
  LAYOUT_FEATURES,
  LAYOUT_LABELS,
  type Layout,
  LEAVABLE_FEATURES,
  layoutAllows,
  layoutIsPossible,
  withImplied,
} from '../../src/model/layout.ts';
import { layoutQuestion } from '../../src/model/layout-questions.ts';
import { layoutSchema } from '../../src/model/layout-schema.ts';
import { layoutWords } from '../../src/site/text/layout-words.ts';

const STATED: Layout = {
  power: 'combustion',
  thermostat: 'outlet side',
  'thermostat-kind': 'plain wax',
  heater: 'always flowing',
  reservoir: 'header tank',
  fan: 'electric, one stage',
  'fan-switched-by': 'engine controller',
  pump: 'timing belt',
  radiator: 'cross-flow',
  turbo: 'none',
  'egr-cooler': 'none',
  'oil-cooler': 'none',
  'transmission-cooler': 'none',
};

const anyKnown = fc
  .record(
    Object.fromEntries(
      LAYOUT_FEATURES.map((feature) => [
        feature,
        fc.option(fc.constantFrom(...LAYOUT[feature]), { nil: undefined }),
      ]),
    ),
  )
  .map((known): KnownLayout => known);

describe('every feature of a layout', () => {
  test.each([...LAYOUT_FEATURES])('%s is asked, and each of its values is told and has words', (feature) => {
    const { asks, tell } = layoutQuestion(feature);
    expect(asks).toMatch(/\?$/);
    expect(LAYOUT_LABELS[feature]).not.toBe('');
    // Nothing but the drive is known without looking.
    const untold = LAYOUT[feature].filter((value) => feature !== 'power' && !tell[value]);
    expect(untold).toEqual([]);
    expect(Object.keys(tell).filter((value) => !LAYOUT[feature].some((each) => each === value))).toEqual([]);
    for (const value of LAYOUT[feature]) {
      const words = layoutWords({ [feature]: [value] });
      expect(words).not.toBe('');
      expect(words).not.toContain('undefined');
    }
  });
});

describe('what follows from a layout', () => {
  test('a valve block is moved by a motor, a clutch is switched by nothing', () => {
    expect(withImplied<KnownLayout>({ thermostat: 'valve block' })['thermostat-kind']).toBe('electric valve');
    expect(withImplied({ fan: 'viscous clutch' })).toMatchObject({
      'fan-switched-by': 'none',
      'fan-electronics': 'none',
    });
    expect(withImplied({})).toEqual({});
  });

  test('is added to a record that leaves it out, and nothing else is', () => {
    const read = layoutSchema.parse(STATED);
    expect(read['fan-electronics']).toBe('none');
    expect(read['clutch-control']).toBe('none');
    expect(read['rear-heater']).toBeUndefined();
    expect(read['gas-vaporiser']).toBeUndefined();
  });

  test('two features that no car has together are named', () => {
    expect(contradictionIn({ fan: 'hydraulic', 'fan-switched-by': 'switch in the radiator' })).toEqual([
      'fan',
      'fan-switched-by',
    ]);
    expect(contradictionIn({ 'charge-air': 'water-cooled', 'low-temperature-loop': 'none' })).toEqual([
      'charge-air',
      'low-temperature-loop',
    ]);
    expect(contradictionIn({ reservoir: 'header tank', 'cap-place': 'on the engine' })).toBeUndefined();
  });

  test('keeps what is stated and contradicts nothing of a possible layout', () => {
    fc.assert(
      fc.property(anyKnown, (known) => {
        const implied = withImplied(known);
        for (const feature of LAYOUT_FEATURES)
          if (known[feature] !== undefined) expect(implied[feature]).toBe(known[feature]);
        expect(withImplied(implied)).toEqual(implied);
      }),
    );
  });
});

describe('a layout as most cars have it', () => {
  test('leaves nothing open and can be', () => {
    const whole = asMostAre(STATED);
    expect(LAYOUT_FEATURES.filter((feature) => whole[feature] === undefined)).toEqual([]);
    expect(layoutIsPossible(whole)).toBe(true);
    expect(whole).toMatchObject(STATED);
  });

  test('keeps every leavable feature that is stated', () => {
    const anyStated = fc.record(
      Object.fromEntries(LEAVABLE_FEATURES.map((feature) => [feature, fc.constantFrom(...LAYOUT[feature])])),
    );
    fc.assert(
      fc.property(anyStated, (stated) => {
        expect(asMostAre({ ...STATED, ...stated })).toMatchObject(stated);
      }),
    );
  });
});

test('what is not known rules nothing out', () => {
  for (const feature of LAYOUT_FEATURES)
    for (const value of LAYOUT[feature]) expect(layoutAllows({ [feature]: [value] }, {})).toBe(true);
});
