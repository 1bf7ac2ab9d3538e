/** What stands over the work on a cause: where nothing is at fault, nothing is repaired or taken apart. */
import type { System } from '../../../model/cause.ts';

export interface CauseHeadings {
  recheck: string;
  repair: string;
  whileOpen: string;
  comesBack: string;
}

/** The headings of a cause of this system. */
export function causeHeadings(system: System): CauseHeadings {
  return system === 'nothing at fault'
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
