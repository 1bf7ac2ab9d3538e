import { folders } from './folders.mjs';

// Eleventy brings no page of its own: one template with the few lines of style that the plain pages have too.
export default function (config) {
  config.addGlobalData('layout', 'page.njk');
  config.addGlobalData('folders', folders);
  return { dir: { input: 'pages', includes: '../includes' } };
}
