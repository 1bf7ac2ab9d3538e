/** What one cause asks for, as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import type { Entry } from '../../../../library/shelf.ts';
import { planOf } from '../../../job/build/make-job-plan.ts';
import { dataPaths } from '../../../shelf/record-pages.ts';

export const getStaticPaths = () => dataPaths('cause');

export const GET: APIRoute<{ entry: Entry<'cause'> }> = ({ props }) =>
  new Response(`headertank.receivePlan(${JSON.stringify(planOf(props.entry.id))});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
