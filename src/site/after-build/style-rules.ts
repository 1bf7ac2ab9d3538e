/** A style sheet as rules, and which of them a page can need. Reads what the build minifies: no comments, no braces in texts. */

interface Rule {
  /** Of a rule; of an at-rule the one text before its braces. */
  selectors: string[];
  /** A rule's declarations, or an at-rule's text where that holds no rules. */
  body: string;
  /** What an at-rule holds. */
  rules?: Rule[];
}

export interface RuleSheet {
  rules: readonly Rule[];
  /** Every class (written `.class`) and element named in a selector. */
  names: readonly string[];
  /** What was written of it, by which names were there: pages of a kind are alike. */
  written: Map<string, string>;
}

/** At-rules that hold rules of elements; another is kept as it is. */
const HOLDS_RULES = /^@(?:media|supports|container|layer)\b/;
/** A class, or the name of an element, that must be there for a selector to match. */
const NAMES = /\.?[a-z][\w-]*/gi;
const PSEUDO = /::?[\w-]+/g;
const BRACKETS = /\([^()]*\)|\[[^\]]*\]/g;
const CUSTOM = /(?<=[{;])(--[\w-]+):[^;}]*;?/g;
const USES = /var\((--[\w-]+)/g;

/** The rules of a style sheet, with every class and element they name. */
export function readRules(style: string): RuleSheet {
  const rules = rulesIn(style);
  return { rules, names: [...new Set(selectorsIn(rules).flatMap(namesOf))], written: new Map() };
}

function selectorsIn(rules: readonly Rule[]): string[] {
  return rules.flatMap(({ selectors, rules: held }) => [
    ...selectors.filter((each) => !each.startsWith('@')),
    ...(held ? selectorsIn(held) : []),
  ]);
}

function rulesIn(style: string): Rule[] {
  const rules: Rule[] = [];
  let depth = 0;
  let from = 0;
  let open = 0;
  for (let at = 0; at < style.length; at++) {
    if (style[at] === '{' && depth++ === 0) open = at;
    if (style[at] !== '}' || --depth > 0) continue;
    const before = style.slice(from, open).trim();
    const body = style.slice(open + 1, at);
    if (HOLDS_RULES.test(before)) rules.push({ selectors: [before], body: '', rules: rulesIn(body) });
    else rules.push({ selectors: before.startsWith('@') ? [before] : splitList(before), body });
    from = at + 1;
  }
  return rules;
}

/** At the commas outside brackets. */
function splitList(selectors: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at <= selectors.length; at++) {
    const sign = selectors[at];
    if (sign === '(') depth++;
    if (sign === ')') depth--;
    if (sign !== undefined && (sign !== ',' || depth > 0)) continue;
    parts.push(selectors.slice(from, at).trim());
    from = at + 1;
  }
  return parts;
}

/**
 * @param sheet of {@link readRules}
 * @param has whether an element of the page has or may get this class (written `.class`) or this name
 * @returns the style without the rules and selectors that match nothing
 */
export function rulesFor(sheet: RuleSheet, has: (name: string) => boolean): string {
  const present = sheet.names.map(has);
  const key = present.map(Number).join('');
  const known = sheet.written.get(key);
  if (known !== undefined) return known;
  const names = new Set(sheet.names.filter((_, index) => present[index]));
  const written = write(sheet.rules, (selector) => namesOf(selector).every((name) => names.has(name)));
  sheet.written.set(key, written);
  return written;
}

function write(rules: readonly Rule[], isWanted: (selector: string) => boolean): string {
  let written = '';
  for (const { selectors, body, rules: held } of rules) {
    const isAt = selectors[0]?.startsWith('@');
    const kept = isAt ? selectors : selectors.filter(isWanted);
    const inside = held ? write(held, isWanted) : body;
    if (kept.length > 0 && inside !== '') written += `${kept.join()}{${inside}}`;
  }
  return written;
}

/** Without what stands in brackets: `:not(.x)` and its like are taken to be fulfilled. */
function namesOf(selector: string): string[] {
  let plain = selector;
  for (let before = ''; before !== plain; ) {
    before = plain;
    plain = plain.replace(BRACKETS, '');
  }
  return [...plain.replace(PSEUDO, '').matchAll(NAMES)].map(([name]) => name);
}

/**
 * @param style some of the page's styles
 * @param whole all of them: a custom property that nothing in it reads is dropped
 */
export function dropUnread(style: string, whole: string): string {
  const read = new Set([...whole.matchAll(USES)].map(([, name]) => name));
  return style.replace(CUSTOM, (each, name) => (read.has(name) ? each : '')).replace(/;+(?=\})/g, '');
}
