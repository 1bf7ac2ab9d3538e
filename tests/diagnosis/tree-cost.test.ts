import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { type Model, SOMETHING_ELSE } from '../../src/diagnosis/model.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import { proofOrder } from '../../src/diagnosis/proof-order.ts';
import { describeTreeFault, type Step, type Tree } from '../../src/diagnosis/tree.ts';
import { quantile, type TreeReport, treeCost } from '../../src/diagnosis/tree-cost.ts';
import { modelOf, models, type WorkedInputs, workedModel, yesNo } from './make-model.ts';
import { randomTree } from './make-tree.ts';
import { published } from './published.ts';

function reportOf(model: Model, tree: Tree, situation = {}): TreeReport {
  const cost = treeCost(compile(model), tree, { evidence: [], ...situation });
  if (!cost.ok) throw new Error(cost.faults.map(describeTreeFault).join(' '));
  return cost.report;
}

describe('worked-5x4-authored-tree', () => {
  interface Nested {
    test?: string;
    on?: Nested[];
    end?: string[];
  }
  interface PublishedEnd {
    path: string[];
    reach: number;
    posterior: number[];
    listedShare: number;
    expectedMinutesFromHere: number;
  }
  const { inputs, expected, tolerance } = published.entry<
    { tree: Nested },
    {
      expectedMinutes: number;
      median: number;
      nineInTen: number;
      distribution: Record<string, number>;
      ends: PublishedEnd[];
      provenOnTheTreeGivenCause: Record<string, number>;
      sameTestsBestEnds: { expectedMinutes: number; tree: Nested };
    }
  >('worked-5x4-authored-tree');
  const model = workedModel(published.entry<WorkedInputs>('worked-5x4-posteriors').inputs);

  /** Steps named by the way to them, as "T1=1,T3=0"; the start is "". */
  function flatten(nested: Nested): Tree {
    const steps: Record<string, Step> = {};
    const add = (node: Nested, way: string[]): string => {
      const id = way.join(',');
      const asked = node.test;
      steps[id] =
        asked === undefined
          ? { kind: 'end', causes: node.end ?? [] }
          : {
              kind: 'test',
              test: asked,
              on: Object.fromEntries(
                (node.on ?? []).map((next, outcome) => [
                  String(outcome),
                  add(next, [...way, `${asked}=${outcome}`]),
                ]),
              ),
            };
      return id;
    };
    return { start: add(nested, []), steps };
  }

  const tree = flatten(inputs.tree);
  const report = reportOf(model, tree);
  const near = (actual: number | undefined, wanted: number): void => {
    expect(Math.abs((actual ?? Number.NaN) - wanted), `${actual} for ${wanted}`).toBeLessThanOrEqual(
      tolerance,
    );
  };

  test('expected, median and nine-in-ten minutes, and the whole distribution', () => {
    near(report.expectedMinutes, expected.expectedMinutes);
    expect(report.median).toBe(expected.median);
    expect(report.nineInTen).toBe(expected.nineInTen);
    expect(report.distribution.map((one) => one.minutes)).toEqual(
      Object.keys(expected.distribution).map(Number),
    );
    for (const { minutes, chance } of report.distribution)
      near(chance, expected.distribution[minutes.toFixed(1)] ?? Number.NaN);
  });

  test('reach, shares and minutes at every end', () => {
    expect(report.ends).toHaveLength(expected.ends.length);
    for (const wanted of expected.ends) {
      const end = report.ends.find((one) => one.step === wanted.path.join(','));
      near(end?.reach, wanted.reach);
      near(end?.named, wanted.listedShare);
      near(end?.minutesFromHere, wanted.expectedMinutesFromHere);
      ['c1', 'c2', 'c3', 'c4', SOMETHING_ELSE].forEach((cause, at) => {
        near(end?.ranked.find((one) => one.cause === cause)?.share, wanted.posterior[at] ?? Number.NaN);
      });
    }
  });

  test('chance that the tree proves each cause', () => {
    for (const [cause, proven] of Object.entries(expected.provenOnTheTreeGivenCause))
      near(report.causes.find((one) => one.cause === cause.replace('rest', SOMETHING_ELSE))?.proven, proven);
    near(
      report.proven,
      report.causes.reduce((sum, { share, proven }) => sum + share * proven, 0),
    );
  });

  test('the same tests with the best ends', () => {
    const best = flatten(expected.sameTestsBestEnds.tree);
    near(reportOf(model, best).expectedMinutes, expected.sameTestsBestEnds.expectedMinutes);
    // Those ends are the causes in falling chance per minute up to the cheapest cut.
    for (const [way, step] of Object.entries(best.steps)) {
      if (step.kind !== 'end') continue;
      const evidence = way.split(',').map((one) => {
        const [id = '', outcome = ''] = one.split('=');
        return { test: id, outcome };
      });
      expect(proofOrder(compile(model), { evidence }).order, way).toEqual(step.causes);
    }
  });
});

describe('laws', () => {
  /**
   * Expected minutes and proofs by living through every world, a cause and an answer to every test, one by one.
   * Written apart from the walk it checks; no groups.
   */
  function byEveryWorld(model: Model, tree: Tree): { minutes: number; proven: number } {
    const total = model.causes.reduce((sum, cause) => sum + cause.weight, 0);
    let minutes = 0;
    let proven = 0;
    const live = (cause: number, answers: Record<string, string>): { spent: number; found: boolean } => {
      let engine = 'cold';
      let place = 'bay';
      let spent = 0;
      const done = new Set<string>();
      const ready = (needs: string | undefined, at: string | undefined): void => {
        if (needs !== undefined && needs !== engine) {
          spent += needs === 'warm' ? model.changeOver.coldToWarm : model.changeOver.warmToCold;
          engine = needs;
        }
        if (at !== undefined && at !== place)
          spent += at === 'road' ? model.changeOver.toRoad : model.changeOver.toLift;
        if (at !== undefined) place = at;
        else if (place === 'road') place = 'bay';
      };
      const prove = (id: string): boolean => {
        const one = model.causes.find((candidate) => candidate.id === id);
        if (!one || done.has(id)) return false;
        done.add(id);
        ready(one.proveEngine, undefined);
        spent += one.proveMinutes;
        return model.causes[cause]?.id === id;
      };
      let at = tree.start;
      for (;;) {
        const step = tree.steps[at];
        if (!step) throw new Error(at);
        if (step.kind === 'end') {
          for (const id of step.causes) if (prove(id)) return { spent, found: true };
          return { spent: spent + model.passOnMinutes, found: false };
        }
        if (step.kind === 'prove') {
          if (prove(step.cause)) return { spent, found: true };
          at = step.otherwise;
          continue;
        }
        const one = model.tests.find((candidate) => candidate.id === step.test);
        if (one && !done.has(`test ${one.id}`)) {
          done.add(`test ${one.id}`);
          ready(one.engine, one.place);
          spent += one.minutes;
          engine = one.leaves ?? (one.place === 'road' ? 'warm' : engine);
        }
        at = step.on[answers[step.test] ?? ''] ?? '';
      }
    };
    for (let cause = 0; cause <= model.causes.length; cause++) {
      const weight = model.causes[cause]?.weight;
      const share = weight === undefined ? model.somethingElse : (weight / total) * (1 - model.somethingElse);
      let worlds: { chance: number; answers: Record<string, string> }[] = [{ chance: share, answers: {} }];
      for (const one of model.tests)
        worlds = worlds.flatMap(({ chance, answers }) =>
          one.outcomes.map((outcome, row) => ({
            chance: chance * (one.likelihood[row]?.[cause] ?? Number.NaN),
            answers: { ...answers, [one.id]: outcome },
          })),
        );
      for (const { chance, answers } of worlds) {
        const { spent, found } = live(cause, answers);
        minutes += chance * spent;
        if (found) proven += chance;
      }
    }
    return { minutes, proven };
  }

  const size = { causes: 4, tests: 4, engines: true };
  const trees = models(size).chain((model) => fc.tuple(fc.constant(model), randomTree(model)));

  test('a walk costs what living through every world costs', () => {
    fc.assert(
      fc.property(trees, ([model, tree]) => {
        const report = reportOf(model, tree);
        const lived = byEveryWorld(model, tree);
        expect(report.expectedMinutes).toBeCloseTo(lived.minutes, 8);
        expect(report.proven).toBeCloseTo(lived.proven, 10);
      }),
      { numRuns: 150 },
    );
  });

  test('chances sum to 1, and the distribution and the causes have the expected minutes as mean', () => {
    const repeating = models({ ...size, groups: true }).chain((model) =>
      fc.tuple(fc.constant(model), randomTree(model)),
    );
    fc.assert(
      fc.property(fc.oneof(trees, repeating), ([model, tree]) => {
        const report = reportOf(model, tree);
        const sum = (values: number[]): number => values.reduce((total, value) => total + value, 0);
        expect(sum(report.distribution.map((one) => one.chance))).toBeCloseTo(1, 10);
        expect(sum(report.distribution.map((one) => one.chance * one.minutes))).toBeCloseTo(
          report.expectedMinutes,
          4,
        );
        expect(sum(report.causes.map((one) => one.share * (one.minutes ?? 0)))).toBeCloseTo(
          report.expectedMinutes,
          8,
        );
        expect(report.steps.find((one) => one.step === tree.start)?.minutesFromHere).toBeCloseTo(
          report.expectedMinutes,
          8,
        );
        expect(report.median).toBeLessThanOrEqual(report.nineInTen);
      }),
    );
  });

  test('a step reached by one way only has the posterior of the findings on it', () => {
    fc.assert(
      fc.property(models({ causes: 4, tests: 2, groups: true }), (model) => {
        const [first, second] = model.tests;
        if (!first || !second) return;
        const steps: Record<string, Step> = {};
        const start = `${first.id}`;
        steps[start] = {
          kind: 'test',
          test: first.id,
          on: Object.fromEntries(first.outcomes.map((one) => [one, `a-${one}`])),
        };
        for (const one of first.outcomes) {
          steps[`a-${one}`] = {
            kind: 'test',
            test: second.id,
            on: Object.fromEntries(second.outcomes.map((other) => [other, `${one} ${other}`])),
          };
          for (const other of second.outcomes) steps[`${one} ${other}`] = { kind: 'end', causes: ['c1'] };
        }
        const report = reportOf(model, { start, steps });
        expect(report.repeats).toBe(first.group !== undefined && first.group === second.group);
        expect(report.ends.reduce((sum, end) => sum + end.reach, 0)).toBeCloseTo(1, 10);
        for (const end of report.ends) {
          const [one = '', other = ''] = end.step.split(' ');
          const evidence = [
            { test: first.id, outcome: one },
            { test: second.id, outcome: other },
          ];
          const { ranked } = posterior(compile(model), { evidence });
          for (const { cause, share } of ranked)
            expect(end.ranked.find((candidate) => candidate.cause === cause)?.share).toBeCloseTo(share, 10);
        }
      }),
    );
  });
});

describe('ways that meet and go on', () => {
  const model = modelOf(
    [3, 1],
    [10, 20],
    60,
    [yesNo('a', 4, [0.9, 0.2, 0.5]), yesNo('b', 6, [0.3, 0.8, 0.5])],
    0.06,
  );

  test('a step shared by several ways sums over them', () => {
    const shared: Tree = {
      start: 'a',
      steps: {
        a: { kind: 'test', test: 'a', on: { yes: 'b', no: 'end' } },
        b: { kind: 'test', test: 'b', on: { yes: 'end', no: 'other' } },
        end: { kind: 'end', causes: ['c1', 'c2'] },
        other: { kind: 'end', causes: ['c2', 'c1'] },
      },
    };
    const report = reportOf(model, shared);
    const end = report.ends.find((one) => one.step === 'end');
    const prior = [0.705, 0.235, 0.06];
    const here = [0.1 + 0.9 * 0.3, 0.8 + 0.2 * 0.8, 0.5 + 0.5 * 0.5].map(
      (chance, at) => chance * (prior[at] ?? 0),
    );
    const reach = here.reduce((sum, value) => sum + value, 0);
    expect(end?.reach).toBeCloseTo(reach, 12);
    expect(end?.ranked.find((one) => one.cause === 'c2')?.share).toBeCloseTo((here[1] ?? 0) / reach, 12);
    expect(end?.named).toBeCloseTo(1 - (here[2] ?? 0) / reach, 12);
  });

  test('what is known at the start is neither asked nor paid again', () => {
    const tree: Tree = {
      start: 'a',
      steps: {
        a: { kind: 'test', test: 'a', on: { yes: 'p', no: 'e2' } },
        p: { kind: 'prove', cause: 'c1', otherwise: 'e1' },
        e1: { kind: 'end', causes: ['c1', 'c2'] },
        e2: { kind: 'end', causes: ['c2'] },
      },
    };
    const known = reportOf(model, tree, { evidence: [{ test: 'a', outcome: 'yes' }], ruledOut: ['c1'] });
    const after = [0.235 * 0.2, 0.06 * 0.5];
    const share = (after[0] ?? 0) / ((after[0] ?? 0) + (after[1] ?? 0));
    expect(known.expectedMinutes).toBeCloseTo(20 + (1 - share) * 60, 10);
    expect(known.steps.find((one) => one.step === 'e2')?.reach).toBe(0);
  });

  test('a quantile is the least minutes that suffice', () => {
    const chances = [
      { minutes: 5, chance: 0.7 },
      { minutes: 9, chance: 0.2 },
      { minutes: 30, chance: 0.1 },
    ];
    expect([0.5, 0.7, 0.71, 0.9, 0.95, 1].map((q) => quantile(chances, q))).toEqual([5, 5, 9, 9, 30, 30]);
  });
});

describe('trees that cannot be walked', () => {
  const model = modelOf([1, 1], [10, 10], 60, [yesNo('a', 5, [0.9, 0.1, 0.5])], 0.06);
  const faultsOf = (tree: Tree): string[] => {
    const cost = treeCost(compile(model), tree);
    return cost.ok ? [] : cost.faults.map(describeTreeFault);
  };

  test('every fault is told at once', () => {
    expect(
      faultsOf({
        start: 'a',
        steps: {
          a: { kind: 'test', test: 'a', on: { yes: 'gone', perhaps: 'p' } },
          p: { kind: 'prove', cause: 'c9', otherwise: 'b' },
          b: { kind: 'test', test: 'z', on: {} },
        },
      }),
    ).toEqual([
      'Step "a" does not say where "no" of the test "a" leads.',
      'Step "a" has a way for "perhaps", and the test "a" has no such outcome.',
      '"a" leads to "gone", and the tree has no such step.',
      'Step "p" names the cause "c9", which is not a candidate of this symptom.',
      'Step "b" asks the test "z", which this symptom\'s model does not have.',
    ]);
  });

  test('a tree that comes back to itself is refused, not walked for ever', () => {
    expect(
      faultsOf({
        start: 'a',
        steps: {
          a: { kind: 'test', test: 'a', on: { yes: 'p', no: 'e' } },
          p: { kind: 'prove', cause: 'c1', otherwise: 'a' },
          e: { kind: 'end', causes: ['c1'] },
        },
      }),
    ).toEqual(['The tree comes back to where it was: a → p → a.']);
  });

  test('a step called like an object property is not found by accident', () => {
    expect(faultsOf({ start: 'constructor', steps: {} })).toEqual([
      '"start" leads to "constructor", and the tree has no such step.',
    ]);
  });

  test('shared steps that multiply the ways beyond reason are refused', () => {
    const steps: Record<string, Step> = { s20: { kind: 'end', causes: ['c1'] } };
    for (let at = 0; at < 20; at++)
      steps[`s${at}`] = { kind: 'test', test: 'a', on: { yes: `s${at + 1}`, no: `s${at + 1}` } };
    expect(faultsOf({ start: 's0', steps })).toEqual([
      'The tree can be walked in 1048576 ways; at most 100000 are followed.',
    ]);
  });
});
