/** Results as a list of links: kind in words, title, the name that was meant, the part of the text that answers. */
import { element } from '../../browser/element.ts';
import type { SearchResult } from './engine.ts';

/** One result: kind, title, the name that matched, excerpt. */
export function resultItem({ kind, title, href, name, excerpt }: SearchResult): HTMLLIElement {
  const item = element(
    'li',
    {},
    element('p', { class: 'kind' }, capital(kind)),
    element('a', { href }, title),
  );
  if (name) item.append(element('p', { class: 'soft' }, `${name.how} “${name.text}”`));
  const text = excerpt.flatMap((run) => [run.mark ? element('mark', {}, run.text) : run.text, ' ']);
  if (text.length > 0) item.append(element('p', { class: 'excerpt' }, ...text));
  return item;
}

/** For the beginning of a line. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
