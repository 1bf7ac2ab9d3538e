import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { entropy } from '../../src/diagnosis/information.ts';
import { type Finding, type Model, SOMETHING_ELSE } from '../../src/diagnosis/model.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import {
  modelOf,
  models,
  NOTHING_KNOWN,
  situations,
  startOf,
  type WorkedInputs,
  workedModel,
  yesNo,
} from './make-model.ts';
import { published } from './published.ts';

/** Shares by cause id in the order of the model, something else last. */
function sharesOf(model: Model, evidence: Finding[], ruledOut: string[] = []): number[] {
  const { ranked } = posterior(compile(model), { evidence, ruledOut });
  return [...model.causes.map((cause) => cause.id), SOMETHING_ELSE].map(
    (id) => ranked.find((one) => one.cause === id)?.share ?? Number.NaN,
  );
}

function expectClose(actual: readonly number[], wanted: readonly number[], tolerance: number): void {
  expect(actual).toHaveLength(wanted.length);
  actual.forEach((value, at) => {
    expect(Math.abs(value - (wanted[at] ?? Number.NaN)), `entry ${at}`).toBeLessThanOrEqual(tolerance);
  });
}

describe('published posteriors', () => {
  // Eddy 1982, as restated in many teaching texts: 7.8 %.
  test('bayes-screening-test', () => {
    const { inputs, expected, tolerance } =
      published.entry<Record<'prior' | 'sensitivity' | 'falsePositiveRate', number>>('bayes-screening-test');
    const model = modelOf([inputs.prior, 1 - inputs.prior], [1, 1], 9, [
      yesNo('film', 1, [inputs.sensitivity, inputs.falsePositiveRate, 0.5]),
    ]);
    const [positive = 0] = sharesOf(model, [{ test: 'film', outcome: 'yes' }]);
    const [negative = 0] = sharesOf(model, [{ test: 'film', outcome: 'no' }]);
    expect(Math.abs(positive - (expected.posteriorIfPositive ?? 0))).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(negative - (expected.posteriorIfNegative ?? 0))).toBeLessThanOrEqual(tolerance);
    expect(positive.toFixed(3)).toBe(String(expected.published));
    // Likelihood ratios are odds after over odds before.
    const odds = (share: number): number => share / (1 - share);
    expect(odds(positive) / odds(inputs.prior)).toBeCloseTo(expected.likelihoodRatioPositive ?? 0, 8);
    expect(odds(negative) / odds(inputs.prior)).toBeCloseTo(expected.likelihoodRatioNegative ?? 0, 8);
  });

  // McGee 2002, from memory: ratios of 2, 5, 10 move a middling probability by about 15, 30, 45 points.
  test('likelihood-ratio-rule-of-thumb', () => {
    const { expected, tolerance } = published.entry<
      unknown,
      { exact: { ratio: number; pre: number; post: number }[]; approximationPoints: Record<string, number> }
    >('likelihood-ratio-rule-of-thumb');
    for (const { ratio, pre, post } of expected.exact) {
      const yes = ratio > 1 ? [0.5, 0.5 / ratio, 0.5] : [0.5 * ratio, 0.5, 0.5];
      const [share = 0] = sharesOf(modelOf([pre, 1 - pre], [1, 1], 9, [yesNo('t', 1, yes)]), [
        { test: 't', outcome: 'yes' },
      ]);
      expect(Math.abs(share - post)).toBeLessThanOrEqual(tolerance);
      const points = expected.approximationPoints[String(ratio)];
      if (points !== undefined) expect(Math.abs((share - pre) * 100 - points)).toBeLessThan(10);
    }
  });

  test('single-cause-star-from-chest-clinic', () => {
    const { expected, tolerance } = published.entry('single-cause-star-from-chest-clinic');
    const model = modelOf([0.5, 0.5], [1, 1], 9, [
      yesNo('lung', 1, [0.1, 0.01, 0.5]),
      yesNo('bronc', 1, [0.6, 0.3, 0.5]),
    ]);
    const smoke = (lung: string, bronc: string): number =>
      sharesOf(model, [
        { test: 'lung', outcome: lung },
        { test: 'bronc', outcome: bronc },
      ])[0] ?? 0;
    expectClose(
      [smoke('yes', 'yes'), smoke('yes', 'no'), smoke('no', 'no')],
      [
        expected.smokeGivenLungBronc ?? 0,
        expected.smokeGivenLungNotBronc ?? 0,
        expected.smokeGivenNeither ?? 0,
      ],
      tolerance,
    );
  });

  test('worked-5x4-posteriors', () => {
    const { inputs, expected, tolerance } = published.entry<
      WorkedInputs,
      { prior: number[]; posteriors: Record<string, { p: number[]; probability: number }> }
    >('worked-5x4-posteriors');
    const model = workedModel(inputs);
    expectClose(sharesOf(model, []), expected.prior, tolerance);
    for (const [name, { p, probability }] of Object.entries(expected.posteriors)) {
      const evidence = [...name.matchAll(/(T\d)=(\d)/g)].map(([, id = '', outcome = '']) => ({
        test: id,
        outcome,
      }));
      const ruledOut = [...name.matchAll(/(c\d) ruled out/g)].map(([, id = '']) => id);
      expectClose(sharesOf(model, evidence, ruledOut), p, tolerance);
      expect(
        Math.abs(posterior(compile(model), { evidence, ruledOut }).probability - probability),
      ).toBeLessThanOrEqual(tolerance);
    }
    expect(Object.keys(expected.posteriors).length).toBeGreaterThanOrEqual(7);
  });

  // Genest and Zidek 1986: logarithmic pool, weights summing to one.
  test('repeat-group-pooling', () => {
    const { inputs, expected, tolerance } = published.entry<{ test: { positive: number[] } }>(
      'repeat-group-pooling',
    );
    const yes = [...inputs.test.positive, 0.5];
    const first = { ...yesNo('first', 1, yes), group: 'same' };
    const second = { ...yesNo('second', 1, yes), group: 'same' };
    const pooled = modelOf([0.5, 0.5], [1, 1], 9, [first, second]);
    const apart = modelOf([0.5, 0.5], [1, 1], 9, [yesNo('first', 1, yes), yesNo('second', 1, yes)]);
    const one = { test: 'first', outcome: 'yes' };
    expectClose(
      [
        sharesOf(pooled, [one])[0] ?? 0,
        sharesOf(pooled, [one, { test: 'second', outcome: 'yes' }])[0] ?? 0,
        sharesOf(pooled, [one, { test: 'second', outcome: 'no' }])[0] ?? 0,
        sharesOf(apart, [one, { test: 'second', outcome: 'yes' }])[0] ?? 0,
      ],
      [
        expected.onePositive ?? 0,
        expected.twoPositivesPooled ?? 0,
        expected.positiveAndNegativePooled ?? 0,
        expected.twoPositivesIfWronglyTakenAsIndependent ?? 0,
      ],
      tolerance,
    );
  });

  test('repeat-group-pooling-unequal', () => {
    const { inputs, expected, tolerance } = published.entry<
      { first: number[]; second: number[] },
      { posterior: number[] }
    >('repeat-group-pooling-unequal');
    const model = modelOf([0.5, 0.5], [1, 1], 9, [
      { ...yesNo('first', 1, [...inputs.first, 0.5]), group: 'same' },
      { ...yesNo('second', 1, [...inputs.second, 0.5]), group: 'same' },
    ]);
    const both = ['first', 'second'].map((id) => ({ test: id, outcome: 'yes' }));
    expectClose(sharesOf(model, both).slice(0, 2), expected.posterior, tolerance);
  });
});

/**
 * A network with several hidden causes is held in this model by making each combination of them one cause.
 * So the published general networks check the same arithmetic.
 */
describe('published networks, one cause a combination', () => {
  type Combination = Record<string, boolean>;

  function combinations(names: string[]): Combination[] {
    return names.reduce<Combination[]>(
      (all, name) => all.flatMap((one) => [true, false].map((value) => ({ ...one, [name]: value }))),
      [{}],
    );
  }

  function network(
    names: string[],
    chance: (one: Combination) => number,
    reads: Record<string, (one: Combination) => number>,
  ): {
    shareOf: (name: string, evidence: string[], not?: string[]) => number;
    probability: (seen: string[], not?: string[]) => number;
  } {
    const possible = combinations(names).filter((one) => chance(one) > 0);
    const model = modelOf(
      possible.map(chance),
      possible.map(() => 1),
      9,
      Object.entries(reads).map(([id, yes]) => yesNo(id, 1, [...possible.map(yes), 0.5])),
    );
    const compiled = compile(model);
    const look = (seen: string[], not: string[] = []) => {
      const ruledOut = possible.flatMap((one, at) =>
        seen.some((name) => one[name] === false) || not.some((name) => one[name] === true)
          ? [`c${at + 1}`]
          : [],
      );
      const evidence = Object.keys(reads).flatMap((id) =>
        seen.includes(id)
          ? [{ test: id, outcome: 'yes' }]
          : not.includes(id)
            ? [{ test: id, outcome: 'no' }]
            : [],
      );
      return posterior(compiled, { evidence, ruledOut });
    };
    return {
      shareOf: (name, seen, not) => {
        const { ranked } = look(seen, not);
        return ranked.reduce((sum, { cause, share }) => {
          const one = possible[Number(cause.slice(1)) - 1];
          const holds = name in reads ? reads[name]?.(one ?? {}) : Number(one?.[name] ?? false);
          return sum + share * (cause === SOMETHING_ELSE ? 0 : (holds ?? 0));
        }, 0);
      },
      probability: (seen, not) => look(seen, not).probability,
    };
  }

  const either = (chance: number, holds: boolean | undefined): number => (holds ? chance : 1 - chance);

  // Pearl 1988; Russell and Norvig, 3rd edition, p. 523: P(B|j,m) = .284.
  test('burglar-alarm', () => {
    const { expected, tolerance } = published.entry('burglar-alarm');
    const alarm = (b: boolean | undefined, e: boolean | undefined): number =>
      b ? (e ? 0.95 : 0.94) : e ? 0.29 : 0.001;
    const net = network(
      ['B', 'E', 'A'],
      (one) => either(0.001, one.B) * either(0.002, one.E) * either(alarm(one.B, one.E), one.A),
      { j: (one) => (one.A ? 0.9 : 0.05), m: (one) => (one.A ? 0.7 : 0.01) },
    );
    expect(Math.abs(net.shareOf('B', ['j', 'm']) - (expected.P_B_given_jm ?? 0))).toBeLessThanOrEqual(
      tolerance,
    );
  });

  // Murphy 1998, the sprinkler network of Russell and Norvig.
  test('wet-grass', () => {
    const { expected, tolerance } = published.entry('wet-grass');
    const net = network(
      ['C', 'S', 'R'],
      (one) => 0.5 * either(one.C ? 0.1 : 0.5, one.S) * either(one.C ? 0.8 : 0.2, one.R),
      { W: (one) => (one.S ? (one.R ? 0.99 : 0.9) : one.R ? 0.9 : 0) },
    );
    expectClose(
      [net.shareOf('R', ['W']), net.shareOf('S', ['W']), net.shareOf('C', ['W']), net.probability(['W'])],
      [expected.P_R_given_W ?? 0, expected.P_S_given_W ?? 0, expected.P_C_given_W ?? 0, expected.P_W ?? 0],
      tolerance,
    );
  });

  // Lauritzen and Spiegelhalter 1988, J. Royal Statistical Society B 50:157-224.
  const clinic = network(
    ['asia', 'tub', 'smoke', 'lung', 'bronc', 'either'],
    (one) =>
      either(0.01, one.asia) *
      either(one.asia ? 0.05 : 0.01, one.tub) *
      0.5 *
      either(one.smoke ? 0.1 : 0.01, one.lung) *
      either(one.smoke ? 0.6 : 0.3, one.bronc) *
      either(Number(one.tub || one.lung), one.either),
    {
      xray: (one) => (one.either ? 0.98 : 0.05),
      dysp: (one) => (one.bronc ? (one.either ? 0.9 : 0.8) : one.either ? 0.7 : 0.1),
    },
  );

  test('chest-clinic-marginals', () => {
    const { expected, tolerance } = published.entry('chest-clinic-marginals');
    for (const [name, value] of Object.entries(expected))
      expect(Math.abs(clinic.shareOf(name, []) - value), name).toBeLessThanOrEqual(tolerance);
  });

  test('chest-clinic-asia-dyspnoea', () => {
    const { expected, tolerance } = published.entry('chest-clinic-asia-dyspnoea');
    const seen = ['asia', 'dysp'];
    for (const name of ['lung', 'bronc', 'tub', 'smoke'])
      expect(Math.abs(clinic.shareOf(name, seen) - (expected[name] ?? 0)), name).toBeLessThanOrEqual(
        tolerance,
      );
    expect(Math.abs(clinic.probability(seen) - (expected.P_evidence ?? 0))).toBeLessThanOrEqual(tolerance);
  });

  test('chest-clinic-more', () => {
    const { expected, tolerance } = published.entry<unknown, Record<string, Record<string, number>>>(
      'chest-clinic-more',
    );
    const cases: [string, string[], string[]][] = [
      ['asia,smoke,dysp,xray all yes', ['asia', 'smoke', 'dysp', 'xray'], []],
      ['asia yes, smoke no, dysp yes, xray no', ['asia', 'dysp'], ['smoke', 'xray']],
    ];
    for (const [name, seen, not] of cases) {
      const { P, ...shares } = expected[name] ?? {};
      expect(Math.abs(clinic.probability(seen, not) - (P ?? 0))).toBeLessThanOrEqual(tolerance);
      for (const [cause, share] of Object.entries(shares))
        expect(Math.abs(clinic.shareOf(cause, seen, not) - share), cause).toBeLessThanOrEqual(tolerance);
      expect(Object.keys(shares)).toHaveLength(3);
    }
  });

  // Russell and Norvig, the noisy-or of fever: each present cause is held back by itself with its own chance.
  test('noisy-or-fever', () => {
    const { inputs, expected, tolerance } = published.entry<{ inhibition: Record<string, number> }>(
      'noisy-or-fever',
    );
    const causes = Object.keys(inputs.inhibition);
    const names = causes.flatMap((name) => [name, `${name} held back`]);
    const net = network(
      names,
      (one) =>
        causes.reduce(
          (product, name) => product * 0.5 * either(inputs.inhibition[name] ?? 0, one[`${name} held back`]),
          1,
        ),
      { fever: (one) => Number(causes.some((name) => one[name] && !one[`${name} held back`])) },
    );
    for (const [which, chance] of Object.entries(expected)) {
      const present = which === 'none' ? [] : which === 'all' ? causes : which.split('_');
      const absent = causes.filter((name) => !present.includes(name));
      expect(Math.abs(net.shareOf('fever', present, absent) - chance), which).toBeLessThanOrEqual(tolerance);
    }
    expect(Object.keys(expected)).toHaveLength(8);
  });

  // Fault Tree Handbook NUREG-0492, equation VI-17: an or-gate over independent events.
  test('or-gate', () => {
    const { inputs, expected, tolerance } = published.entry<{ p: number[] }>('or-gate');
    const names = inputs.p.map((_, at) => `e${at}`);
    const net = network(
      names,
      (one) => names.reduce((product, name, at) => product * either(inputs.p[at] ?? 0, one[name]), 1),
      { top: (one) => Number(names.some((name) => one[name])) },
    );
    expect(Math.abs(net.probability(['top']) - (expected.orGate ?? 0))).toBeLessThanOrEqual(tolerance);
    const rare = names.reduce((sum, name) => sum + net.shareOf(name, []), 0);
    expect(Math.abs(rare - (expected.rareEventSum ?? 0))).toBeLessThanOrEqual(tolerance);
  });

  // NUREG-0492 chapter VIII, probabilities from memory.
  test('pressure-tank-fault-tree', () => {
    const { inputs, expected, tolerance } = published.entry<
      Record<string, number>,
      { cutSets: string[][]; exact: number }
    >('pressure-tank-fault-tree');
    const names = Object.keys(inputs);
    const net = network(
      names,
      (one) => names.reduce((product, name) => product * either(inputs[name] ?? 0, one[name]), 1),
      { bursts: (one) => Number(expected.cutSets.some((set) => set.every((name) => one[name]))) },
    );
    expect(Math.abs(net.probability(['bursts']) - expected.exact)).toBeLessThanOrEqual(tolerance);
  });
});

describe('laws', () => {
  const modelled = models({ causes: 5, tests: 4 }).chain((model) =>
    fc.tuple(fc.constant(model), situations(model)),
  );

  /** Every world: a cause and an outcome of every test. Sums those that agree with what is known. */
  function byEnumeration(model: Model, evidence: readonly Finding[], ruledOut: readonly string[]): number[] {
    const total = model.causes.reduce((sum, cause) => sum + cause.weight, 0);
    const prior = [
      ...model.causes.map((cause) =>
        ruledOut.includes(cause.id) ? 0 : (cause.weight / total) * (1 - model.somethingElse),
      ),
      model.somethingElse,
    ];
    const worlds = model.tests.reduce<Finding[][]>(
      (all, one) =>
        all.flatMap((world) => one.outcomes.map((outcome) => [...world, { test: one.id, outcome }])),
      [[]],
    );
    const agree = (world: Finding[]): boolean =>
      evidence.every((seen) => world.some((one) => one.test === seen.test && one.outcome === seen.outcome));
    const chance = (world: Finding[], column: number): number =>
      world.reduce((product, { outcome }, at) => {
        const one = model.tests[at];
        return product * (one?.likelihood[one.outcomes.indexOf(outcome)]?.[column] ?? Number.NaN);
      }, 1);
    const joint = prior.map((share, column) =>
      worlds.filter(agree).reduce((sum, world) => sum + share * chance(world, column), 0),
    );
    const sum = joint.reduce((all, value) => all + value, 0);
    return joint.map((value) => value / sum);
  }

  test('posteriors equal the sum over every possible world', () => {
    fc.assert(
      fc.property(modelled, ([model, { evidence, ruledOut = [] }]) => {
        expectClose(
          sharesOf(model, [...evidence], [...ruledOut]),
          byEnumeration(model, evidence, ruledOut),
          1e-12,
        );
      }),
      { numRuns: 300 },
    );
  });

  test('shares sum to 1 and the order of the findings does not matter, repeats included', () => {
    fc.assert(
      fc.property(
        models({ causes: 5, tests: 5, groups: true }).chain((model) =>
          fc.tuple(fc.constant(model), situations(model)),
        ),
        ([model, { evidence }]) => {
          const forwards = sharesOf(model, [...evidence]);
          expect(forwards.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
          expectClose(sharesOf(model, [...evidence].reverse()), forwards, 1e-12);
        },
      ),
    );
  });

  test('the posteriors of all outcomes average to what was believed before', () => {
    fc.assert(
      fc.property(models({ causes: 5, tests: 1 }), (model) => {
        for (const one of model.tests) {
          const before = sharesOf(model, []);
          const after = before.map(() => 0);
          for (const outcome of one.outcomes) {
            const finding = { test: one.id, outcome };
            const { probability } = posterior(compile(model), { evidence: [finding] });
            sharesOf(model, [finding]).forEach((share, at) => {
              after[at] = (after[at] ?? 0) + probability * share;
            });
          }
          expectClose(after, before, 1e-12);
        }
      }),
    );
  });

  test('expected entropy never rises, and stays where all columns are equal', () => {
    fc.assert(
      fc.property(models({ causes: 5, tests: 2 }), (model) => {
        const { compiled, state } = startOf(model);
        for (const one of compiled.tests) {
          const after = one.rows.reduce((sum, row) => {
            const branch = state.weights.map((weight, column) => weight * (row[column] ?? Number.NaN));
            return sum + branch.reduce((all, value) => all + value, 0) * entropy(branch);
          }, 0);
          expect(after).toBeLessThanOrEqual(entropy(state.weights) + 1e-12);
          const isFlat = one.rows.every((row) => row.every((value) => value === row[0]));
          if (isFlat) expect(after).toBeCloseTo(entropy(state.weights), 12);
        }
      }),
    );
  });

  test('splitting a cause into two with equal columns leaves the rest as it was', () => {
    fc.assert(
      fc.property(modelled, ([model, { evidence }]) => {
        const [first, ...others] = model.causes;
        if (first === undefined) return;
        const half = { ...first, weight: first.weight / 2 };
        const split: Model = {
          ...model,
          causes: [half, { ...half, id: 'twin' }, ...others],
          tests: model.tests.map((one) => ({
            ...one,
            likelihood: one.likelihood.map((row) => [row[0] ?? Number.NaN, ...row]),
          })),
        };
        const [a = 0, b = 0, ...rest] = sharesOf(split, [...evidence]);
        expectClose([a + b, ...rest], sharesOf(model, [...evidence]), 1e-12);
      }),
    );
  });
});

describe('what cannot be', () => {
  const model = modelOf([0.5, 0.5], [10, 20], 60, [yesNo('t', 5, [1, 0, 0])], 0.06);

  test('when nothing is possible all is put on something else, and it says so', () => {
    const found = posterior(compile(model), { evidence: [{ test: 't', outcome: 'yes' }], ruledOut: ['c1'] });
    expect(found.impossible).toBe(true);
    expect(found.ranked[0]).toEqual({ cause: SOMETHING_ELSE, share: 1 });
  });

  test('findings of tests the model does not have are set aside and handed back', () => {
    const old = { test: 'renamed', outcome: 'yes' };
    const found = posterior(compile(model), { evidence: [old, { test: 't', outcome: 'perhaps' }] });
    expect(found.ignored).toHaveLength(2);
    expect(found.ranked.map((one) => one.share)).toEqual(
      posterior(compile(model), NOTHING_KNOWN).ranked.map((one) => one.share),
    );
  });

  test('a test answered twice counts with its last answer', () => {
    const twice = [
      { test: 't', outcome: 'yes' },
      { test: 't', outcome: 'no' },
    ];
    expect(sharesOf(model, twice)).toEqual(sharesOf(model, [{ test: 't', outcome: 'no' }]));
  });

  test('a faulty model is refused with every fault named', () => {
    const [first] = model.tests;
    const bad: Model = {
      ...model,
      somethingElse: 1.5,
      causes: [
        { id: 'c1', weight: 0, proveMinutes: Number.NaN },
        { id: 'c1', weight: 1, proveMinutes: 5 },
      ],
      tests: first
        ? [
            {
              ...first,
              likelihood: [
                [0.5, 0.5, 0.5],
                [0.5, 0.5, 0.4],
              ],
            },
          ]
        : [],
    };
    expect(() => compile(bad)).toThrow(/1\.5.*there twice.*weight 0.*NaN.*sum to 0\.9/s);
  });
});
