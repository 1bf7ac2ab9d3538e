/** The separate loop of a hybrid or battery-electric vehicle: shown, named, and left alone. */
import type { Layout } from '../../model/layout.ts';
import { loopBox, loopCircle } from './circuit-parts.ts';
import { drawHoses } from './hoses.ts';
import { escapeText } from './svg.ts';
import { wrapText } from './text-width.ts';

export const LOOP_HEIGHT = 142;

const WARNING =
  'High voltage beside these hoses: trained people only, by the maker’s procedure. This sheet stops here.';

/** Drawn below `top`, as wide as the circuit. */
export function drawLowTemperatureLoop(layout: Layout, top: number): string {
  const hybrid = layout.power === 'hybrid';
  const title = hybrid ? 'Separate loop for the electric drive' : 'Separate loop for the battery';
  const upper = top + 46;
  const lower = top + 90;
  const boxes = hybrid
    ? [
        { x: 14, y: upper - 16, width: 70, height: 32, lines: ['own', 'radiator'] },
        { x: 164, y: upper - 16, width: 84, height: 32, lines: ['power', 'electronics'] },
        { x: 286, y: upper - 16, width: 78, height: 32, lines: ['drive', 'motor'] },
      ]
    : [
        { x: 14, y: upper - 16, width: 86, height: 32, lines: ['refrigerant', 'cooler'] },
        {
          x: 184,
          y: upper - 16,
          width: 180,
          height: 32,
          lines: ['battery', 'often low-conductivity coolant'],
        },
      ];
  const first = boxes[0];
  const last = boxes.at(-1);
  if (!first || !last) return '';
  const left = first.x + first.width / 2;
  const right = last.x + last.width / 2;
  const run = [
    { x: left, y: upper },
    { x: right, y: upper },
    { x: right, y: lower },
    { x: left, y: lower },
    { x: left, y: upper },
  ];
  const pump = { x: hybrid ? 124 : 142, y: upper };
  const clear = [pump, ...boxes.map((box) => ({ x: box.x + box.width / 2, y: upper }))];
  return (
    `<path class="thin" d="M10 ${top - 4}H370"/>` +
    `<text class="strong" x="10" y="${top + 14}">${title}</text>` +
    drawHoses([{ name: 'loop', flow: 'full', points: run }], clear, []) +
    `<path class="part" d="${boxes.map(loopBox).join('')}${loopCircle(pump, 11)}"/>` +
    `<path class="solid" d="M${pump.x + 7} ${pump.y}l-11 -6v12z"/>` +
    `<g class="middle">${boxes
      .flatMap((box) =>
        box.lines.map(
          (words, index) =>
            `<text x="${box.x + box.width / 2}" y="${upper - 3 + index * 14}">${words}</text>`,
        ),
      )
      .join('')}<text x="${pump.x}" y="${upper + 25}">pump</text></g>` +
    wrapText(WARNING, 360, 12, true)
      .map(
        (words, index) =>
          `<text class="stop" x="10" y="${lower + 26 + index * 14}">${escapeText(words)}</text>`,
      )
      .join('')
  );
}
