/** What comes after the first stage of a torque, in words. Apart from the schema, which pages need not carry. */
import type { Habit } from './habit.ts';
import type { Quantity } from './quantity.ts';
import { quantityText, showQuantity } from './show-quantity.ts';

/** A further stage: to a torque, or turned on by an angle. */
export type TorqueStage = { to: Quantity } | { turn: Quantity };

/** As it is said at the wrench: "then 40 N·m, then 90° further"; empty where there is one stage. */
export function stagesText(stages: readonly TorqueStage[] | undefined, habit?: Habit): string {
  return (stages ?? [])
    .map((stage) =>
      'to' in stage
        ? `then ${quantityText(stage.to, habit)}`
        : `then ${showQuantity(stage.turn).number}° further`,
    )
    .join(', ');
}

/** What a joint asks besides its first torque: further stages, a new bolt. Empty where it asks nothing. */
export function besidesTorque(
  joint: { stages?: readonly TorqueStage[] | undefined; 'one-use'?: boolean | undefined },
  habit?: Habit,
): string {
  const parts = [stagesText(joint.stages, habit), joint['one-use'] ? 'new bolts' : ''];
  return parts.filter((part) => part !== '').join('; ');
}
