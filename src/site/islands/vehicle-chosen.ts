/** What is said and offered once a vehicle is chosen; fetched when the button is about to be pressed. */

import { lastWalk } from '../browser/storage.ts';
import { vehicleToCard } from '../job/page/vehicle-to-card.ts';
import '../browser/page-globals.ts';
import { element } from '../browser/element.ts';

window.headertank.sayChosen = (after, vehicle, stays) => {
  const says = element('p', { role: 'status' });
  const on = wayOn();
  after.after(element('div', { class: 'vehicle-chosen' }, says, element('p', {}, on)));
  const chosen = stays
    ? 'Chosen. It stays chosen on this device.'
    : 'Chosen for this page; this device keeps nothing.';
  // Words that come into a part that is there are said by a screen reader.
  vehicleToCard(vehicle).then((card) => {
    says.textContent = `${chosen} ${card}`;
  });
  on.focus({ preventScroll: true });
  on.scrollIntoView({ block: 'nearest' });
};

function wayOn(): HTMLAnchorElement {
  const { root } = window.headertank;
  const walk = lastWalk();
  return element(
    'a',
    { class: 'button main', href: new URL(walk?.address ?? 'index.html', root).href },
    walk ? `Back to: ${walk.title}` : 'What does the customer notice?',
  );
}
