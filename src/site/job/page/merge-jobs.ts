/** Two states of one card, from two devices, made one: every entry of both, and nothing written over. */
import type { Job } from '../../../model/job.ts';
import { newId } from '../../browser/ids.ts';

/** Fields of words, with what they are called where both devices have written in them. */
const TEXTS = {
  name: 'Job',
  plate: 'Plate',
  distance: 'Odometer',
  customer: 'Customer',
  telephone: 'Telephone',
  wanted: 'Wanted back',
  limit: 'Limit of cost',
  agreed: 'Price agreed',
  said: 'The customer says',
  found: 'What we found',
  did: 'What we did',
  watch: 'What to watch',
} as const;
type TextName = keyof typeof TEXTS;

const NAMED = { vehicle: 'Vehicle', complaint: 'Complaint', proven: 'Proven' } as const;

/**
 * The card that is here with every entry of the other. Where both have something else in one place, what is here stays and a
 * remark keeps the other.
 */
export function mergedJobs(here: Job, other: Job): Job {
  const lost: string[] = [];
  const merged: Job = {
    ...other,
    ...here,
    opened: [here.opened, other.opened].sort()[0] ?? here.opened,
    ...textsOf(here, other, lost),
    ...namedOf(here, other, lost),
    answers: byKey(here.answers, other.answers, lost),
    readings: byId(here.readings, other.readings),
    litres: byId(here.litres, other.litres),
    torques: { ...other.torques, ...here.torques },
    remarks: byId(here.remarks, other.remarks),
    ...(here.told || other.told ? { told: byKey(here.told ?? [], other.told ?? [], lost) } : {}),
    ...(here.proofs || other.proofs ? { proofs: byId(here.proofs ?? [], other.proofs ?? []) } : {}),
    ...(here.pictures || other.pictures ? { pictures: byId(here.pictures ?? [], other.pictures ?? []) } : {}),
    ...(here.open || other.open ? { open: openOf(here.open ?? [], other.open ?? []) } : {}),
    ...(here.steps || other.steps ? { steps: stepsOf(here.steps ?? {}, other.steps ?? {}) } : {}),
    ...estimateOf(here, other),
  };
  const known = new Set(merged.remarks.map(({ text }) => text));
  const at = new Date().toISOString();
  const remarks = [...new Set(lost)]
    .filter((text) => !known.has(text))
    .map((text) => ({ id: newId('remark'), at, text: text.slice(0, 5000), private: true as const }));
  return { ...merged, remarks: [...merged.remarks, ...remarks] };
}

function textsOf(here: Job, other: Job, lost: string[]): Partial<Record<TextName, string>> {
  const names = Object.keys(TEXTS).filter((name): name is TextName => name in TEXTS);
  return Object.fromEntries(
    names.flatMap((name) => {
      const [own, others] = [here[name] ?? '', other[name] ?? ''];
      if (own !== '' && others !== '' && own !== others)
        lost.push(`The other device has for “${TEXTS[name]}”: ${others}`);
      const text = own === '' ? others : own;
      return here[name] === undefined && text === '' ? [] : [[name, text]];
    }),
  );
}

function namedOf(
  here: Job,
  other: Job,
  lost: string[],
): Partial<Pick<Job, 'vehicle' | 'complaint' | 'proven'>> {
  for (const name of ['vehicle', 'complaint', 'proven'] as const) {
    const theirs = other[name];
    if (here[name] && theirs && here[name].id !== theirs.id)
      lost.push(`The other device has for “${NAMED[name]}”: ${theirs.title}`);
  }
  const vehicle = here.vehicle ?? other.vehicle;
  const complaint = here.complaint ?? other.complaint;
  const proven = here.proven ?? other.proven;
  return { ...(vehicle && { vehicle }), ...(complaint && { complaint }), ...(proven && { proven }) };
}

type Answer = Job['answers'][number];

function byKey(here: readonly Answer[], other: readonly Answer[], lost: string[]): Answer[] {
  const own = new Map(here.map((each) => [each.key, each]));
  for (const { key, asked, answer } of other) {
    const mine = own.get(key);
    if (mine && mine.answer !== answer) lost.push(`The other device has for “${asked}”: ${answer}`);
  }
  return [...here, ...other.filter(({ key }) => !own.has(key))];
}

function byId<T extends { id: string; at: string }>(here: readonly T[], other: readonly T[]): T[] {
  const own = new Set(here.map(({ id }) => id));
  return [...here, ...other.filter(({ id }) => !own.has(id))].sort((a, b) => a.at.localeCompare(b.at));
}

type OpenItem = NonNullable<Job['open']>[number];

/** What one device has done is done. */
function openOf(here: readonly OpenItem[], other: readonly OpenItem[]): OpenItem[] {
  const theirs = new Map(other.map((each) => [each.id, each]));
  return byId(
    here.map((each) => (each.done ? each : (theirs.get(each.id) ?? each))),
    other,
  );
}

type Steps = NonNullable<Job['steps']>;

function stepsOf(here: Steps, other: Steps): Steps {
  const ids = [...new Set([...Object.keys(here), ...Object.keys(other)])];
  return Object.fromEntries(
    ids.map((id) => {
      const [own, theirs] = [here[id]?.done ?? [], other[id]?.done ?? []];
      const ticked = new Set(own.map(({ step }) => step));
      const done = [...own, ...theirs.filter(({ step }) => !ticked.has(step))].sort(
        (a, b) => a.step - b.step,
      );
      return [id, { title: here[id]?.title ?? other[id]?.title ?? '', done }];
    }),
  );
}

/** The estimate told last stands. */
function estimateOf({ estimate: own }: Job, { estimate: theirs }: Job): Pick<Job, 'estimate'> {
  const estimate = own && theirs ? (own.at < theirs.at ? theirs : own) : (own ?? theirs);
  return estimate ? { estimate } : {};
}
