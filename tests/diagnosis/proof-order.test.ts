import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import type { Model } from '../../src/diagnosis/model.ts';
import { proofOrder } from '../../src/diagnosis/proof-order.ts';
import { modelOf, models, NOTHING_KNOWN, startOf } from './make-model.ts';
import { published } from './published.ts';

/** Passing on at a price nobody would pay. */
const NEVER = 1e6;

function orderOf(model: Model): { minutes: number; order: string } {
  const { minutes, order } = proofOrder(compile(model), NOTHING_KNOWN);
  return { minutes, order: order.map((id) => id.slice(1)).join('-') };
}

/** All ordered selections of the numbers below n. */
function selections(n: number): number[][] {
  const grow = (taken: number[]): number[][] => [
    taken,
    ...Array.from({ length: n }, (_, at) => at)
      .filter((at) => !taken.includes(at))
      .flatMap((at) => grow([...taken, at])),
  ];
  return grow([]);
}

/** Expected minutes of proving in this order and then passing on, car by car of each cause. */
function costOf(model: Model, order: readonly number[]): number {
  const total = model.causes.reduce((sum, cause) => sum + cause.weight, 0);
  let minutes = 0;
  const shares = model.causes.map((cause) => (cause.weight / total) * (1 - model.somethingElse));
  for (const [cause, share] of [...shares, model.somethingElse].entries()) {
    const at = order.indexOf(cause);
    const tried = at < 0 ? order : order.slice(0, at + 1);
    const proving = tried.reduce((sum, one) => sum + (model.causes[one]?.proveMinutes ?? Number.NaN), 0);
    minutes += share * (proving + (at < 0 ? model.passOnMinutes : 0));
  }
  return minutes;
}

describe('published orders of proof', () => {
  // Kadane and Simon 1977; Kalagnanam and Henrion 1988: falling chance per minute.
  test('probability-over-cost-3', () => {
    const { inputs, expected, tolerance } = published.entry<
      { p: number[]; checkMinutes: number[] },
      { bestOrder: string; bestMinutes: number; all: Record<string, number> }
    >('probability-over-cost-3');
    const model = modelOf(inputs.p, inputs.checkMinutes, NEVER);
    const found = orderOf(model);
    expect(found.order).toBe(expected.bestOrder);
    expect(Math.abs(found.minutes - expected.bestMinutes)).toBeLessThanOrEqual(tolerance);
    for (const [order, minutes] of Object.entries(expected.all))
      expect(
        costOf(
          model,
          order.split('-').map((one) => Number(one) - 1),
        ),
      ).toBeCloseTo(minutes, 9);
  });

  test('probability-over-cost-5', () => {
    const { inputs, expected, tolerance } = published.entry<
      { p: number[]; checkMinutes: number[] },
      { bestOrder: string; bestMinutes: number; byProbabilityOnly: number; byCheapestFirst: number }
    >('probability-over-cost-5');
    const model = modelOf(inputs.p, inputs.checkMinutes, NEVER);
    const found = orderOf(model);
    expect(found.order).toBe(expected.bestOrder);
    expect(Math.abs(found.minutes - expected.bestMinutes)).toBeLessThanOrEqual(tolerance);
    expect(costOf(model, [0, 1, 2, 3, 4])).toBeCloseTo(expected.byProbabilityOnly, 9);
    expect(costOf(model, [3, 1, 2, 4, 0])).toBeCloseTo(expected.byCheapestFirst, 9);
  });

  // Heckerman, Breese and Rommelse 1995: try k causes, then hand over at the cheapest k.
  test('stop-and-pass-on', () => {
    const { inputs, expected, tolerance } = published.entry<
      { p: number[]; somethingElse: number; checkMinutes: number[]; passOnMinutes: number },
      { costByPrefixLength: number[]; best: number; bestOrder: number[] }
    >('stop-and-pass-on');
    const model = modelOf(inputs.p, inputs.checkMinutes, inputs.passOnMinutes, [], inputs.somethingElse);
    const found = orderOf(model);
    expect(found.order).toBe(expected.bestOrder.join('-'));
    expect(Math.abs(found.minutes - expected.best)).toBeLessThanOrEqual(tolerance);
    expected.costByPrefixLength.forEach((minutes, length) => {
      expect(costOf(model, [0, 1, 2].slice(0, length))).toBeCloseTo(minutes, 9);
    });
  });

  // The same paper's formula has a repair paid only on the true cause: a sum no order changes.
  test('expected-cost-of-repair', () => {
    const { inputs, expected, tolerance } = published.entry<
      { p: number[]; rest: number; observe: number[]; repair: number[]; service: number },
      { order: number[]; ECR: number }
    >('expected-cost-of-repair');
    const found = orderOf(modelOf(inputs.p, inputs.observe, inputs.service, [], inputs.rest));
    const repairs = inputs.p.reduce((sum, share, at) => sum + share * (inputs.repair[at] ?? Number.NaN), 0);
    expect(found.order).toBe(expected.order.join('-'));
    expect(Math.abs(found.minutes + repairs - expected.ECR)).toBeLessThanOrEqual(tolerance);
  });
});

describe('laws', () => {
  test('no order of any selection of causes is cheaper', () => {
    const all = [0, 1, 2, 3, 4, 5].map(selections);
    fc.assert(
      fc.property(models({ causes: 5, tests: 0 }), (model) => {
        const least = Math.min(...(all[model.causes.length] ?? []).map((order) => costOf(model, order)));
        expect(orderOf(model).minutes).toBeCloseTo(least, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('the minutes are those of the order handed back', () => {
    fc.assert(
      fc.property(models({ causes: 8, tests: 0 }), (model) => {
        const { minutes, order } = orderOf(model);
        const numbers = order === '' ? [] : order.split('-').map((one) => Number(one) - 1);
        expect(costOf(model, numbers)).toBeCloseTo(minutes, 9);
      }),
    );
  });

  test('a proof that costs no time comes first, and equal causes keep their order', () => {
    const model = modelOf([1, 1, 1], [10, 0, 10], 100, [], 0.06);
    expect(orderOf(model).order).toBe('2-1-3');
  });
});

describe('proofs that need a cold or a warm engine', () => {
  const causes = [
    { id: 'c1', weight: 5, proveMinutes: 10, proveEngine: 'cold' as const },
    { id: 'c2', weight: 4, proveMinutes: 10, proveEngine: 'warm' as const },
    { id: 'c3', weight: 3, proveMinutes: 10, proveEngine: 'cold' as const },
  ];
  const changeOver = { coldToWarm: 15, warmToCold: 90, toRoad: 0, toLift: 0 };
  const model: Model = { causes, somethingElse: 0, passOnMinutes: 500, tests: [], changeOver };

  test('cold proofs are done together before the engine is warmed', () => {
    const found = proofOrder(compile(model), { evidence: [], engine: 'cold' });
    expect(found.order).toEqual(['c1', 'c3', 'c2']);
    // 10, then 10 on 7 of 12, then 25 on 4 of 12.
    expect(found.minutes).toBeCloseTo(10 + (7 / 12) * 10 + (4 / 12) * 25, 9);
  });

  test('a car that arrives warm is proven warm first', () => {
    const found = proofOrder(compile(model), { evidence: [], engine: 'warm' });
    expect(found.order[0]).toBe('c2');
    expect(found.minutes).toBeCloseTo(10 + (8 / 12) * 100 + (3 / 12) * 10, 9);
  });

  test('the prior is what the model says when nothing is known', () => {
    const wanted = [5 / 12, 4 / 12, 3 / 12, 0];
    startOf(model).state.weights.forEach((weight, column) => {
      expect(weight).toBeCloseTo(wanted[column] ?? Number.NaN, 12);
    });
  });
});
