import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { finish } from './src/site/after-build/integration.ts';

export default defineConfig({
  srcDir: 'src/site',
  publicDir: 'public',
  outDir: 'dist',
  // symptoms/x.html, not symptoms/x/index.html: the address that also opens from a stick.
  // Four pages at once, so that none waits until the file of another is written or its tree is judged.
  build: { format: 'preserve', inlineStylesheets: 'always', concurrency: 4 },
  image: { service: { entrypoint: 'astro/assets/services/noop' } },
  devToolbar: { enabled: false },
  integrations: [mdx(), finish({ content: 'content', source: 'src/site' })],
});
