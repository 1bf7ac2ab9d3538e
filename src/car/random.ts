/** Seeded random numbers: the same seed, the same car, the same day, the same reading. */
export interface Random {
  /** 0 up to but not including 1. */
  share(): number;
  between(low: number, high: number): number;
  /** Evenly spread in the logarithm, for what ranges over powers of ten. Both ends above 0. */
  logBetween(low: number, high: number): number;
  /** Most often near `middle`, never outside `low` and `high`. */
  around(low: number, middle: number, high: number): number;
  chance(probability: number): boolean;
  pick<T>(from: readonly [T, ...T[]]): T;
  /** Mean 0, standard deviation 1. */
  normal(): number;
}

/**
 * A stream of its own for each purpose, so that one more number drawn for one thing moves no other.
 *
 * Mulberry32, a public-domain generator of 32 bits of state.
 * @param seed any whole number
 * @param purpose what the numbers are for
 */
export function randomOf(seed: number, purpose: string): Random {
  let state = hash(`${seed} ${purpose}`);
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number) => low + share() * (high - low);
  return {
    share,
    between,
    logBetween: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    around(low, middle, high) {
      const at = share();
      const turn = (middle - low) / (high - low);
      return at < turn
        ? low + Math.sqrt(at * (high - low) * (middle - low))
        : high - Math.sqrt((1 - at) * (high - low) * (high - middle));
    },
    chance: (probability) => share() < probability,
    pick: (from) => from[Math.floor(share() * from.length)] ?? from[0],
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share()),
  };
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193);
  return value >>> 0;
}
