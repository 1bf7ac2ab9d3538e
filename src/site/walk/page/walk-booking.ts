/** The minutes to book and the estimate, as the complaint's page has them at build, for the chosen vehicle and what is believed now. */
import '../../browser/page-globals.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { inSentence } from '../../text/in-sentence.ts';
import type { WalkData } from '../walk-data.ts';

/** What a place said at build, for when no vehicle is chosen any more. */
const built = new WeakMap<Element, string>();
const builtEstimate = new WeakMap<Element, { hash: string; hidden: HTMLElement['hidden']; says: string }>();

/** Whole minutes of finding the cause. */
export interface FindMinutes {
  mean: number;
  nine: number;
  /** For which car, and from where on. */
  for: string;
}

/** @param symptom the complaint's id; undefined where the vehicle has none and the page's own stand */
export function vehicleMinutes(symptom: string): FindMinutes | undefined {
  const { vehicle } = window.headertank;
  const [mean, nine] = vehicle?.bookings?.[symptom] ?? [];
  return vehicle && mean !== undefined && nine !== undefined ? { mean, nine, for: vehicle.title } : undefined;
}

/**
 * @param now none: as the page was built
 * @param isFound a cause is proven: nobody books minutes to find it
 */
export function showBooking(now: FindMinutes | undefined, isFound: boolean): void {
  for (const part of document.querySelectorAll<HTMLElement>(
    '[data-booking] :is([data-mean], [data-nine], [data-for])',
  )) {
    const before = built.get(part) ?? part.textContent ?? '';
    built.set(part, before);
    const { dataset } = part;
    const said = dataset.mean !== undefined ? now?.mean : dataset.nine !== undefined ? now?.nine : now?.for;
    part.textContent = String(said ?? before);
  }
  for (const line of document.querySelectorAll<HTMLElement>('[data-booking]')) line.hidden = isFound;
}

/**
 * The estimate is asked for the likeliest cause of the ranking, with the repair as it is on this vehicle. Where that cause has no
 * repair there, none is offered: a price without it would be no price. Without a vehicle of the shelf it is of the car that the minutes are
 * counted for: of its causes, as at build, the likeliest.
 * @param ranked the likeliest first
 * @param repairs minutes of repair and of what follows it, by cause, of the vehicle or of that car; undefined while they are not
 *   known, and the page's own estimate stands
 */
export function showEstimate(
  ranked: readonly { cause: string }[],
  titles: WalkData['causes'],
  repairs: Readonly<Record<string, readonly [repair: number, extra: number]>> | undefined,
  find: FindMinutes | undefined,
): void {
  const place = document.querySelector<HTMLElement>('[data-estimate]');
  const link = place?.querySelector('a');
  const says = place?.querySelector('span');
  if (!place || !link || !says) return;
  const before = builtEstimate.get(place) ?? {
    hash: link.hash,
    hidden: link.hidden,
    says: says.textContent ?? '',
  };
  builtEstimate.set(place, before);
  if (repairs === undefined) {
    link.hash = before.hash;
    link.hidden = before.hidden;
    says.textContent = before.says;
    return;
  }
  const ofCar = window.headertank.vehicle?.repairs === undefined;
  const cause =
    ranked.find((each) => each.cause !== SOMETHING_ELSE && (!ofCar || repairs[each.cause] !== undefined))
      ?.cause ?? '';
  const title = inSentence(titles[cause] ?? cause);
  const [repair = 0, extra = 0] = repairs[cause] ?? [];
  link.hidden = repair === 0;
  says.textContent =
    repair === 0
      ? `No estimate: this shelf has no repair on this vehicle for the likeliest, ${title}.`
      : `, ${title}`;
  const fields = new URLSearchParams(link.hash.slice(1));
  fields.set('repair', String(repair));
  fields.set('extra', String(extra));
  if (find) {
    fields.set('find', String(find.mean));
    fields.set('find-nine', String(find.nine));
  }
  link.hash = fields.toString();
}
