/** The place of what is known so far under a walk. Most walks never open it, and it is long: its script comes when it is opened. */
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import type { KnownList, KnownListener } from '../known-list.ts';
import type { WalkData } from '../walk-data.ts';

/** The part “Known so far” of a walk: findings to tick, causes ranked, the best next test. */
export class KnownPart {
  readonly root: HTMLElement;
  private list: KnownList | undefined;
  private last: Parameters<KnownList['show']> | undefined;

  constructor(data: WalkData, listener: KnownListener, say: (text: string) => string) {
    const places = {
      rows: element('div', { class: 'known-rows' }),
      tools: element('div', { class: 'known-tools' }),
    };
    this.root = element(
      'div',
      { class: 'known no-print' },
      element('details', {}, element('summary', {}, 'Known so far: tick findings in any order'), places.rows),
      element(
        'details',
        {},
        element('summary', {}, 'Tools not at hand'),
        element(
          'p',
          { class: 'soft' },
          'The walk finds another way round tests that need them. Kept on this device.',
        ),
        places.tools,
      ),
    );
    const open = async () => {
      if (this.list) return;
      try {
        await loadScript('known-so-far');
        this.list ??= window.headertank.knownSoFar?.(data, listener, say, places);
        for (const place of Object.values(places)) place.querySelector('.unfetched')?.remove();
        if (this.last) this.list?.show(...this.last);
      } catch {
        for (const place of Object.values(places))
          place.replaceChildren(
            element(
              'p',
              { class: 'unfetched' },
              'This cannot be fetched now: there is no connection. Open it again.',
            ),
          );
      }
    };
    this.root.addEventListener('toggle', () => void open(), { capture: true });
  }

  show(...now: Parameters<KnownList['show']>): void {
    this.last = now;
    this.list?.show(...now);
  }
}
