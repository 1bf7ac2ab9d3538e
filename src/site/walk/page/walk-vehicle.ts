/** What stands over every question of a walk for the chosen vehicle; without one, the way to choose it. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { isText } from '../../browser/guards.ts';
import { loadScript } from '../../browser/load-script.ts';
import { notFetched } from '../../browser/not-fetched.ts';
import { reconcileChildren } from '../../browser/reconcile-children.ts';
import { kept } from '../../browser/storage.ts';
import { type Needs, notHere } from '../not-here.ts';

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
  reconcileChildren(
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
  const tell = () => place.append(notFetched('The vehicles'));
  place.append(button('Choose the vehicle', () => void choose().catch(tell), 'quiet'));
  return place;
}

/** Every figure in every question hangs on the vehicle, so the walk is called by its name. */
export function nameVehicle(title: HTMLElement): void {
  const { vehicle } = window.headertank;
  const text = vehicle ? `The walk: ${vehicle.short}` : 'The walk';
  if (title.textContent !== text) title.textContent = text;
}

/**
 * On a vehicle that cannot have the complaint the page says so first, and nothing else of it.
 * @returns whether that is so
 */
export function showNotHere(walk: HTMLElement, needs: Needs | undefined): boolean {
  const says = notHere(needs, window.headertank.vehicle?.layout ?? {});
  const article = walk.closest('article');
  article?.toggleAttribute('data-not-here', says !== undefined);
  const place = article?.querySelector('.not-here b');
  if (place && place.textContent !== (says ?? '')) place.textContent = says ?? '';
  return says !== undefined;
}
