/** While writing, a script is made each time a page asks for it. */
import type { ViteDevServer } from 'vite';
import { scriptsOf } from './scripts.ts';

/**
 * Serves every script of the site made anew at each request.
 * @param source src/site
 */
export function serveScripts(server: ViteDevServer, source: string): void {
  server.middlewares.use(async (request, response, next) => {
    const address = (request.url ?? '').replace(/\?.*$/, '').slice(1);
    const make = address.endsWith('.js') ? scriptsOf(source).get(address) : undefined;
    if (!make) return next();
    try {
      const script = await make(false);
      response.setHeader('content-type', 'text/javascript; charset=utf-8');
      response.setHeader('cache-control', 'no-store');
      response.end(script);
    } catch (error) {
      next(error);
    }
  });
}
