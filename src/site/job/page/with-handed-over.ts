/** What becomes of a card when a walk or a calculator hands something to it. */
import type { Job } from '../../../model/job.ts';
import { newId } from '../../browser/ids.ts';
import type { HandedOver } from '../handed-over.ts';
import { withoutDraft } from './draft.ts';
import { withFollowUp } from './follow-up.ts';
import { litreSums, litresSentence, rounded } from './litres.ts';

/** The card with it. What the card had stays, but for what the walk now says otherwise. */
export function withHandedOver(job: Job, handed: HandedOver, vehicle: Job['vehicle']): Job {
  const answers = handed.answers ?? [];
  const kept = withProven(job, handed);
  return {
    ...kept,
    ...(vehicle && { vehicle }),
    ...(handed.complaint && { complaint: handed.complaint }),
    remarks: withComplaintBefore(job, handed.complaint),
    answers: withAnswers(job.answers, answers),
    ...(handed.told && handed.told.length > 0 && { told: withAnswers(job.told ?? [], handed.told) }),
    readings: withReading(job.readings, handed.reading),
    ...(handed.proof && { proofs: withProof(job.proofs ?? [], handed.proof) }),
    ...(handed.estimate && { estimate: { at: new Date().toISOString(), ...handed.estimate } }),
    ...(handed.litres && accounted(job, handed.litres)),
  };
}

/**
 * The walk of the card's complaint says what its answers prove now: a cause that is not proven after all, or another one, takes
 * with it what was drafted for the customer. A walk that has come less far, or another one, leaves what was proven.
 */
function withProven(job: Job, { complaint, proven, answers = [] }: HandedOver): Job {
  const before = job.proven;
  const isSameWalk = answers.length > 0 && complaint?.id === job.complaint?.id;
  const now = isSameWalk && saysMore(job.answers, answers) ? proven : (proven ?? before);
  const { proven: _, ...rest } = before?.id === now?.id ? job : withoutDraft(job);
  return { ...rest, ...(now && { proven: now }) };
}

/** Whether answers change one that is there, or hold all of them and others besides. */
function saysMore(before: Job['answers'], given: Job['answers']): boolean {
  const there = new Map(before.map(({ key, answer }) => [key, answer]));
  const isChanged = given.some(({ key, answer }) => there.has(key) && there.get(key) !== answer);
  const keys = new Set(given.map(({ key }) => key));
  return isChanged || [...there.keys()].every((key) => keys.has(key));
}

/** One visit, two complaints: the card is headed by the later, and the earlier stands in a remark. */
function withComplaintBefore(
  { complaint, proven, remarks }: Job,
  given: HandedOver['complaint'],
): Job['remarks'] {
  if (!complaint || !given || complaint.id === given.id) return remarks;
  const text = `Looked into as well: ${complaint.title}.${proven ? ` Proven: ${proven.title}.` : ''}`;
  if (remarks.some((remark) => remark.text === text)) return remarks;
  return [...remarks, { id: newId('remark'), at: new Date().toISOString(), text }];
}

/** Handed over twice it stands there once; a second reading of the same thing is kept beside the first. */
function withReading(before: Job['readings'], given: HandedOver['reading']): Job['readings'] {
  const isThere = before.some(({ what, value }) => what === given?.what && value === given.value);
  if (!given || isThere) return before;
  return [...before, { id: newId('reading'), at: new Date().toISOString(), ...given }];
}

/** The same run handed over twice stands there once. */
function withProof(
  before: NonNullable<Job['proofs']>,
  given: NonNullable<HandedOver['proof']>,
): Job['proofs'] {
  const isSame = ({ when, rows, says }: NonNullable<HandedOver['proof']>) =>
    JSON.stringify([when, rows, says]) === JSON.stringify([given.when, given.rows, given.says]);
  return before.some(isSame)
    ? before
    : [...before, { id: newId('proof'), at: new Date().toISOString(), ...given }];
}

/**
 * The card's litres with the sums of a fill account: one account, not two. More than the card has is an entry of its own; less
 * takes the place of what was there, which a remark keeps.
 */
function accounted(job: Job, { drained, filled }: NonNullable<HandedOver['litres']>) {
  const at = new Date().toISOString();
  const sums = litreSums(job.litres);
  const was = litresSentence(job.litres);
  const isLess = drained < sums.drained || filled < sums.filled;
  const kept = isLess ? [] : job.litres;
  const base = isLess ? { drained: 0, filled: 0 } : sums;
  const entry = (way: 'drained' | 'filled', litres: number) =>
    litres > 0 ? [{ id: newId('litres'), at, way, litres: rounded(litres) }] : [];
  const litres = [
    ...kept,
    ...entry('drained', drained - base.drained),
    ...entry('filled', filled - base.filled),
  ];
  const { open = [] } = withFollowUp({ ...job, litres });
  if (!isLess || was === undefined) return { litres, open };
  const remark = { id: newId('remark'), at, text: `Litres as they stood before the fill account: ${was}` };
  return { litres, open, remarks: [...job.remarks, remark] };
}

/** Of two answers to one question the later stands. */
function withAnswers(before: Job['answers'], given: Job['answers']): Job['answers'] {
  const keys = new Set(given.map(({ key }) => key));
  return [...before.filter(({ key }) => !keys.has(key)), ...given];
}
