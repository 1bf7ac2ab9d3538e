/** Job cards as a file, and back. */
import { dayText } from '../../../model/day.ts';
import { finishedJobs } from '../../../model/finished-jobs.ts';
import { type Job, type JobCards, jobCardsSchema } from '../../../model/job.ts';
import { isNote } from '../../../model/note.ts';
import { idFromTitle } from '../../../model/note-file.ts';
import { saveFile } from '../../browser/save-file.ts';
import type { NoteDraft } from '../../note/note-draft.ts';
import { noteOf } from '../../note/page/note-drafts.ts';
import type { ImportResult, PackedPicture } from '../job-transfer.ts';

/** Cards and their pictures, with the notes that are ready and not handed over yet. */
export function exported(
  jobs: readonly Job[],
  drafts: readonly NoteDraft[],
  pictures: readonly PackedPicture[] = [],
): string {
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
    ...(pictures.length > 0 && { pictures: [...pictures] }),
  };
  return `${JSON.stringify(cards, null, 2)}\n`;
}

/** Saves finished jobs for the counts, without anything of the customer. @returns what was saved, in words */
export function saveFinished(jobs: readonly Job[]): string {
  const finished = finishedJobs(jobs);
  const count = finished.jobs.length;
  if (count === 0)
    return 'No card can be counted yet: a job counts once it is finished and its cause is proven.';
  saveFile(
    `finished-jobs-${dayText(new Date())}.json`,
    `${JSON.stringify(finished, null, 2)}\n`,
    'application/json',
  );
  return `${count === 1 ? 'One finished job' : `${count} finished jobs`} saved: complaint, cause, answers and what was measured on the vehicle, nothing of the customer or the plate. npm run take-in counts each once.`;
}

/** Cards from a file, checked whole: all of them, or a sentence that says why none. */
export function imported(text: string): ImportResult {
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
  return { ok: true, jobs: parsed.data.jobs, pictures: parsed.data.pictures ?? [] };
}
