import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beliefOf, PROVEN_FROM } from '../../src/diagnosis/belief.ts';
import { compile } from '../../src/diagnosis/compiled.ts';
import type { Model, Situation } from '../../src/diagnosis/model.ts';
import { resolve } from '../../src/diagnosis/state.ts';
import { placeOf, type WalkTree } from '../../src/diagnosis/walk.ts';
import { walkFigures } from '../../src/diagnosis/walk-figures.ts';
import { modelOf, models, yesNo } from './make-model.ts';

/** Three causes a third each; `look` speaks for c1 as its proof, `open` rechecks it. */
function model({ look = [0.9, 0.1, 0.1], elsewhere = 0.01 } = {}): Model {
  const made = modelOf([1, 1, 1], [5, 5, 5], 60, [
    yesNo('look', 5, [...look, look.at(-1) ?? 0]),
    yesNo('feel', 3, [0.5, 0.9, 0.1, 0.5]),
    { ...yesNo('prove.c1', 10, [0.95, elsewhere, elsewhere, elsewhere]), isRecheck: true },
  ]);
  const [c1, ...others] = made.causes;
  if (!c1) throw new Error('No cause');
  return {
    ...made,
    causes: [
      {
        ...c1,
        proofs: [{ test: 'look', outcome: 'yes' }],
        recheck: { test: 'prove.c1', outcome: 'yes' },
      },
      ...others.map((cause) => ({ ...cause, proofs: [{ test: 'feel', outcome: 'yes' }] })),
    ],
    somethingElse: 0.03,
  };
}

const with_ = (made: Model, ...evidence: [string, string][]) =>
  beliefOf(compile(made), { evidence: evidence.map(([test_, outcome]) => ({ test: test_, outcome })) });

describe('belief', () => {
  test('one proof that others show as well proves nothing', () => {
    const belief = with_(model(), ['look', 'yes']);
    expect(belief.proven).toBeUndefined();
    // By hand: 0.3233 × 0.9 / (0.3233 × 0.9 + 2 × 0.3233 × 0.1 + 0.03 × 0.1) = 0.811.
    expect(belief.ranked[0]).toMatchObject({ cause: 'c1', share: expect.closeTo(0.811, 3) });
  });

  test('proof and recheck together prove', () => {
    const belief = with_(model(), ['look', 'yes'], ['prove.c1', 'yes']);
    expect(belief.proven).toBe('c1');
  });

  test('the recheck is asked before the cause is called proven, unless it could not change it', () => {
    const sharp = model({ look: [0.9, 0.005, 0.005] });
    expect(with_(sharp, ['look', 'yes'])).toMatchObject({
      proven: undefined,
      missingProof: { cause: 'c1', test: 'prove.c1' },
    });
    expect(with_(model({ look: [0.9, 0.001, 0.001] }), ['look', 'yes']).proven).toBe('c1');
  });

  test('a recheck that came out against the cause leaves it first and unproven, however sharp the proof', () => {
    const belief = with_(model({ look: [0.9, 0.0001, 0.0001] }), ['look', 'yes'], ['prove.c1', 'no']);
    expect(belief.ranked[0]?.cause).toBe('c1');
    expect(belief.ranked[0]?.share).toBeGreaterThan(PROVEN_FROM);
    expect(belief).toMatchObject({ proven: undefined, missingProof: undefined });
  });

  test('a likely cause of which no proof has come out waits for its proof', () => {
    const sure = modelOf([200, 1], [5, 5], 60, [yesNo('look', 5, [0.9, 0.1, 0.1])], 0.01);
    const causes = sure.causes.map((cause) => ({ ...cause, proofs: [{ test: 'look', outcome: 'yes' }] }));
    expect(with_({ ...sure, causes })).toMatchObject({
      proven: undefined,
      missingProof: { cause: 'c1', test: 'look' },
    });
  });

  test('an answer that speaks against a cause lowers it and does not make it absent', () => {
    const belief = with_(model(), ['look', 'no']);
    const share = belief.ranked.find(({ cause }) => cause === 'c1')?.share ?? 0;
    expect(share).toBeGreaterThan(0.04);
    expect(share).toBeLessThan(0.06);
  });

  test('a consequence is found, and what made it is ranked without it', () => {
    const made = model({ look: [0.9, 0.001, 0.001] });
    const causes = made.causes.map((cause) => (cause.id === 'c1' ? { ...cause, consequence: true } : cause));
    const belief = with_({ ...made, causes }, ['look', 'yes']);
    expect(belief).toMatchObject({ found: ['c1'], proven: undefined });
    expect(belief.ranked.find(({ cause }) => cause === 'c1')?.share).toBe(0);
    expect(
      belief.ranked
        .slice(0, 2)
        .map(({ cause }) => cause)
        .sort(),
    ).toEqual(['c2', 'c3']);
  });

  test('how common a layout is weighs a cause until the vehicle is known', () => {
    const situation: Situation = { evidence: [], fitted: { c1: 0.1 } };
    const { ranked } = beliefOf(compile(model()), situation);
    const share = (id: string) => ranked.find(({ cause }) => cause === id)?.share ?? 0;
    expect(share('c1') / share('c2')).toBeCloseTo(0.1, 9);
  });

  test('does not depend on the order of the answers', () => {
    const answers: [string, string][] = [
      ['look', 'yes'],
      ['feel', 'no'],
      ['prove.c1', 'no'],
    ];
    const one = with_(model(), ...answers);
    const other = with_(model(), ...[...answers].reverse());
    for (const { cause, share } of one.ranked)
      expect(other.ranked.find((each) => each.cause === cause)?.share).toBeCloseTo(share, 12);
  });
});

const TREE: WalkTree = {
  start: 'first',
  steps: {
    first: { kind: 'prove', cause: 'c1', otherwise: 'kind' },
    kind: { kind: 'layout', feature: 'fan', on: { electric: 'feel', none: 'end' } },
    feel: { kind: 'test', test: 'feel', on: { yes: 'end', no: 'end' } },
    end: { kind: 'end', causes: ['c1', 'c2', 'c3'] },
  },
};

describe('where a walk stands', () => {
  const at = (
    evidence: [string, string][],
    layout: Record<string, string> = {},
    unavailable: string[] = [],
  ) => {
    const compiled = compile(model());
    const situation = { evidence: evidence.map(([each, outcome]) => ({ test: each, outcome })), unavailable };
    return placeOf(compiled, TREE, resolve(compiled, situation), layout);
  };

  test('asks the author’s first step first', () => {
    expect(at([]).standing).toEqual({ kind: 'ask', test: 'look', step: 'first', cause: 'c1' });
  });

  test('a proof that comes out otherwise leads on', () => {
    expect(at([['look', 'no']]).standing).toEqual({ kind: 'ask-layout', step: 'kind', feature: 'fan' });
  });

  test('a cause that has become likely is proven before the next step', () => {
    expect(at([['look', 'yes']]).standing).toEqual({ kind: 'ask', test: 'prove.c1', cause: 'c1' });
  });

  test('a layout that is known is not asked', () => {
    expect(at([['look', 'no']], { fan: 'electric' }).standing).toMatchObject({ test: 'feel', step: 'feel' });
    expect(at([['look', 'no']], { fan: 'none' }).end).toBe('end');
  });

  test('what cannot be tested leads off the tree, and a proof that cannot be done leads past it', () => {
    expect(at([], { fan: 'electric' }, ['look', 'feel']).standing).toEqual({
      kind: 'off-tree',
      step: 'feel',
    });
  });

  test('a tree that names no such step says which', () => {
    const compiled = compile(model());
    const broken: WalkTree = { start: 'gone', steps: {} };
    expect(() => placeOf(compiled, broken, resolve(compiled, { evidence: [] }))).toThrow('No step "gone".');
  });
});

describe('figures of all walks', () => {
  /** A tree that asks every test in turn, then ends. */
  function everyTest(made: Model): WalkTree {
    const steps: Record<string, WalkTree['steps'][string]> = {
      end: { kind: 'end', causes: made.causes.map(({ id }) => id) },
    };
    made.tests.forEach((each, number) => {
      const next = made.tests[number + 1]?.id ?? 'end';
      steps[each.id] = {
        kind: 'test',
        test: each.id,
        on: Object.fromEntries(each.outcomes.map((one) => [one, next])),
      };
    });
    return { start: made.tests[0]?.id ?? 'end', steps };
  }

  /** Every test proves a cause, in turn. */
  const provable = models({ causes: 4, tests: 4 }).map((made) => ({
    ...made,
    causes: made.causes.map((cause, number) => {
      const own = made.tests[number];
      const [outcome] = own?.outcomes ?? [];
      return { ...cause, proofs: own && outcome !== undefined ? [{ test: own.id, outcome }] : [] };
    }),
  }));

  test('shares of the endings sum to one, and a wrong cause is proven no more often than the threshold allows', () => {
    fc.assert(
      fc.property(provable, (made) => {
        const compiled = compile(made);
        const all = walkFigures(compiled, everyTest(made), resolve(compiled, { evidence: [] }), 0);
        const sum = all.proven + all.first + all.named + all.missed + all.wronglyProven;
        expect(sum).toBeCloseTo(1, 9);
        // Of the cars called proven as many have another cause as the threshold leaves: the belief is the chance itself.
        expect(all.wronglyProven).toBeLessThanOrEqual(
          (1 - PROVEN_FROM) * (all.proven + all.wronglyProven) + 1e-9,
        );
        expect(all.notFollowed).toBe(0);
      }),
      { numRuns: 200 },
    );
  });

  test('by hand: one test, one cause, no doubt', () => {
    const made = modelOf([1], [5], 60, [yesNo('look', 7, [1, 0])], 0.1);
    const [only] = made.causes;
    if (!only) throw new Error('No cause');
    const sure = { ...made, causes: [{ ...only, proofs: [{ test: 'look', outcome: 'yes' }] }] };
    const compiled = compile(sure);
    const tree: WalkTree = {
      start: 'look',
      steps: {
        look: { kind: 'test', test: 'look', on: { yes: 'end', no: 'end' } },
        end: { kind: 'end', causes: ['c1'] },
      },
    };
    const all = walkFigures(compiled, tree, resolve(compiled, { evidence: [] }), 0);
    expect(all).toMatchObject({
      proven: 0.9,
      first: 0.1,
      wronglyProven: 0,
      questions: 1,
      expectedMinutes: 7,
    });
  });
});
