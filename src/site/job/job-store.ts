/** Job cards on this device. Needs no schema: a card is checked whole when it is exported or imported. */
import type { Job } from '../../model/job.ts';
import { forget, keep, kept } from '../keep.ts';
import { DeviceStore } from '../kept/device-store.ts';

const isText = (value: unknown): value is string => typeof value === 'string';

/** Enough of a card to be shown: what an older or a damaged one lacks would break the page. */
export function isJob(value: unknown): value is Job {
  if (typeof value !== 'object' || value === null) return false;
  const job = value as Record<string, unknown>;
  const texts = ['id', 'opened', 'changed', 'name', 'plate', 'distance', 'said', 'found', 'did', 'watch'];
  const lists = ['answers', 'readings', 'litres', 'remarks'];
  return (
    texts.every((name) => isText(job[name])) &&
    lists.every((name) => Array.isArray(job[name])) &&
    typeof job.torques === 'object' &&
    job.torques !== null
  );
}

export const jobs = new DeviceStore<Job>('job.', isJob);

/** The card that walks and calculators put things on. */
export function openJobId(): string | undefined {
  const id = kept('job-open', isText);
  return id !== undefined && jobs.get(id) ? id : undefined;
}

export function setOpenJob(id: string | undefined): void {
  if (id === undefined) forget('job-open');
  else keep('job-open', id);
}
