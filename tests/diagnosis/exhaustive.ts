import type { Model } from '../../src/diagnosis/model.ts';

/**
 * Least expected minutes by trying everything: no memory, no bounds, no shortcuts, straight from the plain model.
 * Written apart from the search it checks; for tiny models only. Places and groups are left out.
 */
export function leastByTryingAll(model: Model, engine: 'cold' | 'warm' = 'cold'): number {
  const total = model.causes.reduce((sum, cause) => sum + cause.weight, 0);
  const start = [
    ...model.causes.map((cause) => (cause.weight / total) * (1 - model.somethingElse)),
    model.somethingElse,
  ];
  const sumOf = (shares: readonly number[]): number => shares.reduce((sum, share) => sum + share, 0);

  function ready(now: string, needed: string | undefined): number {
    if (needed === undefined || needed === now) return 0;
    return needed === 'warm' ? model.changeOver.coldToWarm : model.changeOver.warmToCold;
  }

  function least(shares: readonly number[], asked: readonly string[], now: string): number {
    const sum = sumOf(shares);
    if (sum === 0) return 0;
    let best = sum * model.passOnMinutes;
    model.causes.forEach((cause, number) => {
      if (shares[number] === 0) return;
      const others = shares.map((share, at) => (at === number ? 0 : share));
      const minutes = sum * (cause.proveMinutes + ready(now, cause.proveEngine));
      best = Math.min(best, minutes + least(others, asked, cause.proveEngine ?? now));
    });
    for (const test of model.tests) {
      if (asked.includes(test.id)) continue;
      let minutes = sum * (test.minutes + ready(now, test.engine));
      const then = test.leaves ?? test.engine ?? now;
      for (const row of test.likelihood)
        minutes += least(
          shares.map((share, at) => share * (row[at] ?? Number.NaN)),
          [...asked, test.id],
          then,
        );
      best = Math.min(best, minutes);
    }
    return best;
  }

  return least(start, [], engine);
}
