/** What of a card stands on the customer's page: what was marked, and of the rest what is a value and not a command. */
import type { Job } from '../../../model/job.ts';

/** Longest value of a reading that the customer reads unasked; a calculator's sentence is for the bay. */
const LONGEST_VALUE = 40;

/** Whether a reading goes to the customer. A sentence is an answer, a warning or a command, and none of his. */
export function isForCustomer({ value, customer }: Job['readings'][number]): boolean {
  return customer ?? (value.length <= LONGEST_VALUE && !/[.!?]\s*$|[.!?] \p{Lu}/u.test(value));
}

/** The readings for the customer: of each kind the last. */
export function readingsForCustomer(readings: Job['readings']): Job['readings'] {
  const last = new Map(
    readings.filter(isForCustomer).map((reading) => [reading.what.trim().toLowerCase(), reading]),
  );
  return [...last.values()];
}

type Proof = NonNullable<Job['proofs']>[number];

export interface BeforeAndAfter {
  what: string;
  wanted: string;
  before: string;
  after: string;
}

/** The last run before and the last after, side by side; undefined while there is neither. */
export function beforeAndAfter(proofs: Job['proofs']): BeforeAndAfter[] | undefined {
  const last = (when: Proof['when']) => proofs?.filter((each) => each.when === when).at(-1);
  const [before, after] = [last('before'), last('after')];
  if (!before && !after) return undefined;
  const names = new Set([...(before?.rows ?? []), ...(after?.rows ?? [])].map(({ what }) => what));
  return [...names].map((what) => {
    const [was, is] = [before, after].map((run) => run?.rows.find((row) => row.what === what));
    return {
      what,
      wanted: is?.wanted ?? was?.wanted ?? '',
      before: was?.value ?? '',
      after: is?.value ?? '',
    };
  });
}

/** What was agreed about money, in lines for the customer. Without parts it says so. */
export function priceLines({ agreed, estimate, limit }: Job): string[] {
  const told = estimate && estimate.price !== '' ? [priceSentence(estimate)] : [];
  return [
    ...(agreed?.trim() ? [`Agreed: ${agreed.trim()}.`] : told),
    ...(limit?.trim() ? [`Without a call no more than ${limit.trim()}.`] : []),
  ];
}

function priceSentence({ price, most, parts, tax }: NonNullable<Job['estimate']>): string {
  const upTo = most !== '' && most !== price ? `, at most ${most}` : '';
  const withParts = parts === undefined ? 'without parts' : `parts ${parts} included`;
  const withTax = tax === undefined ? '' : `, tax of ${tax} included`;
  return `Estimate: ${price}${upTo}, ${withParts}${withTax}.`;
}

/** What was done, as a draft: the work whose steps were ticked, the joints tightened, the coolant filled. */
export function didDraft({ steps, torques }: Job): string {
  const work = Object.values(steps ?? {}).map(({ title }) => `${title}.`);
  const joints = Object.values(torques).map(({ what, figure }) => `${lowerFirst(what)} ${figure}`);
  const tightened = joints.length > 0 ? [`Tightened to the figure: ${joints.join(', ')}.`] : [];
  return [...work, ...tightened].join('\n');
}

function lowerFirst(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}
