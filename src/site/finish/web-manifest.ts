/** What a device needs to know to keep the site like an application of its own. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Output } from './output.ts';

const NAME = 'headertank.webmanifest';

/** Addresses are relative to the manifest, so the site may lie in any folder. */
export async function writeWebManifest(output: Output, shop: string): Promise<void> {
  const manifest = {
    name: `Headertank · ${shop}`,
    short_name: 'Headertank',
    description: 'From a complaint about temperature, heat or coolant to a proven repair.',
    id: './',
    start_url: './index.html',
    scope: './',
    display: 'minimal-ui',
    background_color: '#f5f1e6',
    theme_color: '#f5f1e6',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
  };
  await writeFile(join(output.folder, NAME), JSON.stringify(manifest));
  output.others.add(NAME);
}
