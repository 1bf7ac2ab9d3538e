/** While writing, an island is bundled each time a page asks for it. */
import type { ViteDevServer } from 'vite';
import { bundleIsland, islandOf } from './islands.ts';
/**
 * Serves each island bundled anew at every request.
 * @param islands their folder
 */
export function serveIslands(server: ViteDevServer, islands: string): void {
  server.middlewares.use(async (request, response, next) => {
    const file = islandOf((request.url ?? '').replace(/\?.*$/, ''), islands);
    if (file === undefined) return next();
    try {
      const script = await bundleIsland(file, false);
      response.setHeader('content-type', 'text/javascript; charset=utf-8');
      response.setHeader('cache-control', 'no-store');
      response.end(script);
    } catch (error) {
      next(error);
    }
  });
}
