import { resolve } from '../../../diagnosis/state.ts';
import { walkFigures } from '../../../diagnosis/walk-figures.ts';
import type { Diagnoser } from './diagnose.ts';
import type { WalkState } from './walk-state.ts';

/** Ways less likely than this are left out: a hundredth of a second instead of a tenth, and minutes to within one. */
const LEAST_CHANCE = 2e-3;

/** Whole minutes of the questions that are left with these answers, on a vehicle whose layout is known. */
export function bookingFromHere(
  diagnoser: Diagnoser,
  { answers, layout, missing }: Pick<WalkState, 'answers' | 'layout' | 'missing'>,
): { mean: number; nine: number } {
  const { compiled, data } = diagnoser;
  const situation = resolve(compiled, diagnoser.situation(answers, layout, missing));
  const { expectedMinutes, nineInTen } = walkFigures(compiled, data.tree, situation, LEAST_CHANCE, layout);
  return { mean: Math.round(expectedMinutes), nine: Math.round(Math.max(nineInTen, expectedMinutes)) };
}
