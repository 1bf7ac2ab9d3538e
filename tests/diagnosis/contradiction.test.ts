import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { contradiction, contradictions } from '../../src/diagnosis/contradiction.ts';
import type { Model } from '../../src/diagnosis/model.ts';
import { modelOf, models, situations, yesNo } from './make-model.ts';

const see = (test: string, outcome = 'yes') => ({ test, outcome });

/** Two causes, each with a reading nearly always seen under it alone; two tests that say little. */
const model = modelOf(
  [1, 1],
  [10, 10],
  60,
  [
    yesNo('points-to-1', 5, [0.98, 0.02, 0.34]),
    yesNo('points-to-2', 5, [0.02, 0.98, 0.34]),
    yesNo('often-1', 5, [0.66, 0.34, 0.5]),
    yesNo('usual', 5, [0.83, 0.83, 0.83]),
  ],
  0.06,
);

describe('every pair of findings', () => {
  test('a conflict stays named whatever else is found, until one of the two changes', () => {
    const compiled = compile(model);
    const two = [see('points-to-1'), see('points-to-2')];
    const more = [...two, see('often-1'), see('usual')];
    const pairsOf = (evidence: typeof two) =>
      contradictions(compiled, { evidence }).map(({ pair }) => pair.map((each) => each.test).sort());
    expect(pairsOf(two)).toEqual([['points-to-1', 'points-to-2']]);
    expect(pairsOf(more)).toContainEqual(['points-to-1', 'points-to-2']);
    expect(pairsOf([see('points-to-1'), see('points-to-2', 'no'), see('often-1')])).toEqual([]);
  });

  test('a pair is named with any other findings beside it', () => {
    fc.assert(
      fc.property(
        models({ causes: 4, tests: 5 }).chain((made) => fc.tuple(fc.constant(made), situations(made, 1))),
        ([made, situation]) => {
          const compiled = compile(made);
          const [one, other] = situation.evidence;
          if (one === undefined || other === undefined) return;
          const alone = contradictions(compiled, { ...situation, evidence: [one, other] });
          const all = contradictions(compiled, situation);
          for (const { pair } of alone) expect(all.map((each) => each.pair)).toContainEqual(pair);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('findings that fight', () => {
  test('two sure signs of different causes are named', () => {
    const found = contradiction(compile(model), {
      evidence: [see('usual'), see('points-to-1'), see('often-1'), see('points-to-2')],
    });
    expect(found?.pair.map((finding) => finding.test).sort()).toEqual(['points-to-1', 'points-to-2']);
    expect(found?.times).toBeGreaterThan(20);
  });

  test('signs of one cause do not fight, nor does a single finding', () => {
    const compiled = compile(model);
    expect(
      contradiction(compiled, { evidence: [see('points-to-1'), see('points-to-2', 'no')] }),
    ).toBeUndefined();
    expect(contradiction(compiled, { evidence: [see('points-to-1')] })).toBeUndefined();
    expect(contradiction(compiled, { evidence: [] })).toBeUndefined();
  });

  test('one mild surprise is no contradiction', () => {
    expect(
      contradiction(compile(model), {
        evidence: [see('points-to-1'), see('points-to-2', 'no'), see('usual', 'no')],
      }),
    ).toBeUndefined();
  });

  test('a reading that is merely rare under every cause speaks for none, and fights with none', () => {
    const rare = modelOf([1, 1], [10, 10], 60, [
      yesNo('points-to-1', 5, [0.98, 0.02, 0.34]),
      yesNo('rare', 5, [0.02, 0.04, 0.04]),
    ]);
    expect(contradiction(compile(rare), { evidence: [see('points-to-1'), see('rare')] })).toBeUndefined();
  });

  test('one sign against a cause that is only common is no fight: no finding speaks for that cause', () => {
    const common = modelOf([100, 1], [10, 10], 60, [
      yesNo('points-to-2', 5, [0.02, 0.98, 0.34]),
      yesNo('often-1', 5, [0.66, 0.34, 0.5]),
    ]);
    expect(
      contradiction(compile(common), { evidence: [see('often-1'), see('points-to-2')] }),
    ).toBeUndefined();
  });

  test('four of eight readings that one car in five shows are within what such cars show', () => {
    const others = ['b', 'c', 'd', 'e', 'f', 'g', 'h'];
    const many = modelOf([1, 1], [10, 10], 60, [
      yesNo('points-to-1', 5, [0.98, 0.02, 0.34]),
      yesNo('a', 5, [0.18, 0.98, 0.5]),
      ...others.map((id) => yesNo(id, 5, [0.18, 0.18, 0.18])),
    ]);
    const evidence = [
      see('points-to-1'),
      see('a'),
      ...others.map((id, at) => see(id, at < 3 ? 'yes' : 'no')),
    ];
    expect(contradiction(compile(many), { evidence })).toBeUndefined();
  });

  test('when no cause can show two findings, those two are named', () => {
    const hard = modelOf([1, 1], [10, 10], 60, [
      yesNo('a', 5, [1, 0, 0]),
      yesNo('middle', 5, [0.5, 0.5, 0.5]),
      yesNo('b', 5, [0, 1, 0]),
    ]);
    expect(contradiction(compile(hard), { evidence: [see('a'), see('middle'), see('b')] })).toEqual({
      best: undefined,
      times: Number.POSITIVE_INFINITY,
      pair: [see('a'), see('b')],
    });
  });

  test('repeats of one reading fight no harder than one of them', () => {
    const repeated: Model = {
      ...model,
      tests: [
        yesNo('points-to-1', 5, [0.98, 0.02, 0.34]),
        ...['x', 'y', 'z'].map((id) => ({ ...yesNo(id, 5, [0.17, 0.83, 0.5]), group: 'same' })),
      ],
    };
    const compiled = compile(repeated);
    expect(contradiction(compiled, { evidence: [see('points-to-1'), see('x')] })).toBeUndefined();
    expect(
      contradiction(compiled, { evidence: [see('points-to-1'), see('x'), see('y'), see('z')] }),
    ).toBeUndefined();
  });

  // A fair judge seldom cries wolf: findings drawn under a true cause, counted over many random models.
  test('findings drawn under one cause are rarely called contradictory', () => {
    let drawn = 0;
    let called = 0;
    fc.assert(
      fc.property(
        models({ causes: 5, tests: 6 }),
        // Even draws: the usual ones lean to the edges, where the rare outcomes are.
        fc.noBias(
          fc.array(
            fc.integer({ min: 0, max: 99_999 }).map((draw) => draw / 100_000),
            { minLength: 7, maxLength: 7 },
          ),
        ),
        (random, draws) => {
          const cause = Math.floor((draws[6] ?? 0) * random.causes.length);
          const evidence = random.tests.map((one, at) => {
            let left = draws[at] ?? 0;
            const outcome = one.likelihood.findIndex((row) => {
              left -= row[cause] ?? 0;
              return left < 0;
            });
            return { test: one.id, outcome: one.outcomes[Math.max(outcome, 0)] ?? '' };
          });
          drawn++;
          if (contradiction(compile(random), { evidence })) called++;
        },
      ),
      { numRuns: 1000, seed: 4 },
    );
    expect(drawn).toBe(1000);
    expect(called / drawn).toBeLessThan(0.05);
  });

  test('the pair is always two different findings of the evidence', () => {
    const cases = models({ causes: 4, tests: 5, groups: true }).chain((random) =>
      fc.tuple(fc.constant(random), situations(random, 0.9)),
    );
    let fights = 0;
    fc.assert(
      fc.property(cases, ([random, situation]) => {
        const found = contradiction(compile(random), situation);
        if (found === undefined) return;
        fights++;
        const [one, other] = found.pair;
        expect(situation.evidence).toContainEqual(one);
        expect(situation.evidence).toContainEqual(other);
        expect(one.test).not.toBe(other.test);
      }),
      { numRuns: 400, seed: 7 },
    );
    expect(fights).toBeGreaterThan(4);
  });
});
