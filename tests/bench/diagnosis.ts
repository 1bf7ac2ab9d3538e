/**
 * How long the engine takes and how near it comes. Prints figures and never fails: npx node tests/bench/diagnosis.ts
 * Random models in the vocabulary of the words; seeds fixed, so that two runs do the same work.
 */
import { cpus } from 'node:os';
import { bestFound } from '../../src/diagnosis/best-policy.ts';
import { QUICK_BUDGET } from '../../src/diagnosis/budget.ts';
import { compile } from '../../src/diagnosis/compiled.ts';
import { contradiction } from '../../src/diagnosis/contradiction.ts';
import { lowerBound } from '../../src/diagnosis/lower-bound.ts';
import { type Model, USUAL_CHANGE_OVER } from '../../src/diagnosis/model.ts';
import { nextStep } from '../../src/diagnosis/next-step.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import { proofOrder } from '../../src/diagnosis/proof-order.ts';
import { LIKELIHOOD_WORDS, PRIOR_WORDS } from '../../src/diagnosis/words.ts';
import { THOROUGH_BUDGET } from '../diagnosis/thorough-budget.ts';

/** Linear congruential generator of Numerical Recipes; good enough to fill tables. */
function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A shelf-like model: each test speaks about a third of the causes, the others take its otherwise row. */
function randomModel(seed: number, causes: number, tests: number): Model {
  const random = randomNumbers(seed);
  const pick = <T>(from: readonly T[], fallback: T): T =>
    from[Math.floor(random() * from.length)] ?? fallback;
  const strong = Object.values(LIKELIHOOD_WORDS).filter((value) => value > 0.5 && value < 1);
  return {
    causes: Array.from({ length: causes }, (_, at) => ({
      id: `c${at}`,
      weight: pick(Object.values(PRIOR_WORDS), 1),
      proveMinutes: 10 + Math.floor(random() * 50),
    })),
    somethingElse: 0.06,
    passOnMinutes: 120,
    changeOver: USUAL_CHANGE_OVER,
    tests: Array.from({ length: tests }, (_, at) => {
      const outcomes = 2 + Math.floor(random() * 3);
      const column = (): number[] => {
        const peak = random() < 0.35 ? Math.floor(random() * outcomes) : 0;
        const value = pick(strong, 0.83);
        return Array.from({ length: outcomes }, (_, one) =>
          one === peak ? value : (1 - value) / (outcomes - 1),
        );
      };
      const otherwise = column();
      const columns = Array.from({ length: causes + 1 }, () => (random() < 0.35 ? column() : otherwise));
      const draw = random();
      return {
        id: `t${at}`,
        minutes: 2 + Math.floor(random() * 20),
        ...(draw < 0.3 && { engine: draw < 0.15 ? ('cold' as const) : ('warm' as const) }),
        outcomes: Array.from({ length: outcomes }, (_, one) => `o${one}`),
        likelihood: Array.from({ length: outcomes }, (_, one) =>
          columns.map((values) => values[one] ?? Number.NaN),
        ),
      };
    }),
  };
}

/** Milliseconds of processor time of each call after a few to warm up: what else runs does not count. */
function times(calls: number, call: (round: number) => unknown): number[] {
  for (let round = 0; round < 5; round++) call(round);
  return Array.from({ length: calls }, (_, round) => {
    const start = process.cpuUsage();
    call(round);
    const used = process.cpuUsage(start);
    return (used.user + used.system) / 1000;
  });
}

function line(what: string, milliseconds: number[]): void {
  const sorted = [...milliseconds].sort((a, b) => a - b);
  const at = (share: number): string =>
    (sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN).toFixed(2);
  console.log(`${what.padEnd(58)} median ${at(0.5)} ms, nine in ten ${at(0.9)} ms, most ${at(1)} ms`);
}

console.log(
  `${cpus()[0]?.model ?? 'unknown processor'} × ${cpus().length}, node ${process.version}, ${process.platform}`,
);

const large = Array.from({ length: 20 }, (_, seed) => compile(randomModel(seed, 40, 60)));
const pickLarge = (round: number) => large[round % large.length] ?? compile(randomModel(0, 40, 60));
line(
  'next step, nothing known, 40 causes × 60 tests',
  times(100, (round) => nextStep(pickLarge(round), { evidence: [] })),
);
const answered = {
  evidence: Array.from({ length: 5 }, (_, at) => ({ test: `t${at}`, outcome: `o${at % 2}` })),
};
line(
  'next step, five findings, 40 × 60',
  times(100, (round) => nextStep(pickLarge(round), answered)),
);
line(
  'posterior, five findings, 40 × 60',
  times(200, (round) => posterior(pickLarge(round), answered)),
);
line(
  'contradiction, five findings, 40 × 60',
  times(200, (round) => contradiction(pickLarge(round), answered)),
);
line(
  'compile, 40 × 60',
  times(20, (round) => compile(randomModel(round, 40, 60))),
);

for (const [causes, tests] of [
  [8, 10],
  [12, 15],
  [20, 25],
] as const) {
  const shelf = Array.from({ length: 10 }, (_, seed) => compile(randomModel(seed + 100, causes, tests)));
  const pick = (round: number) => shelf[round % shelf.length] ?? compile(randomModel(0, causes, tests));
  for (const [name, budget] of [
    ['quick', QUICK_BUDGET],
    ['thorough', THOROUGH_BUDGET],
  ] as const) {
    const calls = name === 'quick' ? 20 : 5;
    line(
      `best found, ${name} budget, ${causes} × ${tests}`,
      times(calls, (round) => bestFound(pick(round), { evidence: [] }, budget)),
    );
    line(
      `lower bound, ${name} budget, ${causes} × ${tests}`,
      times(calls, (round) => lowerBound(pick(round), { evidence: [] }, budget)),
    );
  }
  const [ratio, cut] = shelf
    .map((one) => {
      const best = bestFound(one, { evidence: [] }, QUICK_BUDGET);
      return [best.minutes / lowerBound(one, { evidence: [] }, QUICK_BUDGET).minutes, best.cut] as const;
    })
    .reduce(([a, b], [x, y]) => [a + x / shelf.length, b + y / shelf.length], [0, 0]);
  console.log(
    `  quick: best found over bound ${ratio.toFixed(2)} on average, ${((cut ?? 0) * 100).toFixed(1)} % of the cars beyond the policy's budget`,
  );
}

/** Mean and largest excess of a plan over the exact optimum, in per cent, on models small enough to solve. */
const excess: { policy: number; proofs: number }[] = [];
for (let seed = 0; seed < 200; seed++) {
  const small = compile(randomModel(seed + 500, 3 + (seed % 3), 3 + (seed % 3)));
  const exact = bestFound(small, { evidence: [] }, THOROUGH_BUDGET);
  if (exact.kind !== 'exact') continue;
  const policy = bestFound(small, { evidence: [] }, { ...THOROUGH_BUDGET, exactStates: 0 });
  excess.push({
    policy: (policy.minutes / exact.minutes - 1) * 100,
    proofs: (proofOrder(small, { evidence: [] }).minutes / exact.minutes - 1) * 100,
  });
}
const mean = (values: number[]): string =>
  (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(2);
console.log(
  `over the optimum on ${excess.length} small models: two-step policy ${mean(excess.map((one) => one.policy))} % on average, ` +
    `${Math.max(...excess.map((one) => one.policy)).toFixed(1)} % at most; proofs alone ${mean(excess.map((one) => one.proofs))} %`,
);
