/** What stands over the work on a cause: where nothing is at fault, nothing is repaired or taken apart. */

export interface CauseHeadings {
  recheck: string;
  repair: string;
  whileOpen: string;
  comesBack: string;
}

/** @param part the cause's part; `none` when nothing is at fault */
export function causeHeadings(part: string): CauseHeadings {
  return part === 'none'
    ? {
        recheck: 'It is this when',
        repair: 'What to do',
        whileOpen: 'While it is here',
        comesBack: 'What comes back',
      }
    : {
        recheck: 'Before a part is bought',
        repair: 'Repair',
        whileOpen: 'While it is apart',
        comesBack: 'If only the part is changed',
      };
}
