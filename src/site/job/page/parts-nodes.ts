import { element } from '../../browser/element.ts';
import type { PartsOf } from '../planned.ts';

/** The parts list, by what it is for. */
export function partsNodes(parts: readonly PartsOf[], heading: 'h3' | 'h4'): Node[] {
  return parts.flatMap(({ title, parts: lines, consumables }) => [
    element(heading, {}, title),
    element('ul', {}, ...[...lines, ...consumables].map((line) => element('li', {}, line))),
  ]);
}
