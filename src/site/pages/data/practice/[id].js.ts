/** The cases of one complaint, as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import { practicePack, practisedSymptoms } from '../../../practice/build/make-practice.ts';

export const getStaticPaths = () => practisedSymptoms().map((id) => ({ params: { id } }));

export const GET: APIRoute = ({ params }) =>
  new Response(`headertank.receivePractice?.(${JSON.stringify(practicePack(params.id ?? ''))});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
