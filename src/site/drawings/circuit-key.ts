/** The key under a circuit: what the lines and marks mean. */
import { WIDTH } from './circuit-plan.ts';
import { drawHoses } from './hoses.ts';

export const KEY_HEIGHT = 30;

/**
 * The key under a circuit as SVG.
 * @param top where it begins, in units of the drawing
 */
export function drawKey(top: number): string {
  const y = top + 10;
  const sample = (x: number, flow: 'full' | 'still') => ({
    name: flow,
    flow,
    points: [
      { x, y },
      { x: x + 30, y },
    ],
  });
  return (
    `<path class="thin" d="M10 ${top - 6}H${WIDTH - 10}"/>` +
    drawHoses([sample(12, 'full'), sample(91, 'still')], [], []) +
    `<circle class="solid" cx="209" cy="${y}" r="6"/>` +
    `<rect class="part" x="263" y="${y - 5}" width="11" height="10" rx="1"/>` +
    [
      [48, 'flows'],
      [127, 'stands still'],
      [221, 'feel'],
      [280, 'measure'],
    ]
      .map(([x, words]) => `<text x="${x}" y="${y + 4}">${words}</text>`)
      .join('')
  );
}
