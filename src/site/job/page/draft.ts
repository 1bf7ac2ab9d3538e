/** Words for the customer that the site has drafted, and whether they still stand as they were drafted. */
import type { Job } from '../../../model/job.ts';
import type { Draft } from '../card-parts.ts';

/**
 * The card with what was drafted on it. Cards of before kept from which cause the words were drafted, but not the words: nothing
 * on them tells a draft that nobody touched from one that somebody changed. Words that stand as the record would have them
 * drafted today, in any units and with the vehicle's figures or the general ones, are such a draft. Others may be somebody's own,
 * or a draft of an earlier wording; nobody can tell, so they stay when their cause goes.
 * @param wordings the cause's words in every way they may have been drafted
 */
export function withKnownDraft(job: Job, wordings: readonly Draft[]): Job {
  if (job.drafted === undefined || job['drafted-words']) return job;
  const drafted = (name: 'found' | 'watch') =>
    wordings.find((each) => each[name] === job[name])?.[name] ?? '';
  const words = { found: drafted('found'), watch: drafted('watch') };
  return words.found === '' && words.watch === '' ? job : { ...job, 'drafted-words': words };
}

/** The card without what was drafted. Words somebody has changed are his and stay. */
export function withoutDraft({ drafted: _, 'drafted-words': draft, ...job }: Job): Job {
  const undrafted = (name: keyof Draft) => (job[name] === draft?.[name] ? '' : job[name]);
  return { ...job, found: undrafted('found'), watch: undrafted('watch'), did: undrafted('did') };
}
