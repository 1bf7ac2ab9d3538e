/** Chance from a seed: the same seed gives the same shelf on every machine. */

export class Chance {
  private state: number;

  /** @param seed any whole number */
  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** From 0 up to, not including, 1. Mulberry32, by Tommy Ettinger, in the public domain. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = this.state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number, both ends included. */
  whole(lowest: number, highest: number): number {
    return lowest + Math.floor(this.next() * (highest - lowest + 1));
  }

  one<T>(from: readonly [T, ...T[]]): T {
    return from[this.whole(0, from.length - 1)] ?? from[0];
  }
}
