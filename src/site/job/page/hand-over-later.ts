/** The way onto the job card for pages where few take it: its script is fetched when it is taken. */
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { notFetched } from '../../browser/not-fetched.ts';
import type { HandedOver } from '../handed-over.ts';

/** @returns a line that says where it went, or that the card cannot be had */
export function handOver(handed: HandedOver): HTMLElement {
  const place = element('div');
  loadScript('hand-over')
    .catch(() => undefined)
    .then(() => {
      const line = window.headertank.putOnJobCard?.(handed);
      place.replaceChildren(
        line ?? element('p', { class: 'note-line', role: 'status' }, notFetched('The job card')),
      );
    });
  return place;
}
