/** The vehicles to choose from as a classic script: it loads from a server, from the offline store and from file:// alike. */
import type { APIRoute } from 'astro';
import { entriesOf } from '../../shelf/record-pages.ts';

export const GET: APIRoute = () => {
  const vehicles = entriesOf('vehicle').map(({ id, data }) => [id, data.title]);
  return new Response(`headertank.receiveVehicles?.(${JSON.stringify(vehicles)});\n`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
};
