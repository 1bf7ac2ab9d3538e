import { defineConfig } from 'vitepress';
import { folders } from '../folders.mjs';

// Left as it comes, with the search it brings an icon that is not fetched, and a sidebar that leads to the lists of each kind.
export default defineConfig({
  title: 'Bench Workshop',
  head: [['link', { rel: 'icon', href: 'data:,' }]],
  themeConfig: {
    search: { provider: 'local' },
    sidebar: folders.map(({ folder, many }) => ({ text: many, link: `/${folder}/` })),
  },
});
