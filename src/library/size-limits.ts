/** How much one file of the shelf may hold, and how much is said about it. The largest record has a fifth of each. */

/** Bytes of one file. */
export const LARGEST_FILE = 256 * 1024;

/** Lines and commas of one file: YAML compares each field of a group with all before it. */
export const MOST_ENTRIES = 12_000;

/** Brackets and braces open at once. */
export const DEEPEST = 64;

/** Findings of one rule in one file that are worth reading. */
export const MOST_FINDINGS = 50;
