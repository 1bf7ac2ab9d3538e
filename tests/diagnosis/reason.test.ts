import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { contradiction } from '../../src/diagnosis/contradiction.ts';
import type { Model, Situation } from '../../src/diagnosis/model.ts';
import { USUAL_CHANGE_OVER } from '../../src/diagnosis/model.ts';
import { nextStep, splitOf } from '../../src/diagnosis/next-step.ts';
import {
  describeContradiction,
  inMinutes,
  reasonFor,
  shareText,
  type Titles,
} from '../../src/diagnosis/reason.ts';

// Invented shares and minutes, for the wording only.
const model: Model = {
  causes: [
    { id: 'thermostat', weight: 9, proveMinutes: 60 },
    { id: 'sensor', weight: 3, proveMinutes: 45 },
  ],
  somethingElse: 0.06,
  passOnMinutes: 200,
  tests: [
    {
      id: 'hose',
      minutes: 6,
      outcomes: ['early', 'late'],
      likelihood: [
        [0.92, 0.08, 0.5],
        [0.08, 0.92, 0.5],
      ],
    },
    {
      id: 'compare',
      minutes: 5,
      engine: 'warm',
      outcomes: ['agree', 'differ'],
      likelihood: [
        [0.92, 0.02, 0.5],
        [0.08, 0.98, 0.5],
      ],
    },
  ],
  changeOver: USUAL_CHANGE_OVER,
};

const titles: Titles = {
  cause: (id) => ({ thermostat: 'thermostat stuck open', sensor: 'sensor reads low' })[id] ?? id,
  outcome: (_, id) =>
    ({
      early: 'the hose warms early',
      late: 'the hose stays cold',
      agree: 'the readings agree',
      differ: 'the readings differ',
    })[id] ?? id,
  question: (test) =>
    ({ hose: 'When does the hose warm?', compare: 'How do the readings compare?' })[test] ?? test,
};

function sentenceFor(situation: Situation, pick: (kind: string, id: string) => boolean = () => true): string {
  const compiled = compile(model);
  const step = nextStep(compiled, situation);
  const chosen = step.considered.find(({ action }) =>
    pick(action.kind, action.kind === 'test' ? action.test : action.kind === 'prove' ? action.cause : ''),
  );
  if (!chosen) throw new Error('Nothing chosen.');
  const split = chosen.action.kind === 'test' ? splitOf(compiled, situation, chosen.action.test) : undefined;
  return reasonFor(chosen, step, titles, split).sentence;
}

describe('reasons a technician accepts', () => {
  test('a test says what it splits, what is likely seen, and its minutes', () => {
    expect(sentenceFor({ evidence: [] }, (_, id) => id === 'hose')).toBe(
      'Splits thermostat stuck open from sensor reads low; 70 % of these cars: the hose warms early; 6 minutes.',
    );
  });

  test('getting the car ready is told apart', () => {
    expect(sentenceFor({ evidence: [] }, (_, id) => id === 'compare')).toMatch(
      /; 20 minutes, 15 of them getting the car ready\.$/,
    );
  });

  test('a proof says how many of these cars it fits', () => {
    const warmEarly = { evidence: [{ test: 'hose', outcome: 'early' }] };
    expect(sentenceFor(warmEarly, (_, id) => id === 'thermostat')).toBe(
      'Fits 93 % of these cars; settles it either way; 60 minutes.',
    );
  });

  test('passing on says why', () => {
    expect(
      sentenceFor({ evidence: [], ruledOut: ['thermostat', 'sensor'] }, (kind) => kind === 'pass-on'),
    ).toBe('No likely cause is left that is quicker to prove than passing the car on; 200 minutes.');
  });

  test('findings that fight are quoted with what to do', () => {
    const sure: Model = {
      ...model,
      tests: model.tests.map((one) => ({
        ...one,
        likelihood: [
          [0.98, 0.02, 0.5],
          [0.02, 0.98, 0.5],
        ],
      })),
    };
    const found = contradiction(compile(sure), {
      evidence: [
        { test: 'hose', outcome: 'early' },
        { test: 'compare', outcome: 'differ' },
      ],
    });
    expect(found && describeContradiction(found, titles)).toBe(
      'How do the readings compare? “the readings differ”. When does the hose warm? “the hose warms early”. These two do not go together. Even thermostat stuck open, the best fit, shows this about 40 times less often than its usual picture. Check these two again, or think of two faults at once or of something not listed.',
    );
  });

  test('shares are whole per cent, and neither nothing nor all unless they are', () => {
    expect([0.004, 0.12, 0.455, 0.996, 1].map(shareText)).toEqual([
      'under 1 %',
      '12 %',
      '46 %',
      'over 99 %',
      '100 %',
    ]);
  });

  test('minutes are whole, and something is never nothing', () => {
    expect([0, 0.2, 1.4, 6.5].map(inMinutes)).toEqual(['0 minutes', '1 minute', '1 minute', '7 minutes']);
  });
});
