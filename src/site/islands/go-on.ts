/** On the front page: the way back to the walk and the card that were left open on this device. */

import { lastWalk } from '../browser/storage.ts';
import { openJob } from '../job/page/open-job.ts';
import '../browser/page-globals.ts';
import { element } from '../browser/element.ts';

class GoOn extends HTMLElement {
  connectedCallback() {
    document.addEventListener('headertank:job', () => this.show());
    this.show();
  }
  private show(): void {
    const walk = lastWalk();
    const card = openJob();
    const way = (text: string, to: string) =>
      element('a', { class: 'button', href: new URL(to, window.headertank.root).href }, text);
    this.replaceChildren(
      // A walk without an answer is no more than a page that was looked at.
      ...(walk?.address.includes('#') ? [way(`Go on with: ${walk.title}`, walk.address)] : []),
      ...(card
        ? [
            way(
              `Job card: ${[card.plate, card.name, card.vehicle].find((each) => each !== undefined) ?? 'the open one'}`,
              `job.html#${card.id}`,
            ),
          ]
        : []),
    );
  }
}

customElements.define('ht-go-on', GoOn);
