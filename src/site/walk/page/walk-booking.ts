/** The minutes to book, as the complaint's page has them at build, for the chosen vehicle. */
import '../../browser/page-globals.ts';

/** What a place said at build, for when no vehicle is chosen any more. */
const built = new WeakMap<Element, string[]>();

/** @param symptom the complaint's id */
export function showBooking(symptom: string): void {
  const { vehicle } = window.headertank;
  const own = vehicle?.bookings[symptom];
  for (const place of document.querySelectorAll('[data-booking]')) {
    const parts = [...place.querySelectorAll('b, [data-for]')];
    const before = built.get(place) ?? parts.map((part) => part.textContent ?? '');
    built.set(place, before);
    const said = vehicle && own ? [...own.map(String), vehicle.title] : before;
    for (const [at, part] of parts.entries()) part.textContent = said[at] ?? '';
    // The estimate is asked with the same minutes.
    for (const link of document.querySelectorAll<HTMLAnchorElement>('#counter a[href*="#find="]'))
      link.hash = link.hash.replace(/\d+(&find-nine=)\d+/, `${said[0]}$1${said[1]}`);
  }
}
