/**
 * The styles of calculators and drawings. A page that begins without either does without these, and a walk brings them with
 * the questions that have one.
 */

const OF_PARTS = /^\.(?:calculator|drawing|answer-)/;

export interface SortedStyle {
  /** Rules whose selectors all begin with a calculator, its answer or a drawing. */
  ofParts: string;
  others: string;
}

/** @param style of a page as the build minifies it: no comments, no braces in texts */
export function sortStyle(style: string): SortedStyle {
  const sorted: SortedStyle = { ofParts: '', others: '' };
  let depth = 0;
  let from = 0;
  for (let at = 0; at < style.length; at++) {
    if (style[at] === '{') depth++;
    if (style[at] !== '}' || --depth > 0) continue;
    const rule = style.slice(from, at + 1);
    const selectors = rule.slice(0, rule.indexOf('{')).split(',');
    const isOfParts = selectors.every((selector) => OF_PARTS.test(selector.trim()));
    sorted[isOfParts ? 'ofParts' : 'others'] += rule;
    from = at + 1;
  }
  sorted.others += style.slice(from);
  return sorted;
}
