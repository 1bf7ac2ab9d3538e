/** The cautions that a vehicle of this device may need, as a classic script. */
import type { APIRoute } from 'astro';
import { vehicleCautions } from '../../vehicle/build/vehicle-cautions.ts';

export const GET: APIRoute = () =>
  new Response(`headertank.receiveOwnCautions?.(${JSON.stringify(vehicleCautions())});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
