/**
 * The content security policy of a page: scripts are files of the site, styles are files or the very ones this page
 * holds, nothing goes to another origin. It stands in the page itself, so it holds hosted, installed and from a stick.
 *
 * Astro's own policy (security.csp) names the hashes of all styles and scripts of the site in every page: 32 hashes where a
 * page needs one to five, 1.3 kB that do not compress, and scripts allowed that no page has.
 */
import { hash } from 'node:crypto';
import { attributeOf, type PageElement } from './read-page.ts';
import type { Scanned, ScanResult } from './scanned.ts';
import type { SiteFault } from './site-error.ts';

/** Types of script element that hold data and are never run. */
const DATA = /^application\/(ld\+)?json$/;

/**
 * The policy of every page, and what it would switch off without a word.
 * @param ownScripts the one script that stands in a page itself, by page: put in behind the policy, allowed by its hash
 */
export function policies(scanned: Scanned, ownScripts: ReadonlyMap<string, string> = new Map()): ScanResult {
  const outcome: ScanResult = { edits: new Map(), faults: [] };
  for (const [name, { elements }] of scanned) {
    const faults = elements.flatMap((element) => refused(element));
    outcome.faults.push(...faults.map((fault) => ({ page: name, ...fault })));
    const charset = elements.find(
      (element) => element.name === 'meta' && attributeOf(element, 'charset') !== undefined,
    );
    if (charset) {
      const script = ownScripts.get(name);
      const policy = `<meta http-equiv="content-security-policy" content="${policyOf(elements, script)}">`;
      const text = policy + (script === undefined ? '' : `<script>${script}</script>`);
      outcome.edits.set(name, [{ start: charset.end, end: charset.end, text }]);
    } else {
      const message = 'Needs <meta charset="utf-8" />; the policy follows it.';
      outcome.faults.push({ page: name, found: '<head>', message });
    }
  }
  return outcome;
}

/** `wasm-unsafe-eval` lets the search index run; it permits no script text. */
function policyOf(elements: readonly PageElement[], script: string | undefined): string {
  const styles = elements.filter(({ name }) => name === 'style').map(({ text = '' }) => text);
  return [
    "default-src 'none'",
    `script-src 'self'${hashes(script === undefined ? [] : [script])} 'wasm-unsafe-eval'`,
    `style-src 'self'${hashes(styles)}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
  ].join('; ');
}

function hashes(texts: readonly string[]): string {
  return [...new Set(texts)].map((text) => ` 'sha256-${hash('sha256', text, 'base64')}'`).join('');
}

function refused(element: PageElement): Omit<SiteFault, 'page'>[] {
  const faults = element.attributes.flatMap(({ name, value }) => {
    if (name === 'style')
      return [
        {
          found: `<${element.name} style="${value}">`,
          message: 'Use a class, or an attribute of the drawing.',
        },
      ];
    if (name.startsWith('on'))
      return [{ found: `<${element.name} ${name}>`, message: 'Listen from an island.' }];
    return [];
  });
  const runs =
    element.name === 'script' &&
    attributeOf(element, 'src') === undefined &&
    !DATA.test(attributeOf(element, 'type') ?? '');
  if (runs)
    faults.push({
      found: `<script>${element.text?.slice(0, 60)}`,
      message: 'Move it to src/site/islands/ and name the file.',
    });
  return faults;
}
