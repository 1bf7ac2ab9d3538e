import { describe, expect, test } from 'vitest';
import { NOT_IT, PROVEN, SKIPPED } from '../../../../src/site/walk/answers.ts';
import {
  allAnswers,
  knownLayout,
  type Obstacles,
  partOnPath,
  replay,
  withVerdicts,
} from '../../../../src/site/walk/page/replay.ts';
import type { WalkTree } from '../../../../src/site/walk/walk-tree.ts';

const tree: WalkTree = {
  start: 'level',
  steps: {
    level: { kind: 'test', test: 'level-cold', on: { full: 'side', low: 'low' } },
    low: {
      kind: 'prove',
      cause: 'coolant-low',
      otherwise: 'side',
      by: { test: 'jug', outcome: 'takes-litres' },
    },
    side: { kind: 'layout', feature: 'thermostat', on: { 'inlet side': 'done', 'outlet side': 'hose' } },
    hose: { kind: 'test', test: 'hose', on: { early: 'done', late: 'level' } },
    done: { kind: 'end', causes: ['thermostat-stuck-open', 'thermostat-opens-early'] },
  },
};
const standing = (answers: [string, string][], layout = {}, obstacles: Obstacles = {}) =>
  replay(tree, new Map(answers), layout, obstacles);

describe('replay', () => {
  test('stands at the start with no answers', () => {
    expect(standing([])).toMatchObject({ trail: [], standing: { kind: 'at', step: 'level' } });
  });

  test('follows answers whatever order they were given in', () => {
    const answers: [string, string][] = [
      ['hose', 'early'],
      ['layout.thermostat', 'outlet side'],
      ['level-cold', 'full'],
    ];
    const { trail, standing: at } = standing(answers);
    expect(trail.map(({ step }) => step)).toEqual(['level', 'side', 'hose']);
    expect(at).toMatchObject({ kind: 'at', step: 'done' });
  });

  test('lets the vehicle answer a question of layout, and says so', () => {
    const { trail, standing: at } = standing([['level-cold', 'full']], { thermostat: 'inlet side' });
    expect(trail[1]).toEqual({
      step: 'side',
      key: 'layout.thermostat',
      value: 'inlet side',
      fromVehicle: true,
    });
    expect(at).toMatchObject({ kind: 'at', step: 'done' });
  });

  test('leaves the drawn path at a skipped test and where a tool is missing', () => {
    expect(standing([['level-cold', SKIPPED]]).standing).toEqual({ kind: 'off-path' });
    expect(standing([], {}, { cannot: (id) => id === 'level-cold' }).standing).toEqual({ kind: 'off-path' });
  });

  test('goes on from a proof that failed and stops at one that did not', () => {
    const low: [string, string] = ['level-cold', 'low'];
    expect(standing([low, ['prove.coolant-low', NOT_IT]]).standing).toMatchObject({
      kind: 'at',
      step: 'side',
    });
    expect(standing([low, ['prove.coolant-low', PROVEN]]).standing).toEqual({
      kind: 'proven',
      cause: 'coolant-low',
    });
  });

  test('does not ask again for a proof whose test was answered elsewhere', () => {
    const low: [string, string] = ['level-cold', 'low'];
    expect(standing([low, ['jug', 'takes-litres']]).standing).toEqual({
      kind: 'proven',
      cause: 'coolant-low',
    });
    expect(standing([low, ['jug', 'full-at-once']]).standing).toMatchObject({ kind: 'at', step: 'side' });
  });

  test('keeps the answer of a proof as it was given, with what it says of the cause', () => {
    const answers: [string, string][] = [
      ['level-cold', 'low'],
      ['jug', 'full-at-once'],
    ];
    const { trail } = standing(answers);
    expect(trail[1]).toEqual({
      step: 'low',
      key: 'jug',
      value: 'full-at-once',
      proves: { cause: 'coolant-low', verdict: NOT_IT },
    });
    expect(withVerdicts(new Map(answers), trail).get('prove.coolant-low')).toBe(NOT_IT);
    expect(standing([answers[0] ?? ['', ''], ['jug', 'takes-litres']]).trail[1]).toMatchObject({
      key: 'jug',
      proves: { verdict: PROVEN },
    });
  });

  test('asks for no proof of a cause that the vehicle cannot have, and ends at none', () => {
    const low: [string, string] = ['level-cold', 'low'];
    const { trail, standing: at } = standing([low], {}, { cannotHave: (id) => id === 'coolant-low' });
    expect(trail.map(({ step }) => step)).toEqual(['level']);
    expect(at).toMatchObject({ kind: 'at', step: 'side' });
    const there: [string, string][] = [
      ['level-cold', 'full'],
      ['layout.thermostat', 'inlet side'],
    ];
    expect(standing(there, {}, { cannotHave: () => true }).standing).toEqual({ kind: 'off-path' });
  });

  test('goes on from a proof that cannot be made now', () => {
    const low: [string, string] = ['level-cold', 'low'];
    for (const key of ['prove.coolant-low', 'jug'])
      expect(standing([low, [key, SKIPPED]]).standing).toMatchObject({ kind: 'at', step: 'side' });
  });

  test('leaves the drawn path when every cause of an end is ruled out', () => {
    const there: [string, string][] = [
      ['level-cold', 'full'],
      ['layout.thermostat', 'inlet side'],
    ];
    const one: [string, string] = ['prove.thermostat-stuck-open', NOT_IT];
    expect(standing([...there, one]).standing).toMatchObject({ kind: 'at', step: 'done' });
    expect(standing([...there, one, ['prove.thermostat-opens-early', NOT_IT]]).standing).toEqual({
      kind: 'off-path',
    });
  });

  test('ends even on a damaged tree that goes round', () => {
    const round: [string, string][] = [
      ['level-cold', 'full'],
      ['layout.thermostat', 'outlet side'],
      ['hose', 'late'],
    ];
    expect(standing(round).standing).toEqual({ kind: 'off-path' });
  });
});

test('what was answered in the walk completes the vehicle’s layout and never overrules it', () => {
  const answers = new Map([
    ['layout.thermostat', 'inlet side'],
    ['layout.heater', 'valve-controlled'],
  ]);
  expect(knownLayout({ thermostat: 'outlet side' }, answers)).toEqual({
    thermostat: 'outlet side',
    heater: 'valve-controlled',
  });
});

test('all answers: those of the drawn path in its order, then those given out of turn', () => {
  const answers: [string, string][] = [
    ['compare', 'agree'],
    ['layout.thermostat', 'outlet side'],
    ['level-cold', 'full'],
  ];
  expect(allAnswers(new Map(answers), standing(answers).trail).map(({ key }) => key)).toEqual([
    'level-cold',
    'layout.thermostat',
    'compare',
  ]);
});

test('the section that is asked: a step, the proof of a cause, none once the path is left', () => {
  expect(partOnPath(standing([]).standing)).toBe('step level');
  expect(partOnPath(standing([['prove.coolant-low', PROVEN]]).standing)).toBe('proof coolant-low');
  expect(partOnPath(standing([['level-cold', SKIPPED]]).standing)).toBeUndefined();
});
