/** Reads that fail loudly past the end: an undefined that became NaN would rank causes wrongly without a word. */

/**
 * An entry of numbers.
 * @throws RangeError outside the array
 */
export function real(values: Float64Array, at: number): number {
  const value = values[at];
  if (value === undefined) throw new RangeError(`No entry ${at} in ${values.length} numbers.`);
  return value;
}

/**
 * An entry of whole numbers.
 * @throws RangeError outside the array
 */
export function whole(values: Int32Array, at: number): number {
  const value = values[at];
  if (value === undefined) throw new RangeError(`No entry ${at} in ${values.length} whole numbers.`);
  return value;
}

/**
 * An entry of a list.
 * @throws RangeError outside the list
 */
export function item<T>(values: readonly T[], at: number): T {
  const value = values[at];
  if (value === undefined) throw new RangeError(`No entry ${at} in a list of ${values.length}.`);
  return value;
}
