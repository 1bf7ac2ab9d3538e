/** The shelf's own rules for a note: loaded when somebody begins to write, since the checker weighs more than the form. */
import { checkNote } from '../../library/check-note.ts';
import { isNote } from '../../model/note.ts';
import '../browser/page-globals.ts';

window.headertank.noteCheck = (id, note) => ({
  faults: checkNote(id, note),
  ready: isNote(note) ? note : undefined,
});
