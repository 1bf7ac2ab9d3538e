/** A fan on less than full: behind its resistor, with volts missing, or on a pulsed supply. */
import {
  CURRENT_RIGHT_WITHIN,
  CURRENT_WRONG_FROM,
  fanBehindResistor,
  fanOnDuty,
  fanOnVolts,
  STARVED_FROM,
  WINDING_SHARE,
} from '../physics/fan-stage.ts';
import { DROP_LIMITS } from '../physics/joint.ts';
import { ampere, ohm, volt } from '../physics/units.ts';
import type {
  Answer,
  AnswerFigure,
  Calculator,
  QuantityFormatter,
  QuantityInput,
  Refusal,
  Values,
} from './declaration.ts';
import { refuse } from './refuse.ts';

/** Less than this share of the speed cools nothing, and many motors stop on it. Common practice, no source. */
const HARDLY_TURNS = 0.4;
/** Below this a clamp meter shows its own zero, A. Common practice, no source. */
const NO_CURRENT = 0.5;
/** A 12 V battery with less than this while the fan runs is flat, or the volts are lost before it, V; of 24 V twice. Common practice, no source. */
const WEAK_BATTERY = 11.5;
/** What is rated over this is a motor of a 24 V vehicle, V. */
const LORRY = 18;
/** Bits of a decimal, V. */
const SLACK = 1e-6;

function measured(hint: string): QuantityInput {
  return {
    kind: 'quantity',
    name: 'measured',
    label: 'Clamp meter shows',
    hint,
    dimension: 'current',
    unit: 'A',
    default: '',
    limits: ['0 A', '150 A'],
    optional: true,
    reading: true,
    when: { ask: ['stage', 'duty'] },
  };
}

export const fanStage: Calculator = {
  id: 'fan-stage',
  title: 'Fan on a stage',
  settles: 'what current, volts and air belong to a slow stage or a pulsed fan, and what missing volts cost',
  also: [
    'fan resistor',
    'slow stage current',
    'fan speed',
    'PWM duty',
    'duty cycle',
    'volts at the fan',
    'half speed',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'ask',
      label: 'The fan runs',
      default: 'stage',
      options: [
        { value: 'stage', label: 'on its slow stage, behind a resistor' },
        { value: 'volts', label: 'full, with volts missing' },
        { value: 'duty', label: 'on a pulsed supply' },
      ],
    },
    {
      kind: 'quantity',
      name: 'full',
      label: 'Draws at full speed',
      hint: 'Sound, at the volts below.',
      dimension: 'current',
      unit: 'A',
      default: '20 A',
      limits: ['0.5 A', '120 A'],
      figure: { path: 'fan.current', end: 'middle' },
    },
    {
      kind: 'quantity',
      name: 'rated',
      label: 'That figure is for',
      hint: 'Volts at its plug; 13 V is usual.',
      dimension: 'voltage',
      unit: 'V',
      default: '13.0 V',
      limits: ['10 V', '30 V'],
    },
    {
      kind: 'quantity',
      name: 'supply',
      label: 'Battery now, fan running',
      dimension: 'voltage',
      unit: 'V',
      default: '13.5 V',
      limits: ['8 V', '30 V'],
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'resistor',
      label: 'Resistor of the stage',
      dimension: 'resistance',
      unit: 'Ω',
      default: '0.3 Ω',
      limits: ['0.02 Ω', '5 Ω'],
      figure: { path: 'fan.resistor', end: 'middle' },
      when: { ask: ['stage'] },
    },
    {
      kind: 'quantity',
      name: 'motor',
      label: 'Volts at the motor’s plug',
      hint: 'Between its two pins, running, probes in from behind.',
      dimension: 'voltage',
      unit: 'V',
      default: '12.4 V',
      limits: ['2 V', '30 V'],
      reading: true,
      when: { ask: ['volts'] },
    },
    {
      kind: 'quantity',
      name: 'duty',
      label: 'On for',
      hint: 'Of the supply that the module passes on, not of the thin wire: that is an order, and some run upside down.',
      dimension: 'share',
      unit: '%',
      default: '60 %',
      limits: ['1 %', '100 %'],
      reading: true,
      when: { ask: ['duty'] },
    },
    measured('Round the supply wire, ten seconds after it came on. Empty to be told what belongs there.'),
  ],
  answer(values, show): Answer | Refusal {
    const motor = { rated: volt(values.number('rated')), current: ampere(values.number('full')) };
    const supply = values.number('supply');
    if (supply > 1.3 * motor.rated)
      return refuse(
        'rated',
        `${v(supply, show)} on a motor for ${v(motor.rated, show)}? Look at both again: a 24 V vehicle has a 24 V fan.`,
      );
    const ask = values.choice('ask');
    const said =
      ask === 'volts'
        ? missingVolts(values, motor, show)
        : ask === 'duty'
          ? pulsed(values, motor, show)
          : slowStage(values, motor, show);
    return 'refused' in said ? said : withBattery(said, supply, motor.rated, show);
  },
  method: {
    formula:
      'volts = rated × ((1 − e) s + e s²), current = full current × s², air = s, s the share of full speed and e what the winding takes; resistor: supply = volts + resistor × current; pulsed: volts = supply × on-time, battery current = motor current × on-time',
    sources: [
      'fan laws: air with the speed, torque with its square, power with its cube (ISO 5801; from memory)',
      'Ohm’s law',
      `winding takes ${WINDING_SHARE.least} to ${WINDING_SHARE.most} of the volts: makers’ sheets, from memory`,
      `current right within ${CURRENT_RIGHT_WITHIN * 100} %, wrong from ${CURRENT_WRONG_FROM * 100} %, starved from ${STARVED_FROM} V, battery flat under ${WEAK_BATTERY} V: common practice, no source`,
    ],
    valid:
      'brushed motors with one fan on them, 12 and 24 V; on a pulsed supply those with a diode that carries the current on. A brushless fan takes an order, and keeps its own speed',
    error:
      'speed within a tenth and current within a sixth for any usual winding; ram air at speed takes load off the fan',
  },
};

const NOTES = [
  'The fan may start by itself at any moment: hands, hair, sleeves and meter leads out of the blades. The resistor of a slow stage is hot enough to burn skin and melt a loom.',
];

/** A battery that is down makes every fan slow: said first, and nothing is called good on it. */
function withBattery(answer: Answer, supply: number, rated: number, show: QuantityFormatter): Answer {
  if (supply >= WEAK_BATTERY * (rated > LORRY ? 2 : 1) - SLACK) return answer;
  return {
    ...answer,
    sentence: `Battery first: ${v(supply, show)} with the fan on. Charge it or let the engine run, and read again; on so little every fan is slow. ${answer.sentence}`,
    tone: answer.tone === 'fine' ? 'look' : answer.tone,
  };
}

type Motor = Parameters<typeof fanOnVolts>[0];

function v(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'V', 1);
}

function amps(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'A', si < 30 ? 1 : 0);
}

function percent(share: number, show: QuantityFormatter): string {
  return show.quantity(share, '%', 0);
}

function runFigures(
  runs: { speed: number; volts: number; current: number },
  show: QuantityFormatter,
): AnswerFigure[] {
  return [
    { label: 'Motor has', value: v(runs.volts, show) },
    { label: 'Motor draws', value: amps(runs.current, show), note: 'within a sixth' },
    { label: 'Speed and air beside full', value: percent(runs.speed, show), note: 'standing car' },
  ];
}

function slowStage(values: Values, motor: Motor, show: QuantityFormatter): Answer {
  const runs = fanBehindResistor(motor, volt(values.number('supply')), ohm(values.number('resistor')));
  const belongs = `${amps(runs.current, show)}, ${v(runs.volts, show)} at the motor and ${percent(runs.speed, show)} of the air`;
  const read = values.optional('measured');
  return {
    ...(read === undefined
      ? runs.speed < HARDLY_TURNS
        ? ({
            sentence: `Behind that resistor it would hardly turn: ${belongs}. Look at the resistor’s figure again.`,
            tone: 'look',
          } as const)
        : ({ sentence: `On that stage belong ${belongs}.`, tone: 'fine' } as const)
      : judgeCurrent(read, runs.current, show, {
          none: 'The stage draws nothing: resistor or its thermal fuse open, or never switched. Full speed tells motor from resistor.',
          little:
            'More ohms in it than the resistor’s: a burnt joint, brushes, or another resistor. Measure the volts over resistor and plugs while it runs.',
          much: 'The resistor is bridged or another, or the motor drags. Measure the volts over the resistor, then spin the fan by hand, plug off.',
        })),
    figures: [
      ...runFigures(runs, show),
      { label: 'Lost over the resistor', value: v(values.number('supply') - runs.volts, show) },
      { label: 'Heat in the resistor', value: show.quantity(runs.heat, 'W', 0) },
    ],
    notes: [
      ...NOTES,
      'Two motors in series for slow each have half the volts: a resistor of nought, and half the supply.',
    ],
  };
}

function missingVolts(values: Values, motor: Motor, show: QuantityFormatter): Answer | Refusal {
  const supply = values.number('supply');
  const at = values.number('motor');
  if (at > supply + 0.1)
    return refuse(
      'motor',
      'The motor cannot have more than the battery. Read both in the same minute, with the fan running.',
    );
  const missing = Math.max(0, supply - at);
  const runs = fanOnVolts(motor, volt(at));
  const whole = fanOnVolts(motor, volt(supply));
  const lost = 1 - runs.speed / whole.speed;
  const tells = `${v(missing, show)} missing cost ${percent(lost, show)} of the air`;
  const current = `At ${v(at, show)} a sound one draws ${amps(runs.current, show)}.`;
  return {
    ...(missing >= STARVED_FROM - SLACK
      ? ({
          sentence: `Starved: ${tells}, so it runs at ${percent(runs.speed / whole.speed, show)}. Halve the way from the battery: fuse, relay 30 to 87, plugs, earth. The motor is not judged before. ${current}`,
          tone: 'stop',
        } as const)
      : missing > DROP_LIMITS['whole circuit'] + SLACK
        ? ({
            sentence: `More than supply and earth together may lose: ${tells}. Look for the joint that is warm. ${current}`,
            tone: 'look',
          } as const)
        : ({ sentence: `It has hardly any volts missing: ${tells}. ${current}`, tone: 'fine' } as const)),
    figures: [
      {
        label: 'Missing at the plug',
        value: show.quantity(missing, 'V', 2),
        note: `${DROP_LIMITS['whole circuit']} V may be lost, starved from ${STARVED_FROM} V`,
      },
      ...runFigures(runs, show),
    ],
    notes: NOTES,
  };
}

function pulsed(values: Values, motor: Motor, show: QuantityFormatter): Answer {
  const duty = values.number('duty');
  const supply = volt(values.number('supply'));
  const runs = fanOnDuty(motor, supply, duty);
  const full = fanOnDuty(motor, supply, 1);
  const read = values.optional('measured');
  const belongs = `${v(runs.volts, show)} on average, ${percent(runs.speed, show)} of the air, and ${amps(runs.fromBattery, show)} from the battery`;
  const isFull = read !== undefined && duty < 0.85 && read > (1 - CURRENT_RIGHT_WITHIN) * full.fromBattery;
  return {
    ...(read === undefined
      ? runs.speed < HARDLY_TURNS
        ? ({
            sentence: `So little is next to rest: many motors stand still on ${belongs}.`,
            tone: 'look',
          } as const)
        : ({ sentence: `On for ${percent(duty, show)} belong ${belongs}.`, tone: 'fine' } as const)
      : judgeCurrent(read, runs.fromBattery, show, {
          none: 'It draws nothing: the module passes nothing on, or the motor is open.',
          little: 'The motor gets less than is ordered: module, joints, brushes. Volts at its plug next.',
          much: isFull
            ? 'It runs full whatever is ordered: the module is through, or has lost its order and helps itself.'
            : 'The motor drags, or more is passed on than was read. Duty at the motor’s own plug next.',
        })),
    figures: [
      ...runFigures(runs, show),
      {
        label: 'From the battery',
        value: amps(runs.fromBattery, show),
        note: 'what a clamp round the supply wire shows',
      },
    ],
    notes: [
      ...NOTES,
      'Without a diode that carries the current on, the motor has less than its mean volts. A meter on volts shows a pulsed supply as a middling figure.',
    ],
  };
}

/** A current beside the one that belongs there. */
function judgeCurrent(
  read: number,
  belongs: number,
  show: QuantityFormatter,
  means: { none: string; little: string; much: string },
): Pick<Answer, 'sentence' | 'tone'> {
  const off = read / belongs - 1;
  const both = `${amps(read, show)}, where ${amps(belongs, show)} belong`;
  if (Math.abs(off) <= CURRENT_RIGHT_WITHIN + SLACK)
    return { sentence: `The current is right: ${both}.`, tone: 'fine' };
  if (Math.abs(off) < CURRENT_WRONG_FROM)
    return {
      sentence: `At the edge: ${both}. Let it run five minutes and read again, with the volts at its plug.`,
      tone: 'look',
    };
  if (read < NO_CURRENT)
    return { sentence: `${means.none} (${both}.)`, tone: belongs > 2 * NO_CURRENT ? 'stop' : 'look' };
  return {
    sentence: `${off < 0 ? 'Too little' : 'Too much'}: ${both}. ${off < 0 ? means.little : means.much}`,
    tone: 'stop',
  };
}
