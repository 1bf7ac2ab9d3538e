/** While writing, the sections of a walk are cut from the page of its steps each time they are asked for. */
import type { ViteDevServer } from 'vite';
import { walkScript } from './walk-parts.ts';

const SCRIPT = /^\/walks\/([a-z0-9-]+)\.js$/;

export function serveWalkParts(server: ViteDevServer): void {
  server.middlewares.use(async (request, response, next) => {
    const name = SCRIPT.exec((request.url ?? '').replace(/\?.*$/, ''))?.[1];
    if (name === undefined) return next();
    try {
      const page = await fetch(`http://${request.headers.host}/walks/${name}.html`);
      if (!page.ok) return next();
      response.setHeader('content-type', 'text/javascript; charset=utf-8');
      response.setHeader('cache-control', 'no-store');
      response.end(walkScript(await page.text(), `${name}.html`));
    } catch (error) {
      next(error);
    }
  });
}
