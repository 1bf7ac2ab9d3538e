/** Prefixes for the ids of fields: several calculators of one kind may stand on one page. */

let made = 0;

/**
 * A prefix no other part of the build has, since steps of one page are put into another. Pages are built several at once: the
 * number may be another one in the next build.
 */
export function nextPrefix(kind: string): string {
  made += 1;
  return `${kind}-${made}`;
}
