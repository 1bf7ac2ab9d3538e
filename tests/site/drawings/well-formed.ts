/**
 * What an XML reader would complain of in a drawing, as sentences; none if it is well formed (XML 1.0, sections 2.1
 * and 3.1: one root, tags nested, attributes quoted and given once, no bare `&` or `<`), plus what this site asks of
 * every drawing: unique ids, a name and a description, no styles, no handlers.
 */
export function faultsOf(svg: string): string[] {
  const faults: string[] = [];
  const open: string[] = [];
  const ids: string[] = [];
  const bare = (text: string) => /&(?!(?:amp|lt|gt|quot|#\d+);)/.test(text);
  const token = /<(\/?)([a-z]\w*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)|(<)/gi;
  let roots = 0;
  for (const [, closing, name = '', attributes = '', empty, text, stray] of svg.matchAll(token)) {
    if (stray) faults.push('a tag that cannot be read');
    else if (text !== undefined) {
      if (bare(text)) faults.push(`bare & in "${text}"`);
      if (open.length === 0 && text.trim() !== '') faults.push(`text outside the root: ${text}`);
    } else if (closing) {
      if (open.pop() !== name) faults.push(`</${name}> closes something else`);
    } else {
      if (open.length === 0) roots += 1;
      const seen = new Set<string>();
      for (const [, key = '', value = ''] of attributes.matchAll(/([\w:-]+)="([^"]*)"/g)) {
        if (seen.has(key)) faults.push(`${key} twice on <${name}>`);
        seen.add(key);
        if (bare(value)) faults.push(`bare & in ${key}`);
        if (key === 'id') ids.push(value);
        if (key === 'style' || key.startsWith('on')) faults.push(`${key} attribute on <${name}>`);
        if (value.includes('NaN') || value.includes('undefined') || value.includes('Infinity'))
          faults.push(`${key}="${value}" on <${name}>`);
      }
      if (!empty) open.push(name);
    }
  }
  if (open.length > 0) faults.push(`never closed: ${open.join(', ')}`);
  if (roots !== 1) faults.push(`${roots} roots`);
  const doubled = ids.filter((id, index) => ids.indexOf(id) !== index);
  if (doubled.length > 0) faults.push(`ids used twice: ${doubled.join(', ')}`);
  const named = /aria-labelledby="([^"]+)"/.exec(svg)?.[1]?.split(' ') ?? [];
  if (named.length !== 2 || named.some((id) => !ids.includes(id)))
    faults.push('no title and description it is labelled by');
  if (!/<title [^>]+>[^<]+<\/title><desc [^>]+>[^<]+<\/desc>/.test(svg)) faults.push('empty title or desc');
  return faults;
}
