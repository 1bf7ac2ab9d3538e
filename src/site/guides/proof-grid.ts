/** A table of proofs and faults, each field filled as high as its proof is seen with that fault. */
import { coordinate, escapeText, line, picture } from '../drawings/svg.ts';
import { wrapText } from '../drawings/text-width.ts';

export interface ProofRow {
  name: string;
  /** For each fault how often the proof is seen, 0 to 1. */
  seen: readonly number[];
}

const LABEL = 112;
const HEAD = 40;
const COLUMN = 42;
const ROW = 50;
const FIELD = 34;
const TEXT = 13;

/**
 * @param id prefix of the ids
 * @param faults names of the columns, one or two short words each
 */
export function drawProofGrid(
  id: string,
  title: string,
  faults: readonly string[],
  rows: readonly ProofRow[],
): string {
  const heads = faults.map((fault, column) => {
    const x = coordinate(LABEL + column * COLUMN + FIELD / 2);
    const [first = '', second] = fault.split(' ');
    const below = second === undefined ? '' : `<tspan x="${x}" dy="13">${escapeText(second)}</tspan>`;
    return `<text class="small" x="${x}" y="16" text-anchor="middle">${escapeText(first)}${below}</text>`;
  });
  const fields = rows.map(({ name, seen }, row) => {
    const top = HEAD + row * ROW;
    const words = wrapText(name, LABEL - 8, TEXT)
      .map((each, index) => `<tspan x="0" dy="${index === 0 ? 0 : 14}">${escapeText(each)}</tspan>`)
      .join('');
    const filled = seen.map((share, column) => {
      const x = LABEL + column * COLUMN;
      const height = share * FIELD;
      const percent = share < 0.01 ? '<1' : String(Math.round(share * 100));
      return (
        `<rect class="part" x="${x}" y="${top}" width="${FIELD}" height="${FIELD}"/>` +
        `<rect class="bar" x="${x}" y="${coordinate(top + FIELD - height)}" width="${FIELD}" height="${coordinate(height)}"/>` +
        `<text class="strong" x="${x + FIELD / 2}" y="${top + FIELD / 2 + 5}" text-anchor="middle">${escapeText(percent)}</text>`
      );
    });
    const rule = `<path class="thin" d="${line(0, top - 8, LABEL + faults.length * COLUMN - 8, top - 8)}"/>`;
    return `${rule}<text x="0" y="${top + 14}">${words}</text>${filled.join('')}`;
  });
  const description = rows
    .map(
      ({ name, seen }) =>
        `${name}: ${seen.map((share, column) => `${faults[column]} ${Math.round(share * 100)} %`).join(', ')}`,
    )
    .join('; ');
  return picture(
    {
      id,
      kind: 'guide',
      title,
      description: `Of a hundred cars with a fault, on how many the proof is seen. ${description}.`,
      width: LABEL + faults.length * COLUMN,
      height: HEAD + rows.length * ROW,
    },
    heads.join('') + fields.join(''),
  );
}
