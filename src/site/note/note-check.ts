/** What the note form asks of scripts/note-check.js. */
import type { NoteFault } from '../../library/check-note.ts';
import type { Note, UnfinishedNote } from '../../model/note.ts';

/** What is wrong with a note, and the note itself once nothing is. */
export type NoteCheck = (
  id: string,
  note: UnfinishedNote,
) => { faults: NoteFault[]; ready: Note | undefined };
