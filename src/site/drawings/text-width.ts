/**
 * How wide a text will be, without a browser. Advance widths are those of Liberation Sans, measured, in thousandths
 * of the size; `ROOM` is added because the reader's font may be one of the wider ones in the family list of
 * tokens.css (Noto Sans runs about 7 % wider on English text).
 */

/** Characters by their advance width. */
const ADVANCE: readonly (readonly [number, string])[] = [
  [200, '\u2009'],
  [222, "'ijl‘’"],
  [260, '|'],
  [278, ' \u00a0!,./:;I[\\]ft·'],
  [333, '()-`r{}“”'],
  [355, '"'],
  [400, '*°'],
  [500, 'Jcksvxyz'],
  [584, '+<=>^~×−'],
  [611, 'FTZ'],
  [667, '&ABEKPSVXY'],
  [722, 'CDHNRUw'],
  [778, 'GOQΩ'],
  [833, 'Mm½'],
  [944, '%W'],
  [1000, '@—…→'],
];

/** Everything else: digits, most small letters, the en dash. */
const USUAL_ADVANCE = 556;

const ROOM = 1.07;

/** Bold is wider letter by letter, by a tenth at most over a word. */
const BOLD = 1.1;

const advances = new Map(
  ADVANCE.flatMap(([width, characters]) => [...characters].map((each) => [each, width] as const)),
);

/** Width of a text set at `size`, in the unit of `size`; a little more than it will need. */
export function widthOf(text: string, size: number, bold = false): number {
  let thousandths = 0;
  for (const character of text) thousandths += advances.get(character) ?? USUAL_ADVANCE;
  return (thousandths / 1000) * size * ROOM * (bold ? BOLD : 1);
}

/**
 * A text broken into lines no wider than `width`, at spaces and after hyphens. A word that is wider alone is cut.
 * @returns at least one line, which may be empty
 */
export function wrapText(text: string, width: number, size: number, bold = false): string[] {
  const fits = (candidate: string) => widthOf(candidate.trimEnd(), size, bold) <= width;
  const lines: string[] = [];
  let current = '';
  for (const piece of text.trim().match(/[^ -]*(?:-| |$)/g) ?? []) {
    if (fits(current + piece)) {
      current += piece;
      continue;
    }
    if (current.trim() !== '') lines.push(current.trimEnd());
    current = '';
    for (const character of piece) {
      if (!fits(current + character) && current !== '') {
        lines.push(current);
        current = '';
      }
      current += character;
    }
  }
  if (current.trim() !== '' || lines.length === 0) lines.push(current.trimEnd());
  return lines;
}
