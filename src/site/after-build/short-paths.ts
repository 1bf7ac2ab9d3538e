/**
 * The lines of drawings, each from where the last one ended. Ribs, rungs and points of a curve then repeat the same few steps,
 * which pack to a fraction of what the same lines weigh by their places on the sheet.
 */
import type { Outcome, Scanned } from './scanned.ts';

/** Numbers each command takes. */
const TAKES: Record<string, number> = { m: 2, l: 2, h: 1, v: 1, q: 4, c: 6, a: 7, z: 0 };
const PART = /([a-z])|-?(?:\d+\.?\d*|\.\d+)/gi;
/** Drawings are reckoned in tenths of a unit. */
const DECIMALS = 3;

/** Every path of every page. */
export function shortenPaths(scanned: Scanned): Outcome {
  const outcome: Outcome = { edits: new Map(), faults: [] };
  for (const [name, { tags }] of scanned) {
    const edits = tags.flatMap((tag) => {
      const data = tag.name === 'path' ? tag.attributes.find((each) => each.name === 'd') : undefined;
      return data ? [{ start: data.start, end: data.end, text: `"${shortPath(data.value)}"` }] : [];
    });
    if (edits.length > 0) outcome.edits.set(name, edits);
  }
  return outcome;
}

/**
 * @param data path data of M, L, H, V, Q, C, A and Z in either case, commands written out
 * @returns the same lines with every place but the first told from the last one, to a thousandth
 * @throws Error at a command it does not know
 */
export function shortPath(data: string): string {
  const parts = data.match(PART) ?? [];
  let short = '';
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let command = '';
  for (let next = 0; next < parts.length; ) {
    if (/[a-z]/i.test(parts[next] ?? '')) command = parts[next++] ?? '';
    const kind = command.toLowerCase();
    const count = TAKES[kind];
    if (count === undefined) throw new Error(`A path has "${command}", which is not known here: ${data}`);
    const numbers = parts.slice(next, next + count).map(Number);
    next += count;
    const steps = command === kind ? numbers : fromHere(kind, numbers, x, y);
    if (kind === 'z') [x, y] = [startX, startY];
    else if (kind === 'h') x += steps[0] ?? 0;
    else if (kind === 'v') y += steps[0] ?? 0;
    else [x, y] = [x + (steps.at(-2) ?? 0), y + (steps.at(-1) ?? 0)];
    if (kind === 'm') [startX, startY] = [x, y];
    short += (short === '' ? 'M' : kind) + steps.map((step) => written(step)).join(' ');
    // Further numbers after a move are lines.
    if (kind === 'm') command = command === 'm' ? 'l' : 'L';
  }
  return short;
}

/** Places on the sheet as steps from a place. */
function fromHere(kind: string, numbers: readonly number[], x: number, y: number): number[] {
  if (kind === 'h') return numbers.map((number) => number - x);
  if (kind === 'v') return numbers.map((number) => number - y);
  // Of an arc only the last two are a place.
  const shape = kind === 'a' ? 5 : 0;
  return numbers.map((number, index) =>
    index < shape ? number : number - ((index - shape) % 2 === 0 ? x : y),
  );
}

function written(step: number): string {
  const rounded = Number(step.toFixed(DECIMALS));
  return String(Object.is(rounded, -0) ? 0 : rounded);
}
