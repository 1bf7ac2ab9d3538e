/** Astro is told twice: while writing, to show the shelf's faults and make the scripts; after the build, to finish the site. */
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { serveScripts } from './dev-scripts.ts';
import { watchShelf } from './dev-shelf.ts';
import { finishSite } from './finish-site.ts';

export interface Folders {
  /** The records. */
  content: string;
  /** src/site. */
  source: string;
}

/** The integration: watches while the site is written, finishes it after it is built. */
export function finish({ content, source }: Folders): AstroIntegration {
  return {
    name: 'headertank-finish',
    hooks: {
      'astro:server:setup': async ({ server }) => {
        serveScripts(server, resolve(source));
        await watchShelf(server, resolve(content));
      },
      'astro:build:done': async ({ dir, logger }) => {
        const began = performance.now();
        const { pages, files, version } = await finishSite(fileURLToPath(dir), resolve(source));
        const seconds = ((performance.now() - began) / 1000).toFixed(1);
        logger.info(`${pages} pages, ${files} files to keep on a device, version ${version}. ${seconds} s`);
      },
    },
  };
}
