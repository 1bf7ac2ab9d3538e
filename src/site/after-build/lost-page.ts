/** The page for addresses nobody knows gets the one script that stands in a page, allowed there by its hash alone. */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { bundleScript } from './bundle-script.ts';
import type { Output } from './output.ts';

const NAME = '404.html';
const SCRIPTS = "script-src 'self'";

/**
 * After the policy is set: the script is put in and its hash into the policy of this page.
 * @param source src/site
 * @throws Error when the page has no policy to put it into
 */
export async function writeLostPage(output: Output, source: string): Promise<void> {
  const page = output.pages.get(NAME);
  if (page === undefined) return;
  const script = (await bundleScript(join(source, 'islands/lost.ts'), { minify: true })).trim();
  const hash = createHash('sha256').update(script).digest('base64');
  if (!page.includes(SCRIPTS) || !page.includes('</head>'))
    throw new Error(`${NAME} has no policy or no head to put its script into.`);
  // Functions, so that a $ in the script stays one.
  const allowed = page.replace(SCRIPTS, () => `${SCRIPTS} 'sha256-${hash}'`);
  output.pages.set(
    NAME,
    allowed.replace('</head>', () => `<script>${script}</script></head>`),
  );
}
