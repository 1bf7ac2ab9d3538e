/** The ways through a case, a row each: yours, the planner's, the tree's. */
import '../../browser/page-globals.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { element } from '../../browser/element.ts';
import type { RoundHost } from './round-view.ts';

export type Words = RoundHost['words'];

/** A cause by its title, as a link to its page. */
export function causeLink(words: Words, id: string): Node {
  if (id === SOMETHING_ELSE) return document.createTextNode('something else');
  return element('a', { href: new URL(`causes/${id}.html`, window.headertank.root).href }, words.cause(id));
}

export interface Way {
  who: string;
  /** min. */
  minutes: number;
  /** Tests done. */
  count: number;
  /** What it ended at; undefined where it named nothing. */
  cause: string | undefined;
  /** Which tests, where they are to be said. */
  tests?: readonly string[];
}

/** One way's row: who went it, its minutes and tests, and what it ended at. */
export function wayRow(words: Words, { who, minutes, count, cause, tests = [] }: Way): HTMLTableRowElement {
  const ends = cause === undefined ? document.createTextNode('no cause') : causeLink(words, cause);
  const names = tests.map((test) => words.test(test)).join(' › ');
  return element(
    'tr',
    {},
    element('th', { scope: 'row' }, who),
    element('td', { class: 'figure' }, `${Math.round(minutes)} min`),
    element('td', { class: 'figure' }, String(count)),
    element('td', {}, ends, ...(names === '' ? [] : [element('br'), element('small', {}, names)])),
  );
}

/** @param rows its body, which is filled as the ways are worked out */
export function waysTable(rows: HTMLElement): HTMLElement {
  const heads = ['Who', 'Minutes', 'Tests', 'Ends at'].map((text) => element('th', { scope: 'col' }, text));
  return element(
    'table',
    {},
    element(
      'caption',
      {},
      'Minutes of tests, getting the car ready included; rechecks after the repair are not counted',
    ),
    element('thead', {}, element('tr', {}, ...heads)),
    rows,
  );
}
