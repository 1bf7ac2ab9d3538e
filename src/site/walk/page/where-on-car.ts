/** Where a test is done on the chosen vehicle: its places in words, what the record says of getting there, the circuit with them marked. */
import '../../browser/page-globals.ts';
import {
  type CircuitPlace,
  hasPlace,
  isCircuitPlace,
  isDrawn,
  placeName,
} from '../../../model/circuit-places.ts';
import { element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { loadStyle } from '../../browser/load-style.ts';
import type { VehicleSheet } from '../../vehicle/vehicle-sheet.ts';

/** The drawing shows hoses alone. */
const HIGH_VOLTAGE =
  'High-voltage parts lie beside these hoses: for trained people only, by the maker’s procedure.';
/** Pictures made so far: their ids are theirs alone. */
let drawn = 0;

/** A fold beside how each test is done, for the places that the chosen vehicle has; none without a vehicle. */
export function showWhere(within: ParentNode): void {
  const { vehicle } = window.headertank;
  for (const work of within.querySelectorAll<HTMLElement>('.step > [data-at]')) {
    const next = work.nextElementSibling;
    const before = next instanceof HTMLElement && next.matches('.where') ? next : undefined;
    const places = vehicle ? placesOn(vehicle, work.dataset.at ?? '') : [];
    if (!vehicle || places.length === 0) {
      before?.remove();
      continue;
    }
    if (before?.dataset.of === vehicle.id) continue;
    const fold = foldOf(vehicle, places);
    if (before) before.replaceWith(fold);
    else work.after(fold);
  }
}

/** Those that the vehicle has and of which there is something to show. */
function placesOn(vehicle: VehicleSheet, names: string): CircuitPlace[] {
  return names
    .split(' ')
    .filter((name) => isCircuitPlace(name))
    .filter((name) => hasPlace(vehicle.layout, name))
    .filter((name) => isDrawn(name) || wordsAt(vehicle, name).length > 0);
}

function foldOf(vehicle: VehicleSheet, places: readonly CircuitPlace[]): HTMLElement {
  const inside = element('div');
  const fold = element(
    'details',
    { class: 'where', 'data-of': vehicle.id },
    element('summary', {}, 'Where on this car'),
    inside,
  );
  fold.addEventListener('toggle', () => void fill(inside, vehicle, places), { once: true });
  return fold;
}

/** The words at once, which are there already; the picture when its script is. */
async function fill(
  inside: HTMLElement,
  vehicle: VehicleSheet,
  places: readonly CircuitPlace[],
): Promise<void> {
  inside.replaceChildren(...inWords(vehicle, places, () => undefined));
  try {
    await Promise.all([loadScript('mark-circuit'), loadStyle('circuit')]);
  } catch {
    inside.append(element('p', { class: 'note-line' }, 'The picture cannot be fetched just now.'));
    return;
  }
  drawn += 1;
  const picture = window.headertank.drawPlaces?.(`where-${drawn}`, vehicle.title, vehicle.layout, places);
  if (!picture) {
    inside.append(
      element('p', { class: 'soft' }, 'Its circuit is not drawn: not every point of its layout is known.'),
    );
    return;
  }
  if (picture.svg === undefined) return;
  const place = element('div');
  // Drawn by our own code; the names of the vehicle and of its places are escaped there.
  place.innerHTML = picture.svg;
  inside.replaceChildren(
    ...(vehicle.layout.power === 'combustion' ? [] : [element('p', { class: 'caution' }, HIGH_VOLTAGE)]),
    ...inWords(vehicle, places, (name) => picture.marks[name]),
    place,
  );
}

/** A line for each place, under it what the record says of it; then what it says of several of them, once. */
function inWords(
  vehicle: VehicleSheet,
  places: readonly CircuitPlace[],
  markOf: (place: CircuitPlace) => number | undefined,
): HTMLElement[] {
  const said = new Set<string>();
  return places.map((place) => {
    const mark = markOf(place);
    const texts = wordsAt(vehicle, place).filter((text) => !said.has(text));
    for (const text of texts) said.add(text);
    return element(
      'p',
      {},
      element('b', {}, `${mark === undefined ? '' : `${mark} `}${placeName(vehicle.layout, place)}. `),
      window.headertank.figures?.say(texts.join(' '), {}) ?? '',
    );
  });
}

function wordsAt(vehicle: VehicleSheet, place: CircuitPlace): string[] {
  // Of a vehicle typed on this device nothing is known but its layout.
  if (vehicle.own) return [];
  const lines = [...vehicle.access, ...vehicle.sits]
    .filter(({ at }) => at.includes(place))
    .map(({ is }) => is);
  return place === 'bleed-screws' ? [...lines, vehicle.bleeding] : lines;
}
