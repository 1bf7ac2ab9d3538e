/** One case as it is played: the same readings again, the minutes, what a naming is worth, and the other ways through. */
import { expect, test } from 'vitest';
import type { Model } from '../../../src/diagnosis/model.ts';
import { Round, sum } from '../../../src/site/practice/page/round.ts';
import type { AnswerOf, PracticeCase } from '../../../src/site/practice/practice-data.ts';
import { packModel } from '../../../src/site/walk/packed-model.ts';
import { Diagnoser } from '../../../src/site/walk/page/diagnose.ts';
import { Planner } from '../../../src/site/walk/page/planner.ts';
import { WalkWords } from '../../../src/site/walk/page/walk-words.ts';

const model: Model = {
  causes: [
    { id: 'stuck', weight: 5, proveMinutes: 40, proofs: [{ test: 'bench', outcome: 'opens-early' }] },
    { id: 'sensor', weight: 3, proveMinutes: 10, proofs: [{ test: 'ohms', outcome: 'off' }] },
    { id: 'fan', weight: 1, proveMinutes: 5, proofs: [{ test: 'look', outcome: 'runs' }] },
  ],
  somethingElse: 0.02,
  passOnMinutes: 200,
  changeOver: { coldToWarm: 15, warmToCold: 90, toRoad: 10, toLift: 8 },
  tests: [
    {
      id: 'bench',
      minutes: 40,
      outcomes: ['right', 'opens-early'],
      likelihood: [
        [0.001, 0.999, 0.999, 0.9],
        [0.999, 0.001, 0.001, 0.1],
      ],
    },
    {
      id: 'ohms',
      minutes: 10,
      outcomes: ['right', 'off'],
      likelihood: [
        [0.999, 0.001, 0.999, 0.9],
        [0.001, 0.999, 0.001, 0.1],
      ],
    },
    {
      id: 'look',
      minutes: 5,
      engine: 'warm',
      outcomes: ['right', 'runs'],
      likelihood: [
        [0.999, 0.999, 0.001, 0.9],
        [0.001, 0.001, 0.999, 0.1],
      ],
    },
    {
      id: 'hose',
      minutes: 6,
      engine: 'cold',
      leaves: 'warm',
      outcomes: ['late', 'early'],
      likelihood: [
        [0.05, 0.95, 0.9, 0.5],
        [0.95, 0.05, 0.1, 0.5],
      ],
    },
  ],
};
const diagnoser = new Diagnoser({
  symptom: 'low',
  stamp: 'x',
  model: packModel(model),
  tree: {
    start: 'a',
    steps: {
      a: { kind: 'test', test: 'ohms', on: { right: 'b', off: 'end' } },
      b: { kind: 'test', test: 'hose', on: { late: 'end', early: 'end' } },
      end: { kind: 'end', causes: ['stuck', 'sensor', 'fan'] },
    },
  },
  causeLayouts: { fan: { fan: ['viscous clutch'] } },
  testLayouts: { look: { fan: ['viscous clutch'] } },
  layoutShares: {},
  tools: { hose: ['scan-tool'] },
  causes: { stuck: 'Stuck open', sensor: 'Sensor low', fan: 'Fan never stops' },
});
const car: PracticeCase = {
  code: 'aaaaaa',
  vehicle: 'v',
  diesel: false,
  said: 'It runs cold.',
  faults: ['stuck'],
  mechanism: 'The valve gapes.',
  shows: { bench: ['opens-early', '71.26 °C', 'it gapes'], hose: ['early', '61.4 °C', 'flows at once'] },
  rechecks: {},
};
const sound = { bench: 'right', ohms: 'right', look: 'right', hose: 'late' };
const electric = { fan: 'electric, one stage' };
const round = (simulated: AnswerOf = () => undefined, layout: Record<string, string> = electric) =>
  new Round(diagnoser, layout, car, sound, simulated);
const planner = new Planner(
  diagnoser,
  new WalkWords(
    diagnoser.data.causes,
    { layout: {}, outcomes: {}, questions: {}, tests: {} },
    (text) => text,
  ),
);

test('a test repeated reads the same, however the simulated car draws', () => {
  let drawn = 0;
  const played = round(() => ({ outcome: 'right', reading: `${drawn++} Ω` }));
  expect(played.seen('ohms')).toEqual({ outcome: 'right', reading: '0 Ω' });
  expect(played.seen('ohms')).toEqual({ outcome: 'right', reading: '0 Ω' });
  expect(drawn).toBe(1);
});

test('the case comes first, then the simulated car, then a sound one', () => {
  const played = round((asked) => (asked === 'look' ? undefined : { outcome: 'off', reading: '3 kΩ' }));
  expect(played.seen('hose')).toEqual({ outcome: 'early', reading: '61 °C' });
  expect(played.seen('ohms')).toEqual({ outcome: 'off', reading: '3 kΩ' });
  expect(played.seen('look')).toEqual({ outcome: 'right', reading: '' });
  // An outcome that the record does not have is no answer.
  expect(round(() => ({ outcome: 'of-old', reading: '' })).seen('ohms')?.outcome).toBe('right');
});

test('what the vehicle does not have is neither offered nor to be named', () => {
  expect(round().offered).toEqual(['bench', 'ohms', 'hose']);
  expect(round().causes).toEqual(['stuck', 'sensor']);
  expect(round(undefined, { fan: 'viscous clutch' }).offered).toContain('look');
});

test('minutes have getting ready in them: warming up once, cooling down for a cold test', () => {
  const played = round(undefined, { fan: 'viscous clutch' });
  expect(played.minutes(['look', 'ohms', 'look'])).toEqual([20, 10, 5]);
  expect(played.minutes(['hose', 'look'])).toEqual([6, 5]);
  expect(played.minutes(['look', 'hose'])).toEqual([20, 96]);
  expect(played.minutesAfter(['look'], 'hose')).toBe(96);
  // The same test again costs its minutes again.
  expect(sum(played.minutes(['ohms', 'ohms']))).toBe(20);
});

test('a name that was guessed is right, and said to be shown by nothing', () => {
  expect(round().judge([], 'stuck')).toMatchObject({ right: true, shown: 'by no test' });
  expect(round().judge(['bench'], 'stuck')).toMatchObject({ right: true, shown: 'by a test' });
  expect(round().judge(['bench'], 'sensor')).toMatchObject({ right: false, shown: 'by no test' });
  expect(round().judge(['bench'], 'stuck').share).toBeGreaterThan(0.98);
});

test('two faults: either name is right', () => {
  const both = new Round(
    diagnoser,
    electric,
    { ...car, faults: ['stuck', 'sensor'] },
    sound,
    () => undefined,
  );
  expect([
    both.judge([], 'stuck').right,
    both.judge([], 'sensor').right,
    both.judge([], 'fan').right,
  ]).toEqual([true, true, false]);
});

test('planner and tree come to the fault of the car by its own answers', () => {
  const tree = round().otherWay('tree');
  // With the sensor cleared the valve is so likely that its proof comes before the tree's next question.
  expect(tree).toEqual({ tests: ['ohms', 'bench'], minutes: 50, cause: 'stuck' });
  const best = round().otherWay('planner');
  expect(best.cause).toBe('stuck');
  expect(best.minutes).toBeLessThanOrEqual(tree.minutes);
});

test('what a master would have done follows what was seen', () => {
  const played = round();
  expect(played.belief([])[0]?.cause).toBe('stuck');
  expect(played.advice([], planner).why).toMatch(/minute/);
  const afterHose = played.advice(['hose'], planner);
  expect(['ohms', 'bench']).toContain(afterHose.test);
  expect(played.advice(['ohms', 'hose', 'bench'], planner)).toEqual({
    test: undefined,
    why: 'It is proven: name it.',
  });
});
