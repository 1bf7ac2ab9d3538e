/** A number in a disc on a drawing of the circuit, with a line to what it means where it has no room there. */
import { TEXT } from '../drawings/circuit-plan.ts';
import { line, type Point } from '../drawings/svg.ts';

export interface NumberedPlace {
  name: string;
  tells: string;
  /** Of the number. */
  mark: Point;
  /** What it means, when the number has no room there. */
  means?: Point;
}

/** @param number shown in the disc */
export function drawNumber(
  { mark: { x, y }, means }: Pick<NumberedPlace, 'mark' | 'means'>,
  number: number,
): string {
  const leader = means ? `<path class="medium" d="${line(x, y, means.x, means.y)}"/>` : '';
  return `${leader}<circle class="solid" cx="${x}" cy="${y}" r="10"/><text class="mark feel" x="${x}" y="${y + TEXT / 3}">${number}</text>`;
}
