/** How sure the recogniser may be of what it says. */

/** Above this, 98 of 100 phrasings left out in turn were right. */
const SURE = 0.9;
/** What is more like other trades' complaints than like any of ours. */
const HEAP_WINS = 0;
/** What is nearly so, and like none of ours in particular. */
const HEAP_NEAR = -4;
const LIKE_NONE = 0.5;

/**
 * The complaints' shares of one whole, by softmax. A long sentence's words repeat each other, so that its scores lie further
 * apart than it can be sure: the longer, the flatter.
 * @param scores by column, without the heap
 * @param signs how many signs the sentence gave
 */
export function sharesOf(scores: readonly number[], signs: number): number[] {
  const flatness = 3 + 0.15 * Math.sqrt(signs);
  const most = Math.max(...scores);
  const weights = scores.map((score) => Math.exp((score - most) / flatness));
  const whole = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / whole);
}

/** Whether one complaint stands alone. */
export function isSure(share: number): boolean {
  return share > SURE;
}

/** Whether the sentence sounds like none of the complaints. */
export function isElsewhere(heap: number, share: number): boolean {
  return heap >= HEAP_WINS || (heap >= HEAP_NEAR && share < LIKE_NONE);
}
