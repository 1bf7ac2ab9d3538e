/**
 * walks/<complaint>.js: the sections of walks/<complaint>.html as a script, since a folder opened from file:// cannot fetch a page.
 * Hosted, the walk cuts the same sections out of the fetched page (src/site/walk/page/walk-parts.ts).
 */
import { basename } from 'node:path';
import type { Output } from './output.ts';
import { attributeOf, type PageElement, readElements, writeAttribute } from './read-page.ts';
import { edited } from './scanned.ts';
import { writeScript } from './scripts.ts';

const WALK_PAGE = /^walks\/[a-z0-9-]+\.html$/;
const KINDS = ['step', 'spare', 'proof'];

/**
 * The steps of a walk as a script that hands them to the page.
 * @param name file name of the page; links within the page get it, since the sections move to a page beside its folder
 */
export function walkScript(page: string, name: string): string {
  const elements = readElements(page);
  const links = elements.flatMap(({ attributes }) =>
    attributes.filter((attribute) => attribute.name === 'href' && attribute.value.startsWith('#')),
  );
  const parts = elements.flatMap((element) => {
    const part = partOf(element);
    if (part === undefined) return [];
    const edits = links
      .filter(({ start }) => start > element.start && start < element.end)
      .map(({ start, end, value }) => ({
        start: start - element.start,
        end: end - element.start,
        text: writeAttribute('href', `../walks/${name}${value}`),
      }));
    return [[part, edited(page.slice(element.start, element.end), edits)]];
  });
  return `headertank.receiveWalkParts(${JSON.stringify(Object.fromEntries(parts))});\n`;
}

/** What a section is and whose: "step level", "spare code-read", "proof coolant-low". */
function partOf(element: PageElement): string | undefined {
  if (element.name !== 'section' || !attributeOf(element, 'class')?.split(' ').includes('step'))
    return undefined;
  const kind = KINDS.find((each) => attributeOf(element, `data-${each}`) !== undefined);
  return kind && `${kind} ${attributeOf(element, `data-${kind}`)}`;
}

/** Writes such a script beside each page of a walk. */
export async function writeWalkSections(output: Output): Promise<void> {
  for (const [address, page] of output.pages) {
    if (!WALK_PAGE.test(address)) continue;
    await writeScript(output, address.replace(/html$/, 'js'), walkScript(page, basename(address)));
  }
}
