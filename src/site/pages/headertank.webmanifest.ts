/** What a device needs to know to keep the site like an application of its own. */
import { shelf } from '../shelf/shelf.ts';

/** Addresses are relative to the manifest, so the site may lie in any folder. */
export function GET(): Response {
  return Response.json({
    name: `Headertank · ${shelf.shop.name}`,
    short_name: 'Headertank',
    description: 'From a complaint about temperature, heat or coolant to a proven repair.',
    id: './',
    start_url: './index.html',
    scope: './',
    display: 'minimal-ui',
    background_color: '#f5f1e6',
    theme_color: '#f5f1e6',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
  });
}
