/** Results as a list of links: kind in words, title, the name that was meant, the part of the text that answers. */
import { element } from '../islands/element.ts';
import type { Result } from './start.ts';

export function resultItem({ kind, title, href, name, excerpt }: Result): HTMLLIElement {
  const link = element('a', { href }, element('small', {}, kind), ' ', element('b', {}, title));
  const item = element('li', {}, link);
  if (name) item.append(element('p', { class: 'soft' }, `${name.how} “${name.text}”`));
  const text = excerpt.flatMap((run) => [run.mark ? element('mark', {}, run.text) : run.text, ' ']);
  if (text.length > 0) item.append(element('p', { class: 'excerpt' }, ...text));
  return item;
}
