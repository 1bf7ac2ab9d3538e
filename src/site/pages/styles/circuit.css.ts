/** The styles of a circuit that a script draws into a page: asked for with it. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleStyle } from '../../after-build/bundle-style.ts';

export const GET: APIRoute = async () =>
  new Response(
    await bundleStyle([
      resolve('src/site/drawings/drawings.css'),
      resolve('src/site/drawings/circuit.css'),
      resolve('src/site/drawings/circuit-places.css'),
    ]),
    { headers: { 'content-type': 'text/css; charset=utf-8' } },
  );
