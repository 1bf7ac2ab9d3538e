/**
 * How often each surface is tried, and from which seed.
 *
 * `npm test` tries the same few thousand cases each time; `npm run fuzz` 100,000 from a new seed, which it prints. What
 * fails is printed with its seed and path by fast-check: HEADERTANK_FUZZ_SEED=… repeats the run.
 */
import fc from 'fast-check';

const asked = Number(process.env.HEADERTANK_FUZZ_RUNS ?? '0');

/** @param usual cases of `npm test`: as many as take about two seconds */
export function runs(usual: number): fc.Parameters<unknown> & { numRuns: number; seed: number } {
  return {
    numRuns: asked > 0 ? asked : usual,
    seed: Number(process.env.HEADERTANK_FUZZ_SEED ?? '20261125'),
    // A long run that failed shall say where before it shrinks for an hour.
    interruptAfterTimeLimit: asked > 0 ? 3_000_000 : 60_000,
    markInterruptAsFailure: true,
  };
}

/** ms a test may take. */
export const LIMIT = asked > 0 ? 3_600_000 : 120_000;

/** Words that stand on a page only by mistake. */
export const UNCLEAN = /\bNaN\b|\bundefined\b|\bInfinity\b|\[object |function \(|=> /;

/** What somebody writes who wants his text to become markup, a script, an address, or another kind of value. */
export const HOSTILE = [
  '<script>hurt()</script>',
  '</script><script>hurt()</script>',
  '<img src=x onerror=hurt()>',
  '"><svg onload=hurt()>',
  "' onmouseover='hurt()",
  '" autofocus onfocus="hurt()',
  '<!--',
  '-->',
  ']]>',
  '<![CDATA[',
  '&lt;script&gt;hurt()&lt;/script&gt;',
  '&#60;script&#62;',
  '[press](javascript:hurt())',
  '[press](JaVa\tScRiPt:hurt())',
  '[press](data:text/html,<script>hurt()</script>)',
  '[a](https://example.org/"onmouseover="hurt())',
  '<javascript:hurt()>',
  '![x](https://example.org/x.png)',
  '[x]: javascript:hurt()\n\n[x]',
  '```\n<script>hurt()</script>\n```',
  '`<b>`',
  '{thermostat.opens}',
  '{__proto__}',
  '{constructor}',
  '{thermostat.opens<script>}',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'javascript:hurt()',
  '../../../etc/passwd',
  '\u202e\u2066',
  '\u0000',
  '\ud800',
  '\u001b[31m',
  '\ufeff',
  '\u2028',
  '\u0024{hurt()}',
  '{{hurt()}}',
  '%E0%A4%A',
  '%3Cscript%3E',
  '::error file=x::y',
  'e\u0301'.repeat(50),
] as const;

/** A text of hostile pieces, plain words and any characters at all. */
export const hostileText: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...HOSTILE) },
      {
        weight: 2,
        arbitrary: fc.constantFrom('coolant', '87 °C', '1.4 bar', ' ', '\n', ': ', '- ', '#', "'", '"'),
      },
      { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
      { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
    ),
    { minLength: 1, maxLength: 4 },
  )
  .map((pieces) => pieces.join(''));

/** What the renderer of records may write. */
const WRITTEN =
  'p em strong code pre ul ol li a br hr blockquote h1 h2 h3 h4 h5 h6 span b i small s del table thead tbody tr th td'.split(
    ' ',
  );
const TAG = /<(\/?)([a-zA-Z][^\s/>]*)([^>]*)>/g;

/**
 * @param markup what was made of a text from outside
 * @param allowed names of the elements our own code writes there
 * @returns what in it could do more than be read; empty when it is inert
 */
export function escapes(markup: string, allowed: Iterable<string> = WRITTEN): string[] {
  const tags = new Set(allowed);
  const found: string[] = [];
  for (const [tag, , name = '', attributes = ''] of markup.matchAll(TAG)) {
    if (!tags.has(name)) found.push(tag);
    // Values in double quotes, as the renderer writes them; what is left are the names.
    const names = attributes.replace(/"[^"]*"/g, '');
    if (/\son|style|srcdoc|['<]/i.test(names)) found.push(tag);
    for (const [, value = ''] of attributes.matchAll(/(?:href|src|action)="([^"]*)"/g))
      if (/^\s*(?:javascript|vbscript|data|file):/i.test(value)) found.push(tag);
  }
  // A bracket that opens nothing known would be markup too.
  if (/<(?![a-zA-Z/])/.test(markup) || /<[a-zA-Z/][^>]*$/.test(markup)) found.push(markup);
  return found;
}
