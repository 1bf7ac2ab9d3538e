/** The words for how often a reading is seen, at the places on the scale the arithmetic takes them for. */
import { LIKELIHOOD_WORDS } from '../../diagnosis/words.ts';
import { coordinate, line, picture } from '../drawings/svg.ts';

const TOP = 20;
const HEIGHT = 320;
const RAIL = 60;

const words = Object.entries(LIKELIHOOD_WORDS)
  .filter(([, share]) => share > 0 && share < 1)
  .map(([word, share]) => ({ word, percent: Math.round(share * 100) }));

/** @param id prefix of the ids */
export function drawWordScale(id: string): string {
  const down = (percent: number) => TOP + ((100 - percent) / 100) * HEIGHT;
  const marks = words.map(({ word, percent }) => {
    const y = down(percent);
    return (
      `<path class="medium" d="${line(RAIL - 6, y, RAIL + 6, y)}"/>` +
      `<text class="strong" x="${RAIL - 14}" y="${coordinate(y + 4.5)}" text-anchor="end">${percent} %</text>` +
      `<text x="${RAIL + 16}" y="${coordinate(y + 4.5)}">${word}</text>`
    );
  });
  return picture(
    {
      id,
      kind: 'guide',
      title: 'Frequency words and the shares they stand for',
      description: words.map(({ word, percent }) => `${word} ${percent} %`).join(', '),
      width: 250,
      height: HEIGHT + 2 * TOP,
    },
    `<path class="heavy" d="${line(RAIL, TOP, RAIL, TOP + HEIGHT)}"/>${marks.join('')}`,
  );
}
