/** Job cards as a file, and back. */
import { type Job, type JobCards, jobCardsSchema, jobSchema } from '../../../model/job.ts';
import { LONGEST_NAME } from '../../../model/job-limits.ts';
import { isNote } from '../../../model/note.ts';
import { idFromTitle } from '../../../model/note-file.ts';
import { newId } from '../../browser/ids.ts';
import type { NoteDraft } from '../../note/note-draft.ts';
import { noteOf } from '../../note/page/note-drafts.ts';
import type { Imported } from '../job-transfer.ts';

/** Cards, with the notes that are ready and not handed over yet. */
export function exported(jobs: readonly Job[], drafts: readonly NoteDraft[]): string {
  const notes = drafts
    .filter(({ sent }) => sent === '')
    .map(noteOf)
    .filter(isNote)
    .map((note) => ({ id: idFromTitle(note.title), note }))
    .filter(({ id }, at, all) => id !== '' && all.findIndex((other) => other.id === id) === at);
  const cards: JobCards = {
    form: 'headertank job cards',
    version: 1,
    exported: new Date().toISOString(),
    jobs: [...jobs],
    notes,
  };
  return `${JSON.stringify(cards, null, 2)}\n`;
}

/**
 * Cards from a file.
 * @param has the card kept under an id, if there is one
 * @returns the cards to keep: those that are here already, the same, are left out; one that differs gets a new id
 */
export function imported(text: string, has: (id: string) => Job | undefined): Imported {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { ok: false, says: 'This file is cut short or is no JSON. Export the cards again.' };
  }
  const parsed = jobCardsSchema.safeParse(data);
  if (!parsed.success) {
    const { path = [] } = parsed.error.issues[0] ?? {};
    const where = path.length > 0 ? ` What does not fit first is at “${path.join(' ')}”.` : '';
    return {
      ok: false,
      says: `This is no file of job cards as the site exports them. Nothing was taken in.${where}`,
    };
  }
  return {
    ok: true,
    jobs: parsed.data.jobs.flatMap((job) => {
      const here = has(job.id);
      if (!here) return [job];
      if (isSame(here, job)) return [];
      return [{ ...job, id: newId('job'), name: importedName(job) }];
    }),
  };
}

/** Marked, and no longer than a name may be, so that the card can be exported again. */
function importedName({ name, plate }: Job): string {
  const mark = ' (imported)';
  return `${(name || plate).slice(0, LONGEST_NAME - mark.length)}${mark}`.trim();
}

/** The same but for the moment it was last kept. */
function isSame(here: Job, other: Job): boolean {
  const plain = (job: Job) => JSON.stringify({ ...jobSchema.safeParse(job).data, changed: '' });
  return plain(here) === plain(other);
}
