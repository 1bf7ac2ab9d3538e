/** The chosen vehicle's record was renamed: what this device keeps under an older id of it goes on under the one of now. */

import { isText } from '../browser/guards.ts';
import { keeper } from '../browser/open-keeper.ts';
import { forget, keep, kept, storedText } from '../browser/storage.ts';
import type { DatabaseName } from '../browser/storage-names.ts';
import { isJob, jobs } from '../job/page/job-store.ts';
import { drafts, isDraft } from '../note/page/note-drafts.ts';
import '../browser/page-globals.ts';

/** @returns whether anything was to be done */
async function follow(): Promise<boolean> {
  const { vehicle } = window.headertank;
  const { id, title, was = [] } = vehicle ?? {};
  if (id === undefined || title === undefined) return false;
  let followed = false;
  if (was.includes(kept('vehicle', isText) ?? '')) followed = keep('vehicle', id) || followed;
  await Promise.all([jobs.ready(), drafts.ready()]);
  const isOld = (each: string | undefined) => was.includes(each ?? '');
  for (const job of jobs.list().filter(({ vehicle: of }) => isOld(of?.id)))
    followed =
      (await rewrite(`job.${job.id}`, (now) => (isJob(now) ? { ...now, vehicle: { id, title } } : now))) ||
      followed;
  for (const draft of drafts.list().filter(({ vehicle: of }) => isOld(of)))
    followed =
      (await rewrite(`note.${draft.id}`, (now) => (isDraft(now) ? { ...now, vehicle: id } : now))) ||
      followed;
  // A proof run that was begun since is the one that counts.
  for (const old of was) {
    const run = storedText(`proof.${old}`);
    if (run === undefined || storedText(`proof.${id}`) !== undefined) continue;
    const all = (value: unknown): value is unknown => value !== undefined;
    followed = keep(`proof.${id}`, kept(`proof.${old}`, all)) || followed;
    if (storedText(`proof.${id}`) !== undefined) forget(`proof.${old}`);
  }
  return followed;
}

/** Nobody has changed the thing, so it keeps the moment of its last change. @returns whether the device took it */
async function rewrite(name: DatabaseName, change: (now: unknown) => unknown): Promise<boolean> {
  const place = await keeper();
  return place.change(name, change).then(
    () => true,
    () => false,
  );
}

async function followAndTell(): Promise<void> {
  if (!(await follow())) return;
  await Promise.all([jobs.reload(), drafts.reload()]);
  document.dispatchEvent(new CustomEvent('headertank:job'));
  document.dispatchEvent(new CustomEvent('headertank:change'));
}

document.addEventListener('headertank:change', () => void followAndTell());
void followAndTell();
