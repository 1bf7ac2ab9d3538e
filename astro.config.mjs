import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { finish } from './src/site/finish/integration.ts';

// Nothing about this machine or its builds is told to anyone.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

export default defineConfig({
  srcDir: 'src/site',
  publicDir: 'public',
  outDir: 'dist',
  // symptoms/x.html, not symptoms/x/index.html: the address that also opens from a stick.
  build: { format: 'preserve', inlineStylesheets: 'always' },
  image: { service: { entrypoint: 'astro/assets/services/noop' } },
  devToolbar: { enabled: false },
  integrations: [mdx(), finish({ content: 'content', source: 'src/site' })],
});
