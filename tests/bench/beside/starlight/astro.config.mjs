import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';
import { folders } from './folders.mjs';

process.env.ASTRO_TELEMETRY_DISABLED = '1';

// Left as it comes but for the sidebar, which would hold every record on every page: here it leads to the lists of each kind.
export default defineConfig({
  integrations: [
    starlight({
      title: 'Bench Workshop',
      sidebar: folders.map(({ folder, many }) => ({ label: many, link: `/${folder}/` })),
    }),
  ],
});
