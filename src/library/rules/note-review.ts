import { dayText } from '../../model/day.ts';
import type { Fault } from '../finding.ts';
import type { ShelfRule } from '../rule.ts';

/** A note stands on the shelf once somebody else has read it: who and when is on it, and can be so. */
export const noteReview: ShelfRule = {
  id: 'note-review',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    // Written in one time zone and checked in another it may be a day ahead.
    const tomorrow = dayText(new Date(Date.now() + 86_400_000));
    return [...records.note.values()].flatMap(({ file, data }): Fault[] => {
      const { status, by, date, 'reviewed-by': reader } = data;
      const at = (field: string) => ({ file, path: [field] });
      const year = file.split('/').at(-2);
      return [
        ...(status === 'accepted' && reader === undefined
          ? [
              {
                at: at('status'),
                found: 'The note is accepted, and nobody is named who read it.',
                expected: 'reviewed-by has the initials of somebody else than its writer.',
                byHand: 'write reviewed-by, or set status to proposed',
              },
            ]
          : []),
        ...(status === 'proposed' && reader !== undefined
          ? [
              {
                at: at('reviewed-by'),
                found: `The note is only proposed, and ${reader} has read it already.`,
                expected: 'Whoever accepts or withdraws a note writes their initials with it.',
                byHand: 'take reviewed-by out, or set status to accepted or withdrawn',
              },
            ]
          : []),
        ...(reader === by
          ? [
              {
                at: at('reviewed-by'),
                found: `${by} wrote the note and read it.`,
                expected: 'Somebody else reads a note before it stands on the shelf.',
                byHand: 'let somebody else read it',
              },
            ]
          : []),
        ...(date > tomorrow
          ? [
              {
                at: at('date'),
                found: `${date} is still to come.`,
                expected: 'The day on which it was found.',
                byHand: 'write that day',
              },
            ]
          : []),
        ...(year !== undefined && /^\d{4}$/.test(year) && year !== date.slice(0, 4)
          ? [
              {
                at: at('date'),
                found: `The note is of ${date.slice(0, 4)} and lies under ${year}.`,
                expected: `Its file lies in notes/${date.slice(0, 4)}/.`,
                byHand: 'move the file, or mend the day',
              },
            ]
          : []),
      ];
    });
  },
};
