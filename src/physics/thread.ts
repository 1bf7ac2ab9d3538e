import { type Metre, metre, type SquareMetre, squareMetre } from './units.ts';

/** A metric ISO thread with the bearing face that its usual hexagon head has. */
export interface Thread {
  /** "M6" for the coarse pitch, "M8x1" for a fine one. */
  readonly name: string;
  /** Nominal diameter, m. */
  readonly diameter: Metre;
  /** Pitch, m. */
  readonly pitch: Metre;
  /** Smallest outer diameter of the bearing face under a hexagon head, m. */
  readonly bearingFace: Metre;
  /** Diameter of a clearance hole of the medium series, m. */
  readonly clearanceHole: Metre;
}

/**
 * Millimetres by nominal diameter: coarse pitch (ISO 261), bearing face of the hexagon head (ISO 4014, product
 * grade A), clearance hole (ISO 273, medium series). M4, M7, M14 and M16 from memory.
 */
const SIZES: Readonly<Record<number, readonly [pitch: number, bearingFace: number, clearanceHole: number]>> =
  {
    4: [0.7, 5.88, 4.5],
    5: [0.8, 6.88, 5.5],
    6: [1.0, 8.88, 6.6],
    7: [1.0, 9.63, 7.6],
    8: [1.25, 11.63, 9.0],
    10: [1.5, 14.63, 11.0],
    12: [1.75, 16.63, 13.5],
    14: [2.0, 19.64, 15.5],
    16: [2.0, 22.49, 17.5],
  };

/** Coarse threads this folder knows, thinnest first. */
export const COARSE_THREADS: readonly string[] = Object.keys(SIZES).map((diameter) => `M${diameter}`);

/** Finest pitch cut on a bolt of these sizes; a smaller one is a slip. ISO 261. */
const FINEST_PITCH = 0.5;

/**
 * Reads a thread as it is written on a drawing: `M6`, `M8x1`, `m8 × 1.25`.
 *
 * @returns undefined when it is no metric thread from M4 to M16
 */
export function parseThread(text: string): Thread | undefined {
  const parts = /^M\s?(\d{1,2})(?:\s?[x×*]\s?(\d(?:[.,]\d{1,2})?))?$/i.exec(text.trim());
  const diameter = Number(parts?.[1]);
  const size = SIZES[diameter];
  if (!size) return undefined;
  const [coarse, bearingFace, clearanceHole] = size;
  const pitch = parts?.[2] === undefined ? coarse : Number(parts[2].replace(',', '.'));
  if (pitch < FINEST_PITCH || pitch > coarse) return undefined;
  return {
    name: pitch === coarse ? `M${diameter}` : `M${diameter}x${pitch}`,
    diameter: metre(diameter / 1000),
    pitch: metre(pitch / 1000),
    bearingFace: metre(bearingFace / 1000),
    clearanceHole: metre(clearanceHole / 1000),
  };
}

/** Pitch diameter d2, m. ISO 724: d - 0.649519 P. */
export function pitchDiameter({ diameter, pitch }: Thread): Metre {
  return metre(diameter - 0.649519 * pitch);
}

/** Root diameter d3, m. ISO 724 and VDI 2230: d - 1.226869 P. */
export function rootDiameter({ diameter, pitch }: Thread): Metre {
  return metre(diameter - 1.226869 * pitch);
}

/** Diameter of the stress area, m: mean of pitch and root diameter, ISO 898-1. */
export function stressDiameter(thread: Thread): Metre {
  return metre((pitchDiameter(thread) + rootDiameter(thread)) / 2);
}

/** Nominal stress area, m2. ISO 898-1: pi/4 ((d2 + d3)/2)^2. */
export function stressArea(thread: Thread): SquareMetre {
  return squareMetre((Math.PI / 4) * stressDiameter(thread) ** 2);
}
