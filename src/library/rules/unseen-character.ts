import type { FileRule } from '../rule.ts';
import { firstUnseen } from '../unseen.ts';

/** What nobody sees in the review of a change must not change what the page shows. */
export const unseenCharacter: FileRule = {
  id: 'unseen-character',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, text }) => {
    // Carriage returns and the mark at the start have rules of their own, with a mend.
    const plain = text.replace(/^\uFEFF/, ' ').replaceAll('\r', ' ');
    const unseen = firstUnseen(plain);
    if (!unseen) return [];
    return [
      {
        at: { file, start: unseen.at, end: unseen.at + unseen.length },
        found: `A character stands here that cannot be seen, or that turns the text around: ${unseen.name}.`,
        expected: 'A record holds what is seen and nothing else.',
        byHand: 'delete the text around it and type it again',
      },
    ];
  },
};
