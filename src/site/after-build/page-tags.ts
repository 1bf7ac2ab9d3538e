/** Start tags of a finished page, with the places of their attributes, so that an address can be exchanged in place. */

export interface Attribute {
  name: string;
  /** Character references resolved. */
  value: string;
  /** Where the value stands in the page, quotation marks included; both 0 when there is none. */
  start: number;
  end: number;
}

export interface Tag {
  name: string;
  start: number;
  /** Just behind the closing bracket. */
  end: number;
  attributes: Attribute[];
  /** What a script or style holds, as written. */
  text?: string;
}

const RAW_TEXT = new Set(['script', 'style', 'textarea', 'title']);
const ATTRIBUTE = /([^\s"'<>/=]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'=<>`]+))?|(\/?>)/g;
const REFERENCES: Record<string, string> = { amp: '&', quot: '"', apos: "'", lt: '<', gt: '>' };

/** Reads the markup Astro writes: well-formed attributes, no end tag inside a quoted value left open. */
export function readTags(page: string): Tag[] {
  const tags: Tag[] = [];
  const opener = /<!--[\s\S]*?-->|<([a-zA-Z][^\s/>]*)/g;
  for (let match = opener.exec(page); match; match = opener.exec(page)) {
    if (match[1] === undefined) continue;
    const tag: Tag = { name: match[1].toLowerCase(), start: match.index, end: 0, attributes: [] };
    tag.end = readAttributes(page, opener.lastIndex, tag.attributes);
    opener.lastIndex = tag.end;
    if (RAW_TEXT.has(tag.name)) {
      const close = page.indexOf(`</${tag.name}`, tag.end);
      const stop = close < 0 ? page.length : close;
      tag.text = page.slice(tag.end, stop);
      opener.lastIndex = stop;
    }
    tags.push(tag);
  }
  return tags;
}

/** The value of an attribute, undefined when the tag lacks it. */
export function attributeOf(tag: Tag, name: string): string | undefined {
  return tag.attributes.find((attribute) => attribute.name === name)?.value;
}

/** A value as it may stand between quotation marks. */
export function quote(value: string): string {
  return `"${value.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`;
}

function readAttributes(page: string, from: number, into: Attribute[]): number {
  ATTRIBUTE.lastIndex = from;
  for (let match = ATTRIBUTE.exec(page); match; match = ATTRIBUTE.exec(page)) {
    if (match[3] !== undefined) return ATTRIBUTE.lastIndex;
    const [, name = '', raw] = match;
    const end = ATTRIBUTE.lastIndex;
    const place = raw === undefined ? { start: 0, end: 0 } : { start: end - raw.length, end };
    into.push({ name: name.toLowerCase(), value: resolve(unquote(raw ?? '')), ...place });
  }
  return page.length;
}

function unquote(raw: string): string {
  return raw.startsWith('"') || raw.startsWith("'") ? raw.slice(1, -1) : raw;
}

function resolve(value: string): string {
  return value.replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/gi, (whole, hex, decimal, name) => {
    if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal) return String.fromCodePoint(Number(decimal));
    return REFERENCES[name] ?? whole;
  });
}
