/** The script of what is known so far, asked for by a walk when it is opened. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleScript } from '../../after-build/bundle-script.ts';

export const GET: APIRoute = async () =>
  new Response(await bundleScript(resolve('src/site/islands/known-so-far.ts'), { minify: true }), {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
