/** The styles of complaints in the search, asked for with the first search. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleStyle } from '../../after-build/bundle-style.ts';

export const GET: APIRoute = async () =>
  new Response(await bundleStyle([resolve('src/site/search/build/complaints.css')]), {
    headers: { 'content-type': 'text/css; charset=utf-8' },
  });
