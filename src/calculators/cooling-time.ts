/** How long an engine takes to cool before it is opened, or to warm up, on this day. */
import { flashTemperature } from '../physics/boiling.ts';
import {
  COOL_ENOUGH,
  coolingTime,
  coolingTimeSeen,
  type EnginePlace,
  type Span,
  type Warming,
  type WarmUpRisk,
  warmUpTime,
} from '../physics/cooling-time.ts';
import { toMassFraction } from '../physics/strength.ts';
import { cubicMetre, kelvin, metre, second, volumeFraction } from '../physics/units.ts';
import { ALTITUDE, CAPACITY, openingCaution } from './coolant-inputs.ts';
import type {
  Answer,
  Calculator,
  Input,
  QuantityFormatter,
  QuantityInput,
  Refusal,
  Values,
} from './declaration.ts';
import { refuse } from './refuse.ts';

/** Half and half stands for what is inside: water flashes a few kelvin sooner, which the error holds. */
const COOLANT = { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(0.5)) } as const;
/** So near to it the outside air decides, K. */
const TOO_WARM_A_DAY = 2;
/** Beside the span that a sound engine needs, the time taken may be so far out: a hand on the clock, lights on the way. Common practice, no source. */
const TAKEN = { least: 0.7, most: 1.5 } as const;

const STANDING: Readonly<Record<string, readonly [EnginePlace, string]>> = {
  open: ['bonnet open', 'bonnet open'],
  shut: ['bonnet shut', 'bonnet shut'],
  blower: ['blower before it', 'bonnet open, a blower before the radiator'],
};
const WARMING: Readonly<Record<string, readonly [Warming, string]>> = {
  town: ['town', 'in town'],
  road: ['open road', 'on the open road'],
  standing: ['standing, fast idle', 'standing, at 1,500 to 2,000 rpm'],
};
const COOL = { ask: ['cool'] };
const WARM = { ask: ['warm'] };

function options(of: Readonly<Record<string, readonly [string, string]>>) {
  return Object.entries(of).map(([value, [, label]]) => ({ value, label }));
}

function temperature(
  name: string,
  label: string,
  value: string,
  more: Partial<QuantityInput> & Pick<QuantityInput, 'limits'>,
): QuantityInput {
  return { kind: 'quantity', name, label, dimension: 'temperature', unit: '°C', default: value, ...more };
}

function time(
  name: string,
  label: string,
  value: string,
  more: Partial<QuantityInput> & Pick<QuantityInput, 'limits'>,
): QuantityInput {
  return { kind: 'quantity', name, label, dimension: 'time', unit: 'min', default: value, ...more };
}

const TO_COOL: readonly Input[] = [
  temperature('now', 'Coolant now', '92 °C', {
    hint: 'Scan tool, or a contact thermometer. Infrared on a hose reads far too low.',
    limits: ['0 °C', '130 °C'],
    reading: true,
    when: COOL,
  }),
  {
    kind: 'choice',
    name: 'standing',
    label: 'It stands with',
    default: 'open',
    options: options(STANDING),
    when: COOL,
  },
  temperature('first', 'An earlier reading', '', {
    hint: 'With the time since then its own pace is taken. Empty: as engines of this size do.',
    limits: ['0 °C', '130 °C'],
    optional: true,
    reading: true,
    when: COOL,
  }),
  time('between', 'Time since then', '', {
    limits: ['5 min', '6 h'],
    optional: true,
    reading: true,
    when: COOL,
  }),
  { ...CAPACITY, when: COOL },
  { ...ALTITUDE, when: COOL },
];

const TO_WARM: readonly Input[] = [
  temperature('start', 'Coolant at the start', '20 °C', { limits: ['-40 °C', '120 °C'], when: WARM }),
  temperature('opens', 'Thermostat starts to open', '88 °C', {
    limits: ['60 °C', '115 °C'],
    figure: { path: 'thermostat.opens', end: 'middle' },
    when: WARM,
  }),
  time('usual', 'Usual time to it at 20 °C, driven', '9 min', {
    limits: ['2 min', '40 min'],
    figure: { path: 'warm-up.time', end: 'middle' },
    when: WARM,
  }),
  {
    kind: 'choice',
    name: 'how',
    label: 'It warms up',
    default: 'town',
    options: options(WARMING),
    when: WARM,
  },
  {
    kind: 'choice',
    name: 'heater',
    label: 'Heater',
    default: 'off',
    options: [
      { value: 'off', label: 'blower off' },
      { value: 'full', label: 'hot, blower on full' },
    ],
    when: WARM,
  },
  time('took', 'Time it took', '', {
    hint: 'Empty to be told what belongs there.',
    limits: ['0.5 min', '90 min'],
    optional: true,
    reading: true,
    when: WARM,
  }),
];

export const coolingTimeCalculator: Calculator = {
  id: 'cooling-time',
  title: 'Cooling and warming time',
  settles:
    'how long a hot engine needs before it is opened, and how long a cold one to its thermostat, on this day',
  also: [
    'when can I open the cap',
    'cool-down time',
    'wait before opening',
    'warm-up time',
    'how long to warm up',
    'cold day',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'ask',
      label: 'The engine',
      default: 'cool',
      options: [
        { value: 'cool', label: 'cools, to be opened' },
        { value: 'warm', label: 'warms up' },
      ],
    },
    ...TO_COOL,
    temperature('outside', 'Air round the car', '20 °C', { limits: ['-40 °C', '50 °C'] }),
    ...TO_WARM,
  ],
  answer(values, show): Answer | Refusal {
    return values.choice('ask') === 'warm' ? warming(values, show) : cooling(values, show);
  },
  method: {
    formula:
      'cooling: distance to the air outside falls evenly on a ratio scale, to 37 % in 65 to 130 minutes with 6 l and the bonnet open, slower by the cube root of the coolant; from two readings by their own pace. Warming: two lumps of heat, engine and radiator, fitted to the usual time',
    sources: [
      'Newton’s law of cooling',
      'one to two hours from warm to 50 °C with the bonnet open, half of it with a blower, 1.35 of it with the bonnet shut: common practice, no source',
      'heat of an engine by speed, its metal and its losses: usual sizes, common practice, no source',
      'boiling in the open as in the boil margin: IAPWS-IF97, Perry 8th ed.',
    ],
    valid: 'engine off and no after-run to cool; sound engine, no sun on the bonnet, warming within an hour',
    error:
      'a factor of two from the size alone; from two readings a fifth and what 1 K of each thermometer makes; warming a third either way',
  },
};

/** "45 min", "1 h 20 min"; by five minutes from half an hour on. */
function clock(seconds: number): string {
  const all = seconds < 1800 ? Math.round(seconds / 60) : 5 * Math.round(seconds / 300);
  const [hours, rest] = [Math.floor(all / 60), all % 60];
  return [hours > 0 ? `${hours}\u00a0h` : '', rest > 0 || hours === 0 ? `${rest}\u00a0min` : '']
    .filter((part) => part !== '')
    .join('\u00a0');
}

function span({ soonest, latest }: Span): string {
  const [from, to] = [clock(soonest), clock(latest)];
  return from === to ? `about ${from}` : `${from} to ${to}`;
}

function cooling(values: Values, show: QuantityFormatter): Answer | Refusal {
  const now = kelvin(values.number('now'));
  const outside = kelvin(values.number('outside'));
  const flashes = flashTemperature(COOLANT, metre(values.number('altitude')));
  const enough = show.quantity(COOL_ENOUGH, '°C', 0);
  const [first, between] = [values.optional('first'), values.optional('between')];
  if ((first === undefined) !== (between === undefined))
    return refuse(
      first === undefined ? 'first' : 'between',
      'An earlier reading counts with the time since then. Write both, or neither.',
    );
  const figures = [
    {
      label: 'Flashes when opened above',
      value: show.quantity(flashes, '°C', 0),
      note: 'half and half; water some kelvin sooner',
    },
  ];
  const notes = [
    openingCaution(show),
    'In the first ten minutes after a hot run it gets hotter, not cooler. The fan may start by itself meanwhile: its plug off before a hand goes there.',
  ];
  if (now <= COOL_ENOUGH)
    return {
      sentence: `By its temperature it is down: ${show.quantity(now, '°C', 0)}, and below ${enough} it scalds no more at a touch. What is left is pressure: the hose has to dent with two fingers, and gas keeps a system hard when it is cold.`,
      tone: 'fine',
      figures,
      notes,
    };
  if (outside > COOL_ENOUGH - TOO_WARM_A_DAY)
    return refuse(
      'outside',
      `With ${show.quantity(outside, '°C', 0)} outside it does not come to ${enough} by itself. Into the shade or the night with it.`,
    );
  if (first !== undefined && first - now < 3)
    return {
      sentence: `It has not begun to cool: heat soaks into the coolant after a hot run, and it rises for ten minutes. Leave the cap shut, and read again in a quarter of an hour.`,
      tone: 'look',
      figures,
      notes,
    };
  const standing = STANDING[values.choice('standing')]?.[0] ?? 'bonnet open';
  const wait =
    first === undefined || between === undefined
      ? coolingTime(cubicMetre(values.number('capacity')), standing, now, COOL_ENOUGH, outside)
      : coolingTimeSeen(kelvin(first), now, second(between), COOL_ENOUGH, outside);
  const hot = now >= flashes;
  return {
    sentence: hot
      ? `Opened now it flashes to steam. Cap shut, nobody before it. It wants ${span(wait)} to come to ${enough}.`
      : `Wait ${span(wait)}: then it is at ${enough}. Cap shut till then, and the hose decides after that.`,
    tone: hot ? 'stop' : 'look',
    figures: [
      {
        label: `To ${enough}`,
        value: span(wait),
        note:
          first === undefined
            ? 'a short drive the less, a long one the more'
            : 'at the pace of its two readings',
      },
      ...figures,
    ],
    notes,
  };
}

function warming(values: Values, show: QuantityFormatter): Answer | Refusal {
  const opens = kelvin(values.number('opens'));
  const start = kelvin(values.number('start'));
  if (start >= opens - 2)
    return refuse('start', 'It is as warm as its thermostat already. A warm-up starts cold.');
  const outside = kelvin(values.number('outside'));
  const comes = warmUpTime(
    opens,
    second(values.number('usual')),
    WARMING[values.choice('how')]?.[0] ?? 'town',
    {
      start,
      outside,
      heater: values.choice('heater') === 'full' ? 1 : 0,
    },
  );
  const at = show.quantity(opens, '°C', 0);
  const belongs = belongsText(comes, at, show);
  const took = values.optional('took');
  return {
    ...(took === undefined
      ? ({
          sentence:
            comes.gets === 'there'
              ? `${belongs} Longer is a matter for the thermostat, shorter one for the flow.`
              : belongs,
          tone: 'fine',
        } as const)
      : judgeTaken(took, comes, belongs)),
    figures: [
      ...(comes.gets === 'never'
        ? []
        : [
            {
              label: `To ${at}`,
              value: comes.gets === 'there' ? span(comes) : `${clock(comes.soonest)} or more`,
            },
          ]),
      ...(comes.gets === 'there'
        ? []
        : [
            {
              label: 'Levels out at',
              value: show.quantity(comes.levelsOut, '°C', 0),
              note: 'after an hour, with the least heat',
            },
          ]),
    ],
    notes: [
      'Exhaust out of the bay, hands and meter leads away from belts and fan. It is stopped at once when the gauge runs ahead of the heater.',
      'Standing with its thermostat stuck open it may get there too, later: what tells is the long flat stretch, and the road.',
    ],
  };
}

function belongsText(comes: WarmUpRisk, at: string, show: QuantityFormatter): string {
  if (comes.gets === 'there') return `A sound engine comes to ${at} in ${span(comes)} so.`;
  const out = show.quantity(comes.levelsOut, '°C', 0);
  return comes.gets === 'never'
    ? `So it does not come to ${at} at all: it levels out at ${out}, and that is no fault.`
    : `So it takes ${clock(comes.soonest)} or more to ${at}, or levels out at ${out}, and that is no fault.`;
}

function judgeTaken(took: number, comes: WarmUpRisk, belongs: string): Pick<Answer, 'sentence' | 'tone'> {
  if (comes.gets === 'never' || took < TAKEN.least * comes.soonest)
    return {
      sentence: `There in ${clock(took)}, sooner than heat allows. ${belongs} No flow past the sensor, a low level, or a sensor that reads high.`,
      tone: 'look',
    };
  if (comes.gets === 'there' && took > TAKEN.most * comes.latest)
    return {
      sentence: `It took ${clock(took)}. ${belongs} A thermostat that does not close is the first thought; look at the hose behind it while it warms.`,
      tone: 'look',
    };
  if (comes.gets === 'there' && (took < comes.soonest || took > comes.latest)) {
    const passes = span({
      soonest: second(TAKEN.least * comes.soonest),
      latest: second(TAKEN.most * comes.latest),
    });
    return {
      sentence: `It took ${clock(took)}, ${took < comes.soonest ? 'shorter' : 'longer'} than reckoned and still no fault: lights, load and the clock make it anything from ${passes}. ${belongs}`,
      tone: 'fine',
    };
  }
  return { sentence: `It took ${clock(took)}, and that belongs there. ${belongs}`, tone: 'fine' };
}
