/** All that the search answers complaints from, as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import { makeComplaintData } from '../../search/build/make-complaint-data.ts';

export const GET: APIRoute = () =>
  new Response(`headertankComplaints=${JSON.stringify(makeComplaintData())};\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
