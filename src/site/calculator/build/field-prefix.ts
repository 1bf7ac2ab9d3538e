/** Prefixes for the ids of fields: several calculators of one kind may stand on one page. */

let made = 0;

/** A prefix no other part of the build has. Pages are built one after another, so it is the same in every build. */
export function nextPrefix(kind: string): string {
  made += 1;
  return `${kind}-${made}`;
}
