/** JSON Schema of `shelf.json`, for other programs. */
import type { APIRoute } from 'astro';
import { wholeShelfSchema } from '../../library/whole-shelf-schema.ts';

export const GET: APIRoute = () => Response.json(wholeShelfSchema({ open: true }));
