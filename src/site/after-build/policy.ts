/**
 * The content security policy of a page: scripts are files of the site, styles are files or the very ones this page
 * holds, nothing goes to another origin. It stands in the page itself, so it holds hosted, installed and from a stick.
 */
import { hash } from 'node:crypto';
import { attributeOf, type Tag } from './page-tags.ts';
import type { Outcome, Scanned } from './scanned.ts';
import type { SiteFault } from './site-error.ts';

/** Types of script element that hold data and are never run. */
const DATA = /^application\/(ld\+)?json$/;

/** The policy of every page, and what it would switch off without a word. */
export function policies(scanned: Scanned): Outcome {
  const outcome: Outcome = { edits: new Map(), faults: [] };
  for (const [name, { tags }] of scanned) {
    outcome.faults.push(...tags.flatMap((tag) => refused(tag).map((fault) => ({ page: name, ...fault }))));
    const charset = tags.find((tag) => tag.name === 'meta' && attributeOf(tag, 'charset') !== undefined);
    if (charset) {
      const text = `<meta http-equiv="content-security-policy" content="${policyOf(tags)}">`;
      outcome.edits.set(name, [{ start: charset.end, end: charset.end, text }]);
    } else {
      const message = 'Needs <meta charset="utf-8" />; the policy follows it.';
      outcome.faults.push({ page: name, found: '<head>', message });
    }
  }
  return outcome;
}

/** `wasm-unsafe-eval` lets the search index run; it permits no script text. */
export function policyOf(tags: readonly Tag[]): string {
  const styles = hashes(tags.filter((tag) => tag.name === 'style'));
  return [
    "default-src 'none'",
    "script-src 'self' 'wasm-unsafe-eval'",
    `style-src 'self'${styles}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
  ].join('; ');
}

function hashes(tags: readonly Tag[]): string {
  const texts = new Set(tags.map((tag) => tag.text ?? ''));
  return [...texts].map((text) => ` 'sha256-${hash('sha256', text, 'base64')}'`).join('');
}

function refused(tag: Tag): Omit<SiteFault, 'page'>[] {
  const faults = tag.attributes.flatMap(({ name, value }) => {
    if (name === 'style')
      return [
        { found: `<${tag.name} style="${value}">`, message: 'Use a class, or an attribute of the drawing.' },
      ];
    if (name.startsWith('on')) return [{ found: `<${tag.name} ${name}>`, message: 'Listen from an island.' }];
    return [];
  });
  const runs =
    tag.name === 'script' &&
    attributeOf(tag, 'src') === undefined &&
    !DATA.test(attributeOf(tag, 'type') ?? '');
  if (runs)
    faults.push({
      found: `<script>${tag.text?.slice(0, 60)}`,
      message: 'Move it to src/site/islands/ and name the file.',
    });
  return faults;
}
