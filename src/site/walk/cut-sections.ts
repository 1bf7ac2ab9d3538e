/** The sections of a page that has every step of a walk, so that each step is written once. */

const SECTION = /<section class="step"[^>]*? data-(step|spare|proof)="([^"]+)"[^>]*>[\s\S]*?<\/section>/g;

/**
 * @param page a page of walks/
 * @param name its file name; links within the page get it, since the sections move to a page beside its folder
 * @returns section as markup, by what it is and whose: "step level", "spare code-read", "proof coolant-low"
 * @throws Error when a section holds another, which would be cut in two
 */
export function cutSections(page: string, name: string): Record<string, string> {
  const parts: Record<string, string> = {};
  for (const [section, kind, id] of page.matchAll(SECTION)) {
    if (section.lastIndexOf('<section') > 0)
      throw new Error(`${name}: the ${kind} ${id} has a section inside`);
    parts[`${kind} ${id}`] = section.replaceAll('href="#', `href="../walks/${name}#`);
  }
  return parts;
}
