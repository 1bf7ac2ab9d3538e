/** A page that begins without calculators and drawings does without their styles: a sixth of what it would weigh. */
import { sortStyle } from '../walk/part-rules.ts';
import type { Output } from './output.ts';

const STYLE = /<style>([^<]*)<\/style>/g;
/** A road test draws when its log is read. */
const HAS_PARTS = /class="(?:calculator|drawing)[ "]|\/scripts\/trace/;

export function fitStyles(output: Output): void {
  // Pages of a kind have the same style.
  const known = new Map<string, string>();
  const withoutParts = (style: string): string => {
    const others = known.get(style) ?? sortStyle(style).others;
    known.set(style, others);
    return others;
  };
  for (const [name, page] of output.pages)
    if (!HAS_PARTS.test(page))
      output.pages.set(
        name,
        page.replace(STYLE, (_, style: string) => `<style>${withoutParts(style)}</style>`),
      );
}
