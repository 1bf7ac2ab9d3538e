/** The complaints by what is noticed, in each group those first that come in most often. */
import { PRIOR_WORDS } from '../../diagnosis/words.ts';
import type { Entry } from '../../library/shelf.ts';
import { SYMPTOM_GROUPS } from '../../model/symptom.ts';
import { entriesOf } from './record-pages.ts';

const often = ({ data }: Entry<'symptom'>) => PRIOR_WORDS[data['comes-in'] ?? 'occasional'];

/** All complaints, those that come in most often first. */
export function symptomsByFrequency(): Entry<'symptom'>[] {
  return entriesOf('symptom').sort((a, b) => often(b) - often(a));
}

/** Complaints by what is noticed, those that come in most often first. */
export function symptomGroups(): { name: string; members: Entry<'symptom'>[] }[] {
  const symptoms = symptomsByFrequency();
  return Object.entries(SYMPTOM_GROUPS)
    .map(([key, name]) => ({ name, members: symptoms.filter(({ data }) => data.group === key) }))
    .filter(({ members }) => members.length > 0);
}
