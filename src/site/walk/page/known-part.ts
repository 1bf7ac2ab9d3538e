/** The place of what is known so far under a walk. Most walks never open it, and it is long: its script comes when it is opened. */
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import type { KnownList, KnownNow } from '../known-list.ts';
import type { WalkTexts } from '../walk-data.ts';
import type { BesideHost } from './walk-beside.ts';

/** The folds “Known so far” and “Tools not at hand” of a walk, which stand in the page. */
export class KnownPart {
  private list: KnownList | undefined;
  private last: KnownNow | undefined;

  constructor({ walk, diagnoser, give, missing, say }: BesideHost, texts: WalkTexts) {
    const root = walk.querySelector<HTMLElement>('.known');
    const rows = root?.querySelector<HTMLElement>('.known-rows');
    const tools = root?.querySelector<HTMLElement>('.known-tools');
    if (!root || !rows || !tools) return;
    const places = { rows, tools };
    const open = async () => {
      if (this.list || !root.querySelector('details[open]')) return;
      try {
        await loadScript('known-so-far');
        const listener = { answer: give, missing };
        this.list ??= window.headertank.knownSoFar?.(diagnoser.data, texts, listener, say, places);
        for (const place of Object.values(places)) place.querySelector('.unfetched')?.remove();
        if (this.last) this.list?.show(this.last);
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
    root.addEventListener('toggle', () => void open(), { capture: true });
    // It may have been opened before this came.
    void open();
  }

  show(now: KnownNow): void {
    this.last = now;
    this.list?.show(now);
  }
}
