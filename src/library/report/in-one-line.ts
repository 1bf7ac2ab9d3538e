import type { Finding } from '../finding.ts';
import { printable } from '../unseen.ts';

/** A finding without its place, for hosts that show it beside the line: what is wrong, what would be right, what to do. */
export function inOneLine({ found, expected, byHand }: Finding): string {
  return printable(
    [found, expected, byHand && `To mend: ${byHand}.`].filter((each) => each !== undefined).join(' '),
  );
}
