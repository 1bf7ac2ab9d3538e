/** Job cards on this device. Needs no schema: a card is checked whole when it is exported or imported. */
import type { Job } from '../../../model/job.ts';
import { DeviceStore, isMoment } from '../../browser/device-store.ts';
import { type Fields, isFields, isText } from '../../browser/guards.ts';
import { keepOpenJob, type OpenJob, openJob } from './open-job.ts';

const hasTexts = (value: unknown, ...names: string[]): value is Fields =>
  isFields(value) && names.every((name) => isText(value[name]));
const isMissingOr = (value: unknown, is: (value: unknown) => boolean) => value === undefined || is(value);
const isNamed = (value: unknown) => hasTexts(value, 'id', 'title');
const isListOf = (value: unknown, is: (value: unknown) => boolean) => Array.isArray(value) && value.every(is);

/** Enough of a card to be shown: what an older or a damaged one lacks would break the page. */
export function isJob(value: unknown): value is Job {
  return (
    hasTexts(value, 'id', 'name', 'plate', 'distance', 'said', 'found', 'did', 'watch') &&
    isMoment(value.opened) &&
    isMoment(value.changed) &&
    [value.vehicle, value.complaint, value.proven].every((each) => isMissingOr(each, isNamed)) &&
    isListOf(value.answers, (each) => hasTexts(each, 'key', 'asked', 'answer')) &&
    isListOf(value.readings, (each) => hasTexts(each, 'id', 'what', 'value') && isMoment(each.at)) &&
    isListOf(value.litres, isLitres) &&
    isListOf(value.remarks, (each) => hasTexts(each, 'id', 'text')) &&
    isFields(value.torques) &&
    Object.values(value.torques).every((each) => hasTexts(each, 'what', 'figure') && isMoment(each.at)) &&
    isMissingOr(value.steps, (steps) => isFields(steps) && Object.values(steps).every(isStepsOf)) &&
    isMissingOr(value.open, (open) => isListOf(open, isOpenItem)) &&
    [value.customer, value.telephone, value.wanted, value.limit, value.agreed].every((each) =>
      isMissingOr(each, isText),
    ) &&
    isMissingOr(value.finished, isMoment) &&
    isMissingOr(value.told, (told) => isListOf(told, (each) => hasTexts(each, 'key', 'asked', 'answer'))) &&
    isMissingOr(value.estimate, (each) => hasTexts(each, 'book', 'price', 'most')) &&
    isMissingOr(value.proofs, (proofs) => isListOf(proofs, isProof)) &&
    isMissingOr(value.pictures, (pictures) => isListOf(pictures, isPicture)) &&
    isMissingOr(value.drafted, isText) &&
    isMissingOr(value['drafted-words'], (draft) => hasTexts(draft, 'found', 'watch'))
  );
}

function isLitres(value: unknown): boolean {
  return hasTexts(value, 'id', 'way') && isMoment(value.at) && Number.isFinite(value.litres);
}

function isStepsOf(value: unknown): boolean {
  return (
    hasTexts(value, 'title') &&
    isListOf(value.done, (each) => hasTexts(each, 'what') && Number.isFinite(each.step))
  );
}

function isProof(value: unknown): boolean {
  return (
    hasTexts(value, 'id', 'when', 'says') &&
    isMoment(value.at) &&
    isListOf(value.rows, (each) => hasTexts(each, 'what', 'value', 'wanted', 'passed'))
  );
}

function isPicture(value: unknown): boolean {
  return hasTexts(value, 'id', 'what') && isMoment(value.at) && Number.isFinite(value.wide);
}

function isOpenItem(value: unknown): boolean {
  return hasTexts(value, 'id', 'what') && isMissingOr(value.done, (done) => hasTexts(done, 'value'));
}

export const jobs = new DeviceStore<Job>('job.', isJob);

/** The card that walks and calculators put things on; known once the cards are read. */
export function openJobId(): string | undefined {
  const id = openJob()?.id;
  return id !== undefined && jobs.get(id) ? id : undefined;
}

/** Opens a card for walks and calculators, or none, and tells the page. */
export function setOpenJob(id: string | undefined): void {
  const job = id === undefined ? undefined : jobs.get(id);
  keepOpenJob(job && briefOf(job));
  document.dispatchEvent(new CustomEvent('headertank:job'));
}

/** After a change of the open card: what every page says of it follows. */
function followOpen(): void {
  const open = openJob();
  const job = open && jobs.get(open.id);
  if (!job || JSON.stringify(briefOf(job)) === JSON.stringify(open)) return;
  keepOpenJob(briefOf(job));
  document.dispatchEvent(new CustomEvent('headertank:job'));
}

/** What every page says of a card that is open. */
export function briefOf({ id, name, plate, vehicle }: Job): OpenJob {
  return { id, ...(name && { name }), ...(plate && { plate }), ...(vehicle && { vehicle: vehicle.title }) };
}

jobs.whenChanged(followOpen);
