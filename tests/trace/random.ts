/** Seeded random numbers for the simulation: the same seed, the same road test. */
export interface Random {
  /** 0 to 1. */
  share(): number;
  between(low: number, high: number): number;
  chance(probability: number): boolean;
  pick<T>(from: readonly T[]): T;
  /** Mean 0, standard deviation 1. */
  normal(): number;
}

/** mulberry32, a public-domain generator of 32 bits of state. */
export function randomOf(seed: number): Random {
  let state = (seed * 2654435761) >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    share,
    between: (low, high) => low + share() * (high - low),
    chance: (probability) => share() < probability,
    pick: (from) => {
      const found = from[Math.floor(share() * from.length)];
      if (found === undefined) throw new Error('Nothing to pick from');
      return found;
    },
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share()),
  };
}
