/** What a calculator says to readings off the usual path: an engine still cold, a probe in the air, a slip in the unit. */
import { describe, expect, test } from 'vitest';
import { boilMarginCalculator } from '../../src/calculators/boil-margin.ts';
import { correctMixtureCalculator } from '../../src/calculators/correct-mixture.ts';
import { fillAccount } from '../../src/calculators/fill-account.ts';
import { heatBalance } from '../../src/calculators/heat-balance.ts';
import { level } from '../../src/calculators/level.ts';
import { mixture } from '../../src/calculators/mixture.ts';
import { pressureDecay } from '../../src/calculators/pressure-decay.ts';
import { voltageDropCalculator } from '../../src/calculators/voltage-drop.ts';
import { US } from '../../src/model/habit.ts';
import { answerOf, faultsOf } from './ask.ts';

describe('heat balance', () => {
  test('judges no cold engine: 30 in and 28 out is no fault of the air side', () => {
    expect(faultsOf(heatBalance, { hot: '30', cold: '28' })).toEqual([
      {
        name: 'hot',
        message:
          'Warm it up first: at 30 °C going in nothing can be judged, it takes 70 °C. If this hose stays so cool on a warm engine, no flow gets to it.',
      },
    ]);
    expect(answerOf(heatBalance, { hot: '70', cold: '60' }).tone).toBe('fine');
  });
});

describe('voltage drop', () => {
  test('passes nothing on hardly any current: 0.30 V at 0.5 A is 0.6 Ω, and no fan runs through that', () => {
    const { sentence, tone } = answerOf(voltageDropCalculator, {
      drop: '0.30',
      current: '0.5',
      place: 'whole circuit',
    });
    expect(tone).toBe('look');
    expect(sentence).toMatch(
      /^Proves nothing yet: hardly any current flows, 0\.5 A\. .* would lose 6\.0 V at 10 A\. Repeat it with the consumer working/,
    );
  });

  test('leaves the earth of a module to its own limit, where little current is all there is', () => {
    const little = { drop: '0.04', current: '0.3', place: 'module earth' };
    expect(answerOf(voltageDropCalculator, little).sentence).toContain('Within the limit');
  });

  test('calls 13 V an open circuit, not a joint to look for, and the current beside it a misreading', () => {
    const open = answerOf(voltageDropCalculator, { drop: '13', current: '25' }).sentence;
    expect(open).toMatch(/^Open between the probes: 13\.00 V is nearly all the battery has/);
    expect(open).toContain('25 A cannot flow through that');
    expect(answerOf(voltageDropCalculator, { drop: '13', current: '0.1' }).sentence).not.toContain(
      'cannot flow',
    );
  });

  test.each([
    ['8 A', 'look', 'more than the 8 A it should draw. The motor is stiff'],
    ['17 A', 'fine', 'and 17 A is what it should draw. Fuse and motor do their work'],
    ['30 A', 'look', 'less than the 30 A it should draw. Look at its voltage while it runs'],
  ])('holds the current of a fuse against the %s that should flow', (draws, tone, said) => {
    const answer = answerOf(voltageDropCalculator, { measured: 'fuse', 'fuse-drop': '60 mV', draws });
    expect(answer.tone).toBe(tone);
    expect(answer.sentence).toContain(said);
  });

  test('holds it against the fuse where nothing else is known', () => {
    const fuse = (drop: string) =>
      answerOf(voltageDropCalculator, { measured: 'fuse', fuse: '20', 'fuse-drop': drop }).sentence;
    expect(fuse('30 mV')).toContain(
      'well within the 20 A of the fuse. Hold it against what the consumer should draw',
    );
    expect(fuse('60 mV')).toContain('near the 20 A of the fuse');
    expect(fuse('100 mV')).toContain('more than the 20 A the fuse is made for');
  });

  test('promises no drop that a battery has not got', () => {
    const absurd = { measured: 'cable', length: '50', area: '0.5', current: '100' };
    expect(answerOf(voltageDropCalculator, absurd).sentence).toContain('it would lose all the battery has');
  });
});

describe('correct the mixture', () => {
  test('does not drain six litres of six: takes concentrate where ready mix would need them', () => {
    const { sentence } = answerOf(correctMixtureCalculator, { is: '30', wanted: '50', adding: 'ready' });
    expect(sentence).toBe(
      'Not in one draining: 6.0 l would have to come out for ready mix of 50 %, and 4.0 l comes. Take concentrate: drain 1.7 l cold, measured, and fill 1.7 l of it.',
    );
  });

  test('says how far one round comes where nothing does it in one', () => {
    expect(answerOf(correctMixtureCalculator, { is: '60', wanted: '10' }).sentence).toContain(
      'Drain that, fill as much water, run it warm and measure again: it comes to about 20 %',
    );
    expect(answerOf(correctMixtureCalculator, { is: '0', wanted: '70' }).sentence).toContain(
      'it comes to about 67 %',
    );
  });

  test('does it in one where the drain gives enough', () => {
    const ready = { is: '30', wanted: '50', adding: 'ready', drained: '6.0' };
    expect(answerOf(correctMixtureCalculator, ready).sentence).toContain('Drain 6.0 l');
  });
});

describe('fill account', () => {
  test('compares nothing with nothing', () => {
    expect(faultsOf(fillAccount, { drained: '0', refilled: '0' })[0]?.message).toContain(
      'nothing to compare',
    );
    expect(faultsOf(fillAccount, { drained: '4', refilled: '0' })[0]?.message).toContain(
      'Nothing has gone back',
    );
  });

  test('calls a top-up one', () => {
    expect(answerOf(fillAccount, { drained: '0', refilled: '0.2' }).sentence).toContain('Topped up');
    expect(answerOf(fillAccount, { drained: '0', refilled: '1' }).sentence).toContain('look for the loss');
  });
});

describe('level', () => {
  test('at 0 °C is right at the cold mark, which is drawn for a cold engine', () => {
    const { sentence, tone } = answerOf(level, { now: '0' });
    expect(sentence).toBe('At the cold mark is right now; 6 mm below it is no fault.');
    expect(tone).toBe('fine');
  });

  test('forbids nobody to fill to the mark in deep frost, and calls the low level no loss', () => {
    const { sentence } = answerOf(level, { now: '-35' });
    expect(sentence).toContain('that is no loss');
    expect(sentence).not.toContain('Do not');
  });
});

describe('a cap', () => {
  test.each([boilMarginCalculator, mixture])('of 1.4 psi is asked back about: $id', (calculator) => {
    expect(faultsOf(calculator, { cap: '1.4 psi' }, US)).toEqual([
      {
        name: 'cap',
        message:
          '1.4 psi is less than any cap holds. Look at the unit beside it; for an open system, or a cap that does not hold, write 0.',
      },
    ]);
    for (const cap of ['0', '0.2 bar', '20 psi']) expect(answerOf(calculator, { cap }).sentence).not.toBe('');
  });
});

describe('pressure decay', () => {
  test('is no test without pressure', () => {
    expect(faultsOf(pressureDecay, { start: '0', end: '0' })[0]).toMatchObject({
      name: 'start',
      message: expect.stringContaining('is no test'),
    });
  });

  test('calls a vacuum that is lost a leak', () => {
    const { sentence, tone } = answerOf(pressureDecay, { start: '-0.5', end: '-0.3' });
    expect(sentence).toMatch(/^It lets air in/);
    expect(tone).toBe('stop');
  });
});
