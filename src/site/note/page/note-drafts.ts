/** Notes that are being written, or are written and not yet handed over, kept on this device. */

import { dayText } from '../../../model/day.ts';
import type { UnfinishedNote } from '../../../model/note.ts';
import { DeviceStore, isMoment } from '../../browser/device-store.ts';
import { newId } from '../../browser/ids.ts';
import type { DraftField, NoteDraft } from '../note-draft.ts';

export const DRAFT_FIELDS: readonly DraftField[] = [
  'title',
  'by',
  'date',
  'vehicle',
  'symptom',
  'cause',
  'procedure',
  'text',
  'known',
  'source',
  'figure',
  'is',
  'is-from',
];

/** Enough of a draft to be shown. */
export function isDraft(value: unknown): value is NoteDraft {
  if (typeof value !== 'object' || value === null) return false;
  const draft = value as Record<string, unknown>;
  return (
    [...DRAFT_FIELDS, 'id'].every((name) => typeof draft[name] === 'string') &&
    // What was never kept has no moment yet.
    [draft.changed, draft.sent].every((moment) => moment === '' || isMoment(moment))
  );
}

export const drafts = new DeviceStore<NoteDraft>('note.', isDraft);

/** An empty note of today with an id of its own; what was measured here is the usual source. */
export function newDraft(): NoteDraft {
  const empty = Object.fromEntries(DRAFT_FIELDS.map((name) => [name, ''])) as Record<DraftField, string>;
  return { ...empty, id: newId('note'), changed: '', sent: '', known: 'measured', date: today() };
}

/** The day here, not in Greenwich. */
function today(): string {
  return dayText(new Date());
}

/** The note a draft makes: not yet checked, and without the fields left empty. */
export function noteOf(draft: NoteDraft): UnfinishedNote {
  const known = draft.known;
  const source = known === 'measured' || known === 'manual' ? { [known]: draft.source.trim() } : known;
  const corrects =
    draft.figure === ''
      ? undefined
      : { figure: draft.figure, is: draft.is.trim(), source: draft['is-from'].trim() };
  const filled = {
    title: draft.title.trim(),
    by: draft.by.trim().toUpperCase(),
    date: draft.date,
    vehicle: draft.vehicle,
    symptom: draft.symptom,
    cause: draft.cause,
    procedure: draft.procedure,
    text: draft.text.replaceAll('\r\n', '\n').trim(),
    corrects,
    status: 'proposed',
    sources: [source],
    reviewed: draft.date,
  };
  return Object.fromEntries(
    Object.entries(filled).filter(([, value]) => value !== undefined && value !== ''),
  );
}
