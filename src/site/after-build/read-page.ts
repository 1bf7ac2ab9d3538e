/** The elements of a finished page with their places in its text, so that a page can be changed in place. */
import { type DefaultTreeAdapterTypes, parse } from 'parse5';

export interface Attribute {
  name: string;
  /** Character references resolved. */
  value: string;
  /** Where name and value stand in the page. */
  start: number;
  end: number;
}

export interface PageElement {
  name: string;
  start: number;
  /** Just behind the start tag. */
  opened: number;
  /** Just behind the end tag, or behind the start tag where there is none. */
  end: number;
  attributes: Attribute[];
  /** What it holds, when that is text and nothing else. */
  text?: string;
}

/** The elements in the order of their start tags; what a parser adds to a page has no place in it and is left out. */
export function readElements(page: string): PageElement[] {
  const found = new Map<number, PageElement>();
  // Without scripts, or the markup in <noscript> would be read as text.
  collect(parse(page, { sourceCodeLocationInfo: true, scriptingEnabled: false }), found);
  return [...found.values()];
}

/** The value of an attribute, undefined when the element lacks it. */
export function attributeOf(element: PageElement, name: string): string | undefined {
  return element.attributes.find((attribute) => attribute.name === name)?.value;
}

/** An attribute as it may stand in a tag. */
export function writeAttribute(name: string, value: string): string {
  return `${name}="${value.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`;
}

/** By place: a tag that is closed too late gives a parser two elements, which stand in the page once. */
function collect(node: DefaultTreeAdapterTypes.Node, into: Map<number, PageElement>): void {
  if ('tagName' in node) {
    const element = elementOf(node);
    if (element && !into.has(element.start)) into.set(element.start, element);
  }
  if ('content' in node) collect(node.content, into);
  if ('childNodes' in node) for (const child of node.childNodes) collect(child, into);
}

function elementOf(node: DefaultTreeAdapterTypes.Element): PageElement | undefined {
  const place = node.sourceCodeLocation;
  if (!place) return undefined;
  const opened = place.startTag?.endOffset ?? place.endOffset;
  const attributes = node.attrs.map(({ name, prefix, value }) => {
    const whole = prefix ? `${prefix}:${name}` : name;
    const at = place.attrs?.[whole];
    return { name: whole, value, start: at?.startOffset ?? 0, end: at?.endOffset ?? 0 };
  });
  const [only, ...more] = node.childNodes;
  const text =
    only === undefined
      ? ''
      : more.length === 0 && only.nodeName === '#text' && 'value' in only
        ? only.value
        : undefined;
  return {
    name: node.tagName,
    start: place.startOffset,
    opened,
    end: place.endTag?.endOffset ?? opened,
    attributes,
    ...(text !== undefined && { text }),
  };
}
