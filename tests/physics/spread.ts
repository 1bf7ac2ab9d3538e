import fc from 'fast-check';

const STEPS = 1_000_000;

/** Numbers spread evenly over a span, ends included. `fc.double` draws mostly vanishing ones. */
export function spread(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: STEPS }).map((step) => Math.min(max, min + ((max - min) * step) / STEPS));
}
