/** The styles of running timers, asked for by their script. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleStyle } from '../../after-build/bundle-style.ts';

export const GET: APIRoute = async () =>
  new Response(await bundleStyle([resolve('src/site/timer/timers.css')]), {
    headers: { 'content-type': 'text/css; charset=utf-8' },
  });
