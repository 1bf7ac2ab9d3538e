/** The way from a walk onto the job card as a script of its own: no page names it in a tag, the walk loads it when it is taken. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleScript } from '../../after-build/bundle-script.ts';

export const GET: APIRoute = async () =>
  new Response(await bundleScript(resolve('src/site/islands/hand-over.ts'), { minify: true }), {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
