/** The call on the card: the counter's questions about its complaint, each with a field for the answer. */
import type { Job } from '../../../model/job.ts';
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { lastWalk } from '../../browser/storage.ts';
import { toldKey } from '../../walk/answers.ts';
import type { CallQuestions } from '../../walk/call-questions.ts';
import type { CardOnPage } from './card-on-page.ts';
import { newJob } from './new-job.ts';

const calls = new Map<string, CallQuestions>();
window.headertank.receiveCall = (call) => calls.set(call.id, call);

/** Characters of an answer. */
const LONGEST = 400;

/** Whether a card was begun by a walk about the same complaint and is nobody's yet: the call is about that car. */
export function isOfThisCall(job: Job | undefined, symptom: string): job is Job {
  if (!job || job.finished || job.complaint?.id !== symptom) return false;
  return [job.name, job.plate, job.customer, job.telephone].every((text) => (text ?? '') === '');
}

/**
 * A new card for a call.
 * @param symptom the complaint's id, as the address has it; '' for none yet
 * @param said the customer's words, as they were searched for
 * @param told what he has answered
 */
export async function cardForCall(symptom: string, said: string, told: Job['told']): Promise<Job> {
  const call = await callAbout(symptom);
  const { address = '', title = '' } = lastWalk() ?? {};
  const isLeft = symptom !== '' && address.startsWith(`symptoms/${symptom}.html`);
  const complaint = call ?? (isLeft ? { id: symptom, title } : undefined);
  return {
    ...newJob(),
    said,
    ...(told && told.length > 0 && { told }),
    ...(complaint && { complaint: { id: complaint.id, title: complaint.title } }),
  };
}

/**
 * What the customer has answered on the complaint's page.
 * @param fragment the answers, as the address has them; what is none of the questions' is left out
 */
export async function toldInCall(symptom: string, fragment: string): Promise<NonNullable<Job['told']>> {
  if (fragment === '') return [];
  const given = new URLSearchParams(fragment);
  const call = await callAbout(symptom);
  return (call?.ask ?? []).flatMap(({ id = '', question, answers = [] }) => {
    const answer = given.get(toldKey(symptom, id));
    return answers.some(({ is }) => is === answer) && answer !== null
      ? [{ key: `${symptom}.${id}`, asked: question, answer }]
      : [];
  });
}

/** Of two answers to one question the later stands. */
export function withAllTold(job: Job, told: NonNullable<Job['told']>): Job {
  const keys = new Set(told.map(({ key }) => key));
  return { ...job, told: [...(job.told ?? []).filter(({ key }) => !keys.has(key)), ...told] };
}

async function callAbout(symptom: string): Promise<CallQuestions | undefined> {
  if (!/^[a-z0-9-]+$/.test(symptom)) return undefined;
  if (!calls.has(symptom)) await loadScript(`../data/calls/${symptom}`).catch(() => undefined);
  return calls.get(symptom);
}

/** The questions, and the answers that the card has; those it has of another complaint stand below. */
export async function showCall(card: CardOnPage): Promise<void> {
  const place = card.place('.told-answers');
  const { id, complaint } = card.job;
  const call = complaint && (await callAbout(complaint.id));
  if (card.job.id !== id || place.contains(document.activeElement)) return;
  const told = card.job.told ?? [];
  const questions =
    call?.ask.map(({ id: own, question, tells }, at) => ({
      key: `${call.id}.${own ?? at}`,
      question,
      tells,
    })) ?? [];
  const rows = questions.map(({ key, question, tells }) => {
    const field = element('input', {
      type: 'text',
      id: `told-${key}`,
      maxlength: String(LONGEST),
      value: told.find((each) => each.key === key)?.answer ?? '',
      'aria-describedby': `tells-${key}`,
    });
    field.addEventListener(
      'input',
      () => void card.change((job) => withTold(job, key, question, field.value)),
    );
    return element(
      'div',
      { class: 'field' },
      element('label', { for: `told-${key}` }, question),
      field,
      element('p', { class: 'soft', id: `tells-${key}` }, tells),
    );
  });
  const others = told
    .filter(({ key }) => !questions.some((each) => each.key === key))
    .map(({ asked, answer }) =>
      element('li', {}, element('span', { class: 'soft' }, asked), ' ', element('b', {}, answer)),
    );
  place.replaceChildren(
    ...rows,
    ...(others.length > 0 ? [element('ul', { class: 'plain-list' }, ...others)] : []),
  );
  card.place('.has-told').hidden = rows.length + others.length === 0;
}

function withTold(job: Job, key: string, asked: string, typed: string): Job {
  const others = (job.told ?? []).filter((each) => each.key !== key);
  const answer = typed.slice(0, LONGEST);
  return {
    ...job,
    told: answer.trim() === '' ? others : [...others, { key, asked: asked.slice(0, LONGEST), answer }],
  };
}
