/**
 * Every address inside the site made relative and explicit, so that one output can be hosted in any folder,
 * installed, or opened from a memory stick; an address that leads nowhere is a fault.
 */
import { posix } from 'node:path';
import { distance } from 'fastest-levenshtein';
import type { Output } from './output.ts';
import { type Attribute, attributeOf, type PageElement, writeAttribute } from './read-page.ts';
import type { PageEdit, Scanned, ScanResult } from './scanned.ts';

const ADDRESSES = new Set(['href', 'src', 'action', 'poster', 'xlink:href']);
const ELSEWHERE = /^[a-z][a-z0-9+.-]*:|^\/\//i;
/** Elements that load what they name, so it has to be of this site. */
const LOADS = new Set([
  'script',
  'link',
  'img',
  'source',
  'use',
  'image',
  'iframe',
  'video',
  'audio',
  'object',
]);

interface Site {
  output: Output;
  /** Ids by page. */
  anchors: Map<string, Set<string>>;
  /** What a path leads to from a folder: a page has the same ones as its neighbours. */
  found: Map<string, { target: string; relative: string } | undefined>;
}

/** What has to change in the pages, and every address that leads nowhere. */
export function relativeLinks(output: Output, scanned: Scanned): ScanResult {
  const outcome: ScanResult = { edits: new Map(), faults: [] };
  const anchors = new Map([...scanned].map(([name, { elements }]) => [name, collectIds(elements)]));
  const site: Site = { output, anchors, found: new Map() };
  for (const [name, { elements }] of scanned) {
    const edits: PageEdit[] = [];
    for (const element of elements) {
      for (const attribute of element.attributes) {
        if (!ADDRESSES.has(attribute.name)) continue;
        const { value, start, end } = attribute;
        const answer = rewrite(attribute, element, name, site);
        if ('message' in answer) outcome.faults.push({ page: name, found: value, message: answer.message });
        else if (answer.address !== value)
          edits.push({ start, end, text: writeAttribute(attribute.name, answer.address) });
      }
    }
    outcome.edits.set(name, edits);
  }
  return outcome;
}

function rewrite(
  { value }: Attribute,
  element: PageElement,
  page: string,
  site: Site,
): { address: string } | { message: string } {
  if (ELSEWHERE.test(value)) {
    const loads = LOADS.has(element.name) && !value.startsWith('data:');
    return loads
      ? { message: 'Loads from outside the site. Put the file into public/.' }
      : { address: value };
  }
  const [, path = '', query = '', fragment = ''] = /^([^?#]*)(\?[^#]*)?(#.*)?$/.exec(value) ?? [];
  const found = path === '' ? { target: page, relative: '' } : lookUp(path, page, site);
  if (!found) return { message: `No such page. ${nearest(path, page, site.output)}` };
  const { target, relative } = found;
  const id = decoded(fragment.slice(1));
  const ids = site.anchors.get(target);
  if (id !== '' && id !== 'top' && ids && !ids.has(id) && !isState(id, ids)) {
    return { message: `${target} has no part with the id "${id}". ${nearestOf(id, ids)}` };
  }
  return { address: `${relative}${query}${fragment}` };
}

/** Whether a fragment is the state of a calculator, `find=37&repair=60`: each name a field of the page it leads to. */
function isState(fragment: string, ids: ReadonlySet<string>): boolean {
  const names = [...new URLSearchParams(fragment).keys()];
  return fragment.includes('=') && names.every((name) => [...ids].some((id) => id.endsWith(`-${name}`)));
}

function lookUp(path: string, page: string, { output, found }: Site) {
  const folder = posix.dirname(page);
  const key = `${folder}\n${path}`;
  if (!found.has(key)) {
    const target = findFile(path, page, output);
    found.set(key, target === undefined ? undefined : { target, relative: posix.relative(folder, target) });
  }
  return found.get(key);
}

/** The file an address stands for: itself, the index of a folder, or a page named without its ending. */
function findFile(path: string, page: string, output: Output): string | undefined {
  const whole = wholePath(path, page);
  const candidates =
    whole === '' || whole.endsWith('/')
      ? [`${whole}index.html`]
      : [whole, `${whole}.html`, `${whole}/index.html`];
  return candidates.find((name) => output.pages.has(name) || output.others.has(name));
}

function wholePath(path: string, page: string): string {
  const plain = decoded(path);
  const absolute = plain.startsWith('/') ? plain : `/${posix.dirname(page)}/${plain}`;
  return posix.normalize(absolute).slice(1);
}

/** An address with a stray percent sign stays as it is, and is then reported as leading nowhere. */
function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

function nearest(path: string, page: string, output: Output): string {
  return nearestOf(wholePath(path, page), [...output.pages.keys(), ...output.others]);
}

function nearestOf(wanted: string, known: Iterable<string>): string {
  const ranked = [...known]
    .map((name) => ({ name, far: distance(wanted, name) }))
    .sort((a, b) => a.far - b.far);
  const best = ranked[0];
  return best ? `Nearest: ${best.name}` : 'There is none at all.';
}

function collectIds(elements: readonly PageElement[]): Set<string> {
  return new Set(elements.flatMap((element) => attributeOf(element, 'id') ?? []));
}
