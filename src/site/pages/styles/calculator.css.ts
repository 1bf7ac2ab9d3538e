/** The styles of a calculator with its drawings, asked for by one that is opened inside a step. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { bundleStyle } from '../../after-build/bundle-style.ts';

const FILES = [
  'calculator/build/calculator.css',
  'drawings/drawings.css',
  'drawings/curve.css',
  'drawings/ladder.css',
];

export const GET: APIRoute = async () =>
  new Response(await bundleStyle(FILES.map((file) => resolve('src/site', file))), {
    headers: { 'content-type': 'text/css; charset=utf-8' },
  });
