/** What stands over every question of a walk for the chosen vehicle; without one, the way to choose it. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { isText } from '../../browser/guards.ts';
import { keepChildren } from '../../browser/keep-children.ts';
import { loadScript } from '../../browser/load-script.ts';
import { kept } from '../../browser/storage.ts';
import { unfetched } from '../../browser/unfetched.ts';

/**
 * What can hurt on the chosen vehicle beyond what every engine has.
 * @param place filled with it
 * @param chosen when a vehicle has been chosen here
 */
export function showStops(place: HTMLElement, chosen: () => void): void {
  const { vehicle, root } = window.headertank;
  if (!vehicle) {
    // One that is kept is on its way.
    if (kept('vehicle', isText) === undefined && !place.querySelector('.choice'))
      place.replaceChildren(offerVehicle(chosen));
    return;
  }
  keepChildren(
    place,
    vehicle.stops.map(({ id, title, short, before }) => {
      const href = new URL(`cautions/${id}.html`, root).href;
      const name = element('b', {}, 'Caution: ', element('a', { href }, title), '. ');
      return element('p', { class: 'caution' }, name, short, ' ', element('b', {}, before));
    }),
  );
}

/** Without leaving the walk: the answers stay, and what the vehicle says of itself is not asked. */
function offerVehicle(chosen: () => void): HTMLElement {
  const place = element('div', { class: 'choice no-print' }, 'General figures. ');
  const choose = async () => {
    await loadScript('vehicle-choice');
    const choice = document.createElement('ht-vehicle-choice');
    choice.addEventListener('headertank:chosen', chosen);
    place.replaceChildren(choice);
    choice.querySelector('input')?.focus();
  };
  const tell = () => place.append(unfetched('The vehicles'));
  place.append(button('Choose the vehicle', () => void choose().catch(tell), 'quiet'));
  return place;
}
