/** Which cases can be practised, as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import { practiceIndex } from '../../practice/build/make-practice.ts';

export const GET: APIRoute = () =>
  new Response(`headertank.receivePracticeIndex?.(${JSON.stringify(practiceIndex())});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
