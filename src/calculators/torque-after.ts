/** What follows the first torque: a second stage, angles, and what both ask of whoever turns the wrench. */
import type { TorqueStage } from '../model/torque-stages.ts';
import { type NewtonMetre, newtonMetre } from '../physics/units.ts';
import type { AnswerFigure, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

const DEGREE = Math.PI / 180;
/** More than one whole turn after a stage is a slip of the pen. Common practice, no source. */
const WHOLE_TURN = 360 * DEGREE;
/** So far only long bolts are turned, of heads, bearings and crank pulleys. Common practice, no source. */
export const LONG_BOLTS_FROM = 180 * DEGREE;
/** A stage before an angle is no more than this share of the usual highest: it seats the joint, and the angle tightens. Common practice, no source. */
export const STAGE_SHARE = 0.8;
const SLACK = 1e-9;

function turn(name: string, label: string, hint: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'angle',
    unit: '°',
    default: '',
    limits: ['10°', '360°'],
    optional: true,
  };
}

export const STAGE_INPUTS: readonly QuantityInput[] = [
  {
    kind: 'quantity',
    name: 'second',
    label: 'Then to',
    hint: 'Second stage, if there is one.',
    dimension: 'torque',
    unit: 'N·m',
    default: '',
    limits: ['0.2 N·m', '1000 N·m'],
    optional: true,
  },
  turn('angle', 'Then turned on by', 'Of “20 N·m + 90°” the 90°.'),
  turn('again', 'And once more by', ''),
];

/** A torque and what follows it. */
export interface Stages {
  readonly first: NewtonMetre;
  /** The last torque, before any angle: the one a bolt is judged by. */
  readonly last: NewtonMetre;
  readonly angles: readonly number[];
  /** All angles, rad. */
  readonly total: number;
}

/** The stages typed, or why they cannot be. */
export function stagesOf(values: Values, show: QuantityFormatter): Stages | Refusal {
  const first = newtonMetre(values.number('torque'));
  const second = values.optional('second');
  const [angle, again] = [values.optional('angle'), values.optional('again')];
  if (second !== undefined && second <= first)
    return refuse(
      'second',
      `After a first stage of ${torqueText(first, show)} a second of ${torqueText(second, show)} turns nothing. Look at the order of the two; where the maker slackens between them, type the last one alone.`,
    );
  if (again !== undefined && angle === undefined)
    return refuse('angle', 'Write the first angle here; the second one comes after it.');
  const angles = [angle, again].flatMap((each) => (each === undefined ? [] : [each]));
  const total = angles.reduce((sum, each) => sum + each, 0);
  if (total > WHOLE_TURN + SLACK)
    return refuse(
      again === undefined ? 'angle' : 'again',
      `${degrees(total)} is more than a whole turn, and no maker asks it. Look again: the second figure may be the sum of both.`,
    );
  return { first, last: newtonMetre(second ?? first), angles, total };
}

/** Whole newton metres without a decimal. */
export function torqueText(torque: number, show: QuantityFormatter): string {
  return show.quantity(torque, 'N·m', torque % 1 === 0 ? 0 : 1);
}

/** An angle as a wrench shows it: "90°". @param angle rad */
export function degrees(angle: number): string {
  return `${Math.round(angle / DEGREE)}°`;
}

/** An angle as the eye sees it. */
const SEEN: Readonly<Record<string, string>> = {
  '30°': 'half a flat of a hexagon',
  '45°': 'an eighth of a turn',
  '60°': 'one flat of a hexagon',
  '90°': 'a quarter turn',
  '120°': 'two flats of a hexagon',
  '180°': 'half a turn',
  '270°': 'three quarters of a turn',
  '360°': 'one whole turn',
};

/** "10 N·m, then 20 N·m, then 90° further (a quarter turn)" */
export function inOrder({ first, last, angles }: Stages, show: QuantityFormatter): string {
  const turns = angles.map((angle) => {
    const text = degrees(angle);
    return `${text} further${SEEN[text] === undefined ? '' : ` (${SEEN[text]})`}`;
  });
  return [torqueText(first, show), ...(last > first ? [torqueText(last, show)] : []), ...turns].join(
    ', then ',
  );
}

/** All turns added up. */
export function turnFigures({ angles, total }: Stages): AnswerFigure[] {
  if (angles.length === 0) return [];
  const text = degrees(total);
  return [
    {
      label: 'Turned on in all',
      value: text,
      ...(SEEN[text] !== undefined && { note: SEEN[text] }),
    },
  ];
}

export const ANGLE_NOTES = [
  'Every bolt of the joint to the torque first, in the maker’s order; then each one turned on, in the same order. Paint a line across head and part before the turn, or set the gauge to nought; after it the mark is the proof, for a wrench that clicks says nothing of an angle.',
  'What clamp load the angle adds depends on how long and how stiff bolt and part are. No figure is given here for it, and none may be made of it.',
];

/** The stages of a vehicle's joint as fields; none where they do not fit into them. */
export function fieldsOfStages(
  stages: readonly TorqueStage[] | undefined,
): Readonly<Record<'second' | 'angle' | 'again', string>> | undefined {
  const fields = { second: '', angle: '', again: '' };
  for (const stage of stages ?? []) {
    const isTurn = 'turn' in stage;
    const free = !isTurn
      ? fields.second === '' && fields.angle === ''
        ? 'second'
        : undefined
      : fields.angle === ''
        ? 'angle'
        : fields.again === ''
          ? 'again'
          : undefined;
    if (free === undefined) return undefined;
    const { low, high } = isTurn ? stage.turn : stage.to;
    const middle = (low + high) / 2;
    fields[free] = isTurn ? degrees(middle) : `${Number(middle.toFixed(2))} N·m`;
  }
  return fields;
}
