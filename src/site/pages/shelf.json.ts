/** Every record of the shelf as one file, for other programs. */
import type { APIRoute } from 'astro';
import { SHELF_FILE } from '../about/whole-shelf-file.ts';

export const GET: APIRoute = () =>
  new Response(SHELF_FILE, { headers: { 'content-type': 'application/json; charset=utf-8' } });
