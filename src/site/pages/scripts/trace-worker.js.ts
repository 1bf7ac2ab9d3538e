/** The trace reader as a script of its own: no page names it in a tag, the road test's page starts it as a worker. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleScript } from '../../after-build/bundle-script.ts';

export const GET: APIRoute = async () =>
  new Response(await bundleScript(resolve('src/site/islands/trace-worker.ts'), { minify: true }), {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
