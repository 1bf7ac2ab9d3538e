/** The complaints by where on the car they are noticed, in each place those first that come in most often. */
import type { Entry } from '../../library/shelf.ts';
import { type CarPlace, PLACES } from '../../model/symptom.ts';
import { symptomsByFrequency } from './symptom-groups.ts';

export interface PlaceList {
  id: CarPlace;
  name: string;
  members: Entry<'symptom'>[];
}

/** Places without a complaint are left out. */
export function symptomPlaces(): PlaceList[] {
  const symptoms = symptomsByFrequency();
  return (Object.keys(PLACES) as CarPlace[])
    .map((id) => ({
      id,
      name: PLACES[id],
      members: symptoms.filter(({ data }) => data['noticed-at'].includes(id)),
    }))
    .filter(({ members }) => members.length > 0);
}
