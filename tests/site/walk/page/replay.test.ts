import { describe, expect, test } from 'vitest';
import type { WalkPlace, WalkTree } from '../../../../src/diagnosis/walk.ts';
import { readingKey, SKIPPED } from '../../../../src/site/walk/answers.ts';
import { allAnswers, knownLayout, trailOf } from '../../../../src/site/walk/page/replay.ts';

const tree: WalkTree = {
  start: 'level',
  steps: {
    level: { kind: 'test', test: 'level-cold', on: { full: 'side', low: 'low' } },
    low: { kind: 'prove', cause: 'coolant-low', otherwise: 'side' },
    side: { kind: 'layout', feature: 'thermostat', on: { 'inlet side': 'done', 'outlet side': 'hose' } },
    hose: { kind: 'test', test: 'hose', on: { early: 'done', late: 'level' } },
    done: { kind: 'end', causes: ['thermostat-stuck-open', 'thermostat-opens-early'] },
  },
};

function trail(passed: string[], answers: [string, string][], vehicle = {}) {
  const place: WalkPlace = {
    standing: { kind: 'list' },
    belief: {
      ranked: [],
      found: [],
      proven: undefined,
      missingProof: undefined,
      weights: new Float64Array(),
    },
    end: 'done',
    passed,
  };
  return trailOf(tree, place, new Map(answers), () => ['jug'], vehicle);
}

describe('the answers on the drawn path', () => {
  test('stand in its order, whatever order they were given in', () => {
    const answers: [string, string][] = [
      ['hose', 'early'],
      ['layout.thermostat', 'outlet side'],
      ['level-cold', 'full'],
    ];
    expect(trail(['level', 'side', 'hose'], answers).map(({ key }) => key)).toEqual([
      'level-cold',
      'layout.thermostat',
      'hose',
    ]);
  });

  test('a question of layout that the vehicle answers says so', () => {
    const [, side] = trail(['level', 'side'], [['level-cold', 'full']], { thermostat: 'inlet side' });
    expect(side).toEqual({ step: 'side', key: 'layout.thermostat', value: 'inlet side', fromVehicle: true });
  });

  test('a proof stands with the test or the recheck that answered it', () => {
    expect(trail(['low'], [['jug', 'full-at-once']])).toEqual([
      { step: 'low', key: 'jug', value: 'full-at-once' },
    ]);
    expect(trail(['low'], [['prove.coolant-low', 'not-it']])).toMatchObject([{ key: 'prove.coolant-low' }]);
  });

  test('a step that was passed without an answer is not in it', () => {
    expect(trail(['low', 'side'], [])).toEqual([]);
  });

  test('an answer that two steps ask for stands once', () => {
    expect(trail(['level', 'level'], [['level-cold', 'full']])).toHaveLength(1);
  });
});

describe('all answers', () => {
  test('those out of turn come after, each with its reading', () => {
    const answers = new Map([
      ['hose', 'early'],
      [readingKey('hose'), '61 °C'],
      ['level-cold', 'full'],
    ]);
    const path = trail(['level'], [...answers]);
    expect(allAnswers(answers, path)).toEqual([
      { step: 'level', key: 'level-cold', value: 'full' },
      { step: '', key: 'hose', value: 'early', reading: '61 °C' },
    ]);
  });
});

describe('the layout that is known', () => {
  test('is the vehicle’s, completed by what was answered and not skipped', () => {
    const answers = new Map([
      ['layout.thermostat', 'outlet side'],
      ['layout.pump', SKIPPED],
      ['layout.fan', 'hydraulic'],
    ]);
    expect(knownLayout({ fan: 'viscous clutch' }, answers)).toEqual({
      thermostat: 'outlet side',
      fan: 'viscous clutch',
    });
  });
});
