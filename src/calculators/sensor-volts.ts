/** Volts at a sensor's plug: the ohms and the temperature they mean, and where the circuit adds or loses some. */

import { METER } from '../physics/joint.ts';
import { OutOfRange } from '../physics/out-of-range.ts';
import {
  OPEN_ABOVE,
  type PullUp,
  pullUpFrom,
  resistanceForVolts,
  SHORT_BELOW,
  sensorVoltage,
} from '../physics/sensor-circuit.ts';
import { SENSOR_AGREES, type SensorCurve } from '../physics/thermistor.ts';
import { fromCelsius, type Kelvin, kelvin, type Ohm, ohm, toCelsius, volt } from '../physics/units.ts';
import type {
  Answer,
  Calculator,
  Picture,
  QuantityFormatter,
  QuantityInput,
  Refusal,
  Values,
} from './declaration.ts';
import { refuse } from './refuse.ts';
import { CURVE_INPUTS, curveOf } from './sensor-curve.ts';
import { ohms } from './sensor-verdict.ts';

/** What the resistor in the controller may be out, as a share. Common practice, no source. */
const PULL_UP_SHARE = 0.02;
/** A five-volt supply under load stands between these, V. Common practice, no source. */
const FIVE_VOLTS = { least: 4.7, most: 5.3 } as const;
/** So much more in the circuit than in the sensor is wire and pins: the larger of the two, Ω and a share. Common practice, no source. */
const EXTRA = { ohms: 20, share: 0.1 } as const;

const READ = { find: ['temperature'] };

function compared(name: string, label: string, hint: string, unit: '°C' | 'Ω'): QuantityInput {
  const temperature = unit === '°C';
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: temperature ? 'temperature' : 'resistance',
    unit,
    default: '',
    limits: temperature ? ['-50 °C', '215 °C'] : ['0 Ω', '10000 kΩ'],
    optional: true,
    reading: true,
    when: READ,
  };
}

export const sensorVolts: Calculator = {
  id: 'sensor-volts',
  title: 'Sensor volts',
  settles:
    'what temperature the volts at a sensor’s plug mean, and whether wire, sensor or controller makes them wrong',
  also: [
    'coolant sensor voltage',
    'signal voltage',
    'pull-up',
    '5 volt reference',
    'NTC voltage',
    'back-probe sensor',
    'B value',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'find',
      label: 'Work out',
      default: 'temperature',
      options: [
        { value: 'temperature', label: 'what the volts mean' },
        { value: 'pull-up', label: 'the resistor in the controller' },
      ],
    },
    {
      kind: 'quantity',
      name: 'volts',
      label: 'Volts at the plug, plugged in',
      hint: 'Between the two pins, probes in from behind, ignition on.',
      dimension: 'voltage',
      unit: 'V',
      default: '1.22 V',
      limits: ['0 V', '16 V'],
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'supply',
      label: 'Volts with the plug off',
      hint: 'Between the two pins of the loom: what the controller feeds.',
      dimension: 'voltage',
      unit: 'V',
      default: '5.00 V',
      limits: ['1 V', '16 V'],
    },
    {
      kind: 'quantity',
      name: 'pull',
      label: 'Resistor in the controller',
      hint: 'From its maker, or worked out here with a known resistor in the plug. Many have 1 to 3 kΩ.',
      dimension: 'resistance',
      unit: 'Ω',
      default: '1 kΩ',
      limits: ['50 Ω', '100 kΩ'],
      when: READ,
    },
    {
      kind: 'quantity',
      name: 'known',
      label: 'Resistor put into the plug',
      hint: 'In the sensor’s place, with fitting terminals; 200 Ω is near a hot sensor.',
      dimension: 'resistance',
      unit: 'Ω',
      default: '200 Ω',
      limits: ['20 Ω', '50 kΩ'],
      when: { find: ['pull-up'] },
    },
    ...CURVE_INPUTS.map((input) => ({ ...input, when: { ...input.when, ...READ } })),
    compared('scan', 'Scan tool shows', 'At the same moment.', '°C'),
    compared('thermometer', 'Coolant beside the sensor', 'Contact thermometer, not infrared on metal.', '°C'),
    compared('measured', 'Measured on the sensor', 'Plug off, at the same temperature.', 'Ω'),
  ],
  answer(values, show): Answer | Refusal {
    const supply = values.number('supply');
    const volts = values.number('volts');
    if (volts > supply + METER)
      return refuse(
        'volts',
        'Plugged in it cannot have more than with the plug off. Were the two mixed up, or measured on another pin?',
      );
    const unusual = unusualSupply(supply, show);
    if (unusual)
      return { ...unusual, figures: [{ label: 'With the plug off', value: v(supply, show) }], notes: NOTES };
    const ends = endOfScale(volts, supply, show);
    if (ends)
      return {
        ...ends,
        figures: [{ label: 'At the plug', value: v(volts, show), note: `of ${v(supply, show)}` }],
        notes: NOTES,
      };
    return values.choice('find') === 'pull-up' ? pullUp(values, show) : meaning(values, show);
  },
  method: {
    formula:
      'sensor and wires = pull-up × volts / (supply − volts); temperature by the sensor’s curve; pull-up = known resistor × (supply − volts) / volts',
    sources: [
      'Ohm’s law',
      'Steinhart and Hart, Deep-Sea Research 15 (1968) 497; IEC 60539-1 for two points and for B',
      `meter good to ${METER} V, controller’s resistor to ${PULL_UP_SHARE * 100} %, agreement within ${SENSOR_AGREES} K: common practice, no source`,
    ],
    valid:
      'two-wire sensors whose resistance falls as they warm, one resistor in the controller, ignition on',
    error:
      'as the answer states: what 0.02 V and 2 % of the resistor move it, 1 to 4 K from 0 to 100 °C; by B or two points up to 2 K more between 0 and 100 °C',
  },
};

const NOTES = [
  'Pulling the plug makes many controllers start the fan at once: hands, hair and sleeves clear of it. Probe from behind, never with a tip that spreads a terminal.',
  'Some controllers change to a second, smaller resistor when warm: the volts jump up near 40 to 50 °C while the sensor does not. Two readings on one side of the jump belong together.',
];

function v(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'V', 2);
}

type Verdict = Pick<Answer, 'sentence' | 'tone'>;
const look = (sentence: string): Verdict => ({ sentence, tone: 'look' });

function unusualSupply(supply: number, show: QuantityFormatter): Verdict | undefined {
  if (supply > FIVE_VOLTS.most)
    return look(
      `${v(supply, show)} with the plug off is more than a controller feeds a sensor: battery gets into the wire, or this is a gauge’s own sender. Find which before the sensor is judged.`,
    );
  if (supply < FIVE_VOLTS.least)
    return look(
      `Only ${v(supply, show)} with the plug off: the supply itself is pulled down. Unplug the others on the same five volts one by one, then look at the controller’s earth.`,
    );
  return undefined;
}

function endOfScale(volts: number, supply: number, show: QuantityFormatter): Verdict | undefined {
  if (volts > OPEN_ABOVE * supply)
    return look(
      `Next to all of the supply stands at the plug, ${v(volts, show)}: the circuit is open behind it. Sensor, its pins, or the earth of the sensor; a bridge over the plug tells on which side.`,
    );
  if (volts < SHORT_BELOW * supply)
    return look(
      `Next to nothing stands at the plug, ${v(volts, show)}: shorted. Pull the plug; do the volts come, the sensor is shorted, do they not, the wire.`,
    );
  return undefined;
}

function pullUp(values: Values, show: QuantityFormatter): Answer | Refusal {
  const [supply, known, volts] = ['supply', 'known', 'volts'].map((name) => values.number(name));
  if (supply === undefined || known === undefined || volts === undefined)
    throw new Error('All three are declared');
  if (volts < 0.02 * supply || volts > 0.98 * supply)
    return refuse(
      'known',
      'So near to an end of the scale the meter decides. Put in a resistor that leaves between a tenth and nine tenths of the supply.',
    );
  const found = pullUpFrom(volt(supply), ohm(known), volt(volts));
  const off = Math.max(
    ...[-METER, METER].map((by) =>
      Math.abs(pullUpFrom(volt(supply), ohm(known), clampedVolts(volts + by, supply)) - found),
    ),
  );
  return {
    sentence: `The controller has ${ohms(found, show)} in it. Keep that for this car; with it volts at the plug turn into ohms and degrees.`,
    tone: 'fine',
    figures: [
      {
        label: 'Resistor in the controller',
        value: ohms(found, show),
        note: `± ${ohms(off, show)}, the meter’s ${v(METER, show)}`,
      },
    ],
    notes: NOTES,
  };
}

function clampedVolts(volts: number, supply: number) {
  return volt(Math.min(0.98 * supply, Math.max(0.02 * supply, volts)));
}

/** What the volts mean, in ohms and degrees. */
interface Meaning {
  resistance: Ohm;
  temperature: Kelvin;
  /** Either way, K. */
  error: number;
}

function meaningOf(curve: SensorCurve, circuit: PullUp, volts: number): Meaning | 'open' | 'short' {
  const resistance = resistanceForVolts(circuit, volt(volts));
  if (resistance > curve.resistanceAt(curve.from)) return 'open';
  if (resistance < curve.resistanceAt(curve.to)) return 'short';
  const temperature = curve.temperatureAt(resistance);
  const moved = [-1, 1].flatMap((way) => [
    readWith(curve, circuit, volts + way * METER),
    readWith(curve, { ...circuit, resistance: ohm(circuit.resistance * (1 + way * PULL_UP_SHARE)) }, volts),
  ]);
  const away = moved.map((each) => (each === undefined ? 0 : Math.abs(each - temperature)));
  // The meter's part and the resistor's part, the worse way of each.
  const [meterDown = 0, pullDown = 0, meterUp = 0, pullUpwards = 0] = away;
  return { resistance, temperature, error: Math.max(meterDown, meterUp) + Math.max(pullDown, pullUpwards) };
}

function readWith(curve: SensorCurve, circuit: PullUp, volts: number): Kelvin | undefined {
  try {
    return curve.temperatureAt(resistanceForVolts(circuit, volt(Math.max(0, volts))));
  } catch (fault) {
    if (!(fault instanceof OutOfRange)) throw fault;
    return undefined;
  }
}

function meaning(values: Values, show: QuantityFormatter): Answer | Refusal {
  const curve = curveOf(values, show);
  if ('refused' in curve) return curve;
  const circuit = { supply: volt(values.number('supply')), resistance: ohm(values.number('pull')) };
  const volts = values.number('volts');
  const read = meaningOf(curve, circuit, volts);
  if (typeof read === 'string')
    return {
      ...look(
        read === 'open'
          ? 'So many ohms no temperature gives this sensor: next to open. Pins, plug and the earth of the sensor first; or the resistor or the curve is another.'
          : 'So few ohms no temperature gives this sensor: next to a short, or water in the plug; or the resistor or the curve is another.',
      ),
      figures: [{ label: 'Sensor and wires', value: ohms(resistanceForVolts(circuit, volt(volts)), show) }],
      notes: NOTES,
    };
  const [scan, thermometer] = ['scan', 'thermometer'].map((name) => values.optional(name));
  const belongs = (label: string, at: number | undefined) =>
    at === undefined || at < curve.from || at > curve.to
      ? []
      : [{ label, value: v(sensorVoltage(circuit, curve.resistanceAt(kelvin(at))), show) }];
  return {
    ...judge(read, values, curve, show),
    figures: [
      {
        label: 'By the volts',
        value: show.quantity(read.temperature, '°C', 0),
        note: `± ${show.difference(Math.max(1, read.error))}, meter and resistor`,
      },
      { label: 'Sensor and wires', value: ohms(read.resistance, show) },
      ...belongs('Volts that belong to the scan tool', scan),
      ...belongs('Volts that belong to the thermometer', thermometer),
    ],
    notes: NOTES,
    pictures: [pictureOf(curve, circuit, read, volts, show)],
  };
}

function judge(read: Meaning, values: Values, curve: SensorCurve, show: QuantityFormatter): Verdict {
  const { temperature, error, resistance } = read;
  const say = (at: number) => show.quantity(at, '°C', 0);
  const agrees = SENSOR_AGREES + error;
  const own = say(temperature);
  const measured = values.optional('measured');
  const thermometer = values.optional('thermometer');
  const scan = values.optional('scan');
  if (
    measured !== undefined &&
    Math.abs(resistance - measured) > Math.max(EXTRA.ohms, EXTRA.share * measured)
  )
    return look(
      resistance > measured
        ? `The plug sees ${ohms(resistance - measured, show)} more than the sensor has: pins, wire or its earth. Measure the drop from the sensor’s earth pin to the controller’s.`
        : `The plug sees ${ohms(measured - resistance, show)} less than the sensor has: a leak between the wires, water in the plug, or the resistor in the controller is another.`,
    );
  if (thermometer !== undefined && Math.abs(temperature - thermometer) > agrees) {
    const ohmsOff = temperature < thermometer;
    return look(
      `The volts mean ${own} and the coolant has ${say(thermometer)}: ${ohmsOff ? 'too many ohms' : 'too few ohms'} in the circuit. Measure the sensor with the plug off; is it right, ${ohmsOff ? 'pins and earth add the rest' : 'something leaks between the wires'}.`,
    );
  }
  if (scan !== undefined && Math.abs(temperature - scan) > agrees)
    return look(
      `The volts mean ${own} and the controller makes ${say(scan)} of them: another curve or resistor than taken here, a figure of its own in place of the reading, or its earth. Sensor and wire are not judged by that.`,
    );
  const against = [
    ...(scan === undefined ? [] : ['the scan tool']),
    ...(thermometer === undefined ? [] : ['the thermometer']),
    ...(measured === undefined ? [] : ['the ohms of the sensor']),
  ];
  if (against.length === 0)
    return {
      sentence: `The volts mean ${own}, ${ohms(resistance, show)} in sensor and wires. Hold it beside the scan tool and a thermometer on the spot.`,
      tone: 'fine',
    };
  const list = against.length === 1 ? against[0] : `${against.slice(0, -1).join(', ')} and ${against.at(-1)}`;
  const range = curve.to - temperature < 1 ? ' It is at the end of the curve.' : '';
  return { sentence: `The volts mean ${own} and agree with ${list}.${range} Look elsewhere.`, tone: 'fine' };
}

function pictureOf(
  curve: SensorCurve,
  circuit: PullUp,
  read: Meaning,
  volts: number,
  show: QuantityFormatter,
): Picture {
  const low = Math.max(-20, Math.ceil(toCelsius(curve.from)));
  const high = Math.min(130, Math.floor(toCelsius(curve.to)));
  const points = Array.from({ length: 31 }, (_, i) => low + ((high - low) * i) / 30).map(
    (celsius) => [celsius, sensorVoltage(circuit, curve.resistanceAt(fromCelsius(celsius)))] as const,
  );
  return {
    kind: 'curve',
    title: 'Volts at the plug',
    x: { label: 'temperature', unit: '°C', low, high },
    y: { label: 'volts', unit: 'V', low: 0, high: circuit.supply },
    curves: [{ points }],
    points: [
      {
        x: toCelsius(read.temperature),
        y: volts,
        label: `${v(volts, show)}, ${show.quantity(read.temperature, '°C', 0)}`,
      },
    ],
  };
}
