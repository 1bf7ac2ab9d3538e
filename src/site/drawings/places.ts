/**
 * A car from the side with the places where something is noticed, each a way to its complaints. Invented: a plain saloon of
 * straight lines and arcs, no particular car.
 */
import type { CarPlace } from '../../model/symptom.ts';
import { at, coordinate, escapeText, line, type Point } from './svg.ts';

/** Drawing units; a label is as high as a finger is wide when the drawing fills a phone. */
const WIDTH = 360;
const HEIGHT = 262;
const LABEL_HEIGHT = 44;
const TOP_ROW = 1;
const BOTTOM_ROW = HEIGHT - LABEL_HEIGHT - 1;

/** The label's left edge and width, and the spot on the car that it names. */
const SPOTS: Record<CarPlace, { x: number; width: number; row: number; spot: Point }> = {
  'under-the-bonnet': { x: 1, width: 140, row: TOP_ROW, spot: { x: 84, y: 132 } },
  dashboard: { x: 149, width: 98, row: TOP_ROW, spot: { x: 139, y: 127 } },
  vents: { x: 255, width: 70, row: TOP_ROW, spot: { x: 172, y: 127 } },
  'under-the-car': { x: 1, width: 116, row: BOTTOM_ROW, spot: { x: 38, y: 192 } },
  carpet: { x: 125, width: 140, row: BOTTOM_ROW, spot: { x: 162, y: 161 } },
  exhaust: { x: 273, width: 84, row: BOTTOM_ROW, spot: { x: 336, y: 175 } },
};

const BODY =
  'M22 172V152Q22 140 40 136L118 124L152 94Q158 88 168 88H236Q246 88 254 95L288 124L324 130Q338 133 338 148V172H292' +
  'A24 24 0 0 0 244 172H116A24 24 0 0 0 68 172Z';
const GLASS = 'M128 124L158 98H204V124ZM212 98H235L264 124H212Z';
const INSIDE =
  // The dashboard with its wheel, the floor, and a seat.
  'M126 130H146Q152 132 150 144M150 136L166 146M128 164H212M184 162L190 146H212L222 112' +
  // Radiator and engine under the bonnet.
  'M34 146V166M40 146V166M34 146H40M34 166H40M54 143H106V150M54 143V166H64M62 143V137M76 143V136M90 143V135';
const AIR = 'M152 128Q160 123 166 127T180 126M154 134Q162 129 168 133T182 132';
const PIPE = 'M124 176H232M304 176H342M348 174Q354 168 350 162M353 178Q359 172 356 164';
const DRIPS = 'M54 176V180M50 183V187M57 187V191';

/** @param places those that have a complaint, each with the address of its list */
export function drawPlaces(places: readonly { id: CarPlace; name: string; address: string }[]): string {
  const wheels = [92, 268].map((x) => `<circle class="heavy" cx="${x}" cy="176" r="19"/>`).join('');
  const shapes =
    `<g aria-hidden="true"><path class="heavy" d="${BODY}${line(4, 196, 356, 196)}"/>${wheels}` +
    `<path class="thin" d="${GLASS}"/><path class="medium" d="${INSIDE}${PIPE}${DRIPS}"/><path class="thin" d="${AIR}"/></g>`;
  return (
    `<svg class="drawing drawing-places" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}">` +
    `${shapes}${places.map(drawLabel).join('')}</svg>`
  );
}

function drawLabel({ id, name, address }: { id: CarPlace; name: string; address: string }): string {
  const { x, width, row, spot } = SPOTS[id];
  const middle = x + width / 2;
  const edge = row === TOP_ROW ? row + LABEL_HEIGHT : row;
  return (
    `<a href="${escapeText(address)}"><path class="medium" d="M${at(middle, edge)}L${at(spot.x, spot.y)}"/>` +
    `<circle cx="${spot.x}" cy="${spot.y}" r="4"/>` +
    `<rect x="${x}" y="${row}" width="${width}" height="${LABEL_HEIGHT}" rx="4"/>` +
    `<text x="${coordinate(middle)}" y="${coordinate(row + LABEL_HEIGHT / 2 + 5)}">${escapeText(name)}</text></a>`
  );
}
