/** The page for addresses nobody knows holds the one script that stands in a page itself: from there, no file can be found. */
import { join } from 'node:path';
import { bundleScript } from './bundle-script.ts';

/** Where that page lies. */
export const NOT_FOUND = '404.html';

/**
 * Its script, as it stands in the page.
 * @param source src/site
 * @throws Error with the bundler's message
 */
export async function notFoundScript(source: string): Promise<string> {
  return (await bundleScript(join(source, 'every-page/not-found.ts'), { minify: true })).trim();
}
