/** The open card as the device keeps it, for the lines of every page: the store of all cards weighs more than they need. */
import { kept } from '../../browser/storage.ts';

type Fields = Record<string, unknown>;

/** Whether there is anything in it. */
export const isText = (value: unknown): value is string => typeof value === 'string' && value !== '';
/** Whether it has fields, whatever is in them. */
export const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** The card, or undefined when none is open or it is gone. */
export function openJob(): Fields | undefined {
  const open = kept('job-open', isText);
  return open === undefined ? undefined : kept(`job.${open}`, isFields);
}
