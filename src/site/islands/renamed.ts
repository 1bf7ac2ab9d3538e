/** The chosen vehicle's record was renamed: what this device keeps under an older id of it goes on under the one of now. */

import { isText } from '../browser/guards.ts';
import { forget, keep, kept, keptNames, keptText } from '../browser/storage.ts';
import type { KeptName } from '../browser/storage-names.ts';
import { isJob } from '../job/page/job-store.ts';
import { isDraft } from '../note/page/note-drafts.ts';
import '../browser/page-globals.ts';

/** Nobody has changed these things, so each keeps the moment of its last change. @returns whether anything was to be done */
function follow(): boolean {
  const { vehicle } = window.headertank;
  const { id, title, was = [] } = vehicle ?? {};
  if (id === undefined || title === undefined) return false;
  let followed = false;
  const keepNow = (name: KeptName, value: unknown) => {
    followed = keep(name, value) || followed;
  };
  if (was.includes(kept('vehicle', isText) ?? '')) keepNow('vehicle', id);
  for (const name of keptNames('job.')) {
    const job = kept(name, isJob);
    if (job?.vehicle && was.includes(job.vehicle.id)) keepNow(name, { ...job, vehicle: { id, title } });
  }
  for (const name of keptNames('note.')) {
    const draft = kept(name, isDraft);
    if (draft && was.includes(draft.vehicle)) keepNow(name, { ...draft, vehicle: id });
  }
  // A proof run that was begun since is the one that counts.
  for (const old of was) {
    const run = keptText(`proof.${old}`);
    if (run === undefined || keptText(`proof.${id}`) !== undefined) continue;
    keepNow(
      `proof.${id}`,
      kept(`proof.${old}`, (value): value is unknown => value !== undefined),
    );
    if (keptText(`proof.${id}`) !== undefined) forget(`proof.${old}`);
  }
  return followed;
}

function followAndTell(): void {
  if (!follow()) return;
  document.dispatchEvent(new CustomEvent('headertank:job'));
  document.dispatchEvent(new CustomEvent('headertank:change'));
}

document.addEventListener('headertank:change', followAndTell);
followAndTell();
