/** Cards as a file and back: what the job card asks of scripts/job-transfer.js. */
import type { Job } from '../../model/job.ts';
import type { NoteDraft } from '../note/note-draft.ts';

export type Imported = { ok: true; jobs: Job[] } | { ok: false; says: string };

export interface JobTransfer {
  /** Cards, with the notes that are ready and not handed over yet. */
  exported(jobs: readonly Job[], drafts: readonly NoteDraft[]): string;
  /**
   * Cards from a file.
   * @param has the card kept under an id, if there is one
   * @returns the cards to keep: those that are here already, the same, are left out; one that differs gets a new id
   */
  imported(text: string, has: (id: string) => Job | undefined): Imported;
}
