/** Job cards on this device. Needs no schema: a card is checked whole when it is exported or imported. */
import type { Job } from '../../../model/job.ts';
import { DeviceStore, isMoment } from '../../browser/device-store.ts';
import { isText } from '../../browser/guards.ts';
import { forget, keep, kept } from '../../browser/storage.ts';

type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;
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

function isOpenItem(value: unknown): boolean {
  return hasTexts(value, 'id', 'what') && isMissingOr(value.done, (done) => hasTexts(done, 'value'));
}

export const jobs = new DeviceStore<Job>('job.', isJob);

/** The card that walks and calculators put things on. */
export function openJobId(): string | undefined {
  const id = kept('job-open', isText);
  return id !== undefined && jobs.get(id) ? id : undefined;
}

/** Opens a card for walks and calculators, or none. */
export function setOpenJob(id: string | undefined): void {
  if (id === undefined) forget('job-open');
  else keep('job-open', id);
}
