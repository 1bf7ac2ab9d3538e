/** What a page needs of the job card's schema without the checker that reads it. */

/** What was done with the litres. */
export const LITRE_WAYS = ['drained', 'filled', 'topped up after the drive'] as const;

/** Characters of a card's name. */
export const LONGEST_NAME = 120;

/** Bytes of the largest export that is read: a few hundred cards, or some dozen with their pictures. */
export const LARGEST_EXPORT = 64 * 1024 * 1024;
