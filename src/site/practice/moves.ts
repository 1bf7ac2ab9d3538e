/** How scripts/see-it-move.js shows a car beside a sound one. */
import type { ForCar } from './simulated.ts';

export interface MovesRequest {
  /** Of the cause. */
  title: string;
  /** The car is drawn from it: the same code, the same car. */
  code: string;
  faults: readonly string[];
  vehicle: ForCar;
}

/** @returns false when the simulated car does not know the fault on this layout */
export type Moves = (place: HTMLElement, request: MovesRequest) => boolean;
