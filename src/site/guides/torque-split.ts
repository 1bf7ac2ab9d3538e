/** A bolt with the way its torque goes: under the head, in the thread, and the rest into the clamp. VDI 2230. */
import { parseThread } from '../../physics/thread.ts';
import { type TorqueShares, torqueShares } from '../../physics/tightening.ts';
import { spread } from '../drawings/spread.ts';
import { coordinate, line, picture } from '../drawings/svg.ts';

const BAR = { x: 188, top: 20, width: 26, height: 210 };
/** Where on the bolt each part of the torque is spent. */
const SPENT: Record<keyof TorqueShares, { y: number; lines: [string, string] }> = {
  head: { y: 66, lines: ['rubs under', 'the head'] },
  thread: { y: 176, lines: ['rubs in', 'the thread'] },
  clamp: { y: 118, lines: ['pulls: the', 'clamp load'] },
};
const ORDER = ['head', 'clamp', 'thread'] as const;

/**
 * Where a tightening torque goes, as a drawing.
 * @param id prefix of the ids
 * @param name of the thread, such as M8
 * @param friction in the thread and under the head, 0.04 to 0.4
 * @throws Error when no thread is called so
 * @throws OutOfRange on friction
 */
export function drawTorqueSplit(id: string, name: string, friction: number): string {
  const thread = parseThread(name);
  if (!thread) throw new Error(`No thread is called ${name}`);
  const shares = torqueShares(thread, friction);
  const percent = (part: keyof TorqueShares) => `${Math.round(shares[part] * 100)} %`;
  const heights = ORDER.map((part) => shares[part] * BAR.height);
  const tops = heights.map(
    (_, index) => BAR.top + heights.slice(0, index).reduce((sum, each) => sum + each, 0),
  );
  // Two lines of words and a number beside each block, kept apart where a block is thin.
  const words = spread(
    ORDER.map((_, index) => ({ wanted: (tops[index] ?? 0) + (heights[index] ?? 0) / 2 - 24, size: 50 })),
    BAR.top - 6,
    BAR.top + BAR.height + 16,
  );
  const blocks = ORDER.map((part, index) => {
    const top = tops[index] ?? 0;
    const height = heights[index] ?? 0;
    const middle = coordinate(top + height / 2);
    const y = (words[index] ?? 0) + 16;
    const { y: spent, lines } = SPENT[part];
    const [first, second] = lines;
    return (
      `<path class="thin" d="M${part === 'clamp' ? 86 : part === 'thread' ? 100 : 118} ${spent}L${BAR.x - 4} ${middle}"/>` +
      `<path class="${part === 'clamp' ? 'solid' : 'wash'}" d="M${BAR.x} ${coordinate(top)}h${BAR.width}v${coordinate(height)}h-${BAR.width}z"/>` +
      `<text class="strong" x="${BAR.x + 34}" y="${coordinate(y)}">${percent(part)}</text>` +
      `<text class="small" x="${BAR.x + 34}" y="${coordinate(y + 15)}">${first}<tspan x="${BAR.x + 34}" dy="14">${second}</tspan></text>`
    );
  });
  const description = `Under the head ${percent('head')}, in the thread ${percent('thread')}, into the clamp load ${percent('clamp')}.`;
  return picture(
    {
      id,
      kind: 'guide',
      title: `Where the torque on an ${name} goes at friction ${friction}`,
      description,
      width: 320,
      height: 250,
    },
    drawBolt() + blocks.join(''),
  );
}

/** Flange bolt through a cover into the housing, cut open along its middle. */
function drawBolt(): string {
  const flanks = Array.from({ length: 9 }, (_, turn) => 136 + turn * 9);
  const thread = flanks.map((y) => line(72, y, 100, y + 4.5)).join('');
  return (
    // Cover, then housing, each in two halves beside the bolt.
    '<path class="wash" d="M24 72h44v52h-44zM104 72h44v52h-44z"/>' +
    '<path class="part" d="M24 124h48v112h-48zM100 124h48v112h-48z"/>' +
    '<path class="part" d="M72 66h28v152q-14 6 -28 0z"/>' +
    '<path class="part" d="M58 30h56v26h-56zM50 56h72q2 0 2 4v6h-76v-6q0 -4 2 -4z"/>' +
    `<path class="thin" d="M76 30v26M96 30v26${thread}"/>` +
    // What the stretched shank does to the cover.
    '<path class="heavy" d="M86 82v34M86 82l-5 8M86 82l5 8M86 116l-5 -8M86 116l5 -8"/>'
  );
}
