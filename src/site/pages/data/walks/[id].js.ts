/** What a walk wants from the first answer on, as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import type { Entry } from '../../../../library/shelf.ts';
import { repairMinutesOf } from '../../../job/build/repair-minutes.ts';
import { dataPaths } from '../../../shelf/record-pages.ts';
import { commonestLayout } from '../../../walk/build/booking.ts';
import { walkViewOf } from '../../../walk/build/walk-view.ts';
import type { WalkTexts } from '../../../walk/walk-data.ts';

export const getStaticPaths = () => dataPaths('symptom');

export const GET: APIRoute<{ entry: Entry<'symptom'> }> = ({ props }) =>
  new Response(`headertank.receiveWalkTexts(${JSON.stringify(textsOf(props.entry.id))});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });

function textsOf(symptom: string): WalkTexts {
  const { texts, causes } = walkViewOf(symptom);
  return { ...texts, repairs: repairMinutesOf(causes, commonestLayout(symptom)) };
}
