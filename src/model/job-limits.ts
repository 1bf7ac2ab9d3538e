/** What a page needs of the job card's schema without the checker that reads it. */

/** What was done with the litres. */
export const LITRE_WAYS = ['drained', 'filled', 'topped up after the drive'] as const;

/** Characters of a card's name. */
export const LONGEST_NAME = 120;

/** Bytes of the largest export that is read: more than any device keeps. */
export const LARGEST_EXPORT = 8 * 1024 * 1024;
