import { item, real, whole } from './arrays.ts';
import { CARS, type CompiledModel } from './compiled.ts';
import type { Action } from './model.ts';
import { nameOf } from './posterior.ts';
import { applyOutcome, openAfter, type State, sumOf } from './state.ts';

/** An action by number: a test, a proof of a cause, or passing on. */
export type NumberedAction =
  | { kind: 'test'; test: number }
  | { kind: 'prove'; cause: number }
  | { kind: 'pass-on' };

/** The same action by ids. */
export function named(compiled: CompiledModel, action: NumberedAction): Action {
  switch (action.kind) {
    case 'test':
      return { kind: 'test', test: item(compiled.tests, action.test).id };
    case 'prove':
      return { kind: 'prove', cause: nameOf(compiled, action.cause) };
    case 'pass-on':
      return action;
  }
}

/** Minutes of the act itself from this state of the car, getting ready included. */
export function minutesOf(compiled: CompiledModel, action: NumberedAction, car: number): number {
  switch (action.kind) {
    case 'test':
      return real(item(compiled.tests, action.test).minutes, car);
    case 'prove':
      return real(compiled.proof, action.cause * CARS + car);
    case 'pass-on':
      return compiled.passOn;
  }
}

/**
 * The states an action leaves undecided, those that can happen only. A proof leaves the case that it was not
 * this cause; passing on leaves nothing.
 */
export function statesAfter(compiled: CompiledModel, state: State, action: NumberedAction): State[] {
  if (action.kind === 'pass-on') return [];
  if (action.kind === 'prove') {
    const weights = Float64Array.from(state.weights);
    weights[action.cause] = 0;
    const car = whole(compiled.afterProof, action.cause * CARS + state.car);
    return sumOf(weights) > 0 ? [{ weights, car, open: state.open }] : [];
  }
  const { rows, after } = item(compiled.tests, action.test);
  const open = openAfter(compiled, state.open, action.test);
  const car = whole(after, state.car);
  return rows.flatMap((row) => {
    const weights = new Float64Array(compiled.columns);
    return applyOutcome(state.weights, row, weights) > 0 ? [{ weights, car, open }] : [];
  });
}

/** Every action that could come first: each open test, each possible cause, passing on. */
export function actionsOf(compiled: CompiledModel, state: State): NumberedAction[] {
  const actions: NumberedAction[] = state.open.map((test) => ({ kind: 'test', test }));
  for (let cause = 0; cause < compiled.rest; cause++)
    if (real(state.weights, cause) > 0) actions.push({ kind: 'prove', cause });
  actions.push({ kind: 'pass-on' });
  return actions;
}
