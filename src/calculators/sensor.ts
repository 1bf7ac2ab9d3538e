/** Coolant sensor: resistance and temperature, and which of scan tool, infrared and resistance lies. */

import {
  AROUND_HOSE,
  HEAT_GIVEN_OFF,
  HOSE,
  HOSE_ABOVE,
  INFRARED_ERROR,
  PLASTIC,
  surfaceBelowCoolant,
} from '../physics/hose-wall.ts';
import { BARE_ALUMINIUM, infraredReading } from '../physics/infrared.ts';
import { OutOfRange } from '../physics/out-of-range.ts';
import { SENSOR_AGREES, type SensorCurve, type SensorPoint } from '../physics/thermistor.ts';
import { fromCelsius, type Kelvin, kelvin, ohm, toCelsius } from '../physics/units.ts';
import type {
  Answer,
  AnswerFigure,
  Calculator,
  Picture,
  QuantityFormatter,
  Refusal,
  Values,
} from './declaration.ts';
import { refuse } from './refuse.ts';
import { CURVE_INPUTS, curveOf, curveThrough, pointsOf } from './sensor-curve.ts';
import { judgeReadings, ohms, type Reading } from './sensor-verdict.ts';

const SURFACES = {
  hose: 'rubber hose, matt paint or paper tape',
  plastic: 'plastic housing',
  metal: 'bare aluminium',
} as const;

/** No coolant sensor has more, even in deep frost, Ω. */
const MOST_OHMS = 10e6;

export const sensor: Calculator = {
  id: 'sensor',
  title: 'Coolant sensor',
  settles: 'what temperature a resistance means, and which of scan tool, infrared and sensor lies',
  also: [
    'NTC',
    'thermistor',
    'ohms to temperature',
    'sensor resistance',
    'scan tool reads wrong',
    'gauge lies',
    'infrared reading',
  ],
  inputs: [
    ...CURVE_INPUTS,
    {
      kind: 'quantity',
      name: 'resistance',
      label: 'Measured on the sensor',
      hint: 'Plug off, meter on its two pins.',
      dimension: 'resistance',
      unit: 'Ω',
      default: '280 Ω',
      limits: ['0 Ω', '10000 kΩ'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'scan',
      label: 'Scan tool shows',
      dimension: 'temperature',
      unit: '°C',
      default: '84 °C',
      limits: ['-50 °C', '215 °C'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'infrared',
      label: 'Infrared shows',
      hint: 'Beside the sensor, on a matt patch.',
      dimension: 'temperature',
      unit: '°C',
      default: '82 °C',
      limits: ['-40 °C', '200 °C'],
      reading: true,
      optional: true,
    },
    {
      kind: 'choice',
      name: 'surface',
      label: 'Infrared was held on',
      default: 'hose',
      options: Object.entries(SURFACES).map(([value, label]) => ({ value, label })),
    },
    {
      kind: 'choice',
      name: 'air',
      label: 'Air at that spot',
      hint: 'Wind takes heat off a hose: its outside is then up to twice as far below the coolant.',
      default: 'still',
      options: [
        { value: 'still', label: 'still, fan off' },
        { value: 'fan', label: 'fan running' },
      ],
      when: { surface: ['hose', 'plastic'] },
    },
  ],
  answer(values, show): Answer | Refusal {
    const curve = curveOf(values, show);
    if ('refused' in curve) return curve;
    const read = temperatures(values, curve, show);
    if ('refused' in read) return read;
    return {
      ...judgeReadings(read, curve, show),
      figures: figuresOf(read, curve, show),
      notes: notesOf(values, show),
      pictures: [pictureOf(values, curve, read, show)],
    };
  },
  method: {
    formula:
      '1/T = A + B ln R + C (ln R)³ through three points; R = R₀ exp(B (1/T − 1/T₀)) through two or by B; between neighbours of a table straight in ln R over 1/T',
    sources: [
      'Steinhart and Hart, Deep-Sea Research 15 (1968) 497; IEC 60539-1 for two points and for B',
      'held against the sheets of Bosch Motorsport (10 kΩ and 15 kΩ) and a Fronius service table',
      'common 2.5 kΩ curve: a component maker’s sheet, from memory',
      'infrared: balance of radiation, emissivities from handbooks, from memory',
      'drop over a hose wall: Fourier and Newton, rubber of 0.3 W/(m·K) and 14 or 30 W/(m²·K) outside, from memory',
    ],
    valid: 'sensors whose resistance falls as they warm; 60 K beyond the outer points at most',
    error:
      'within 0.3 K of the published tables between the outer points, 0.9 K when carried on beyond; by two points or by B within 1.6 K from 0 to 100 °C; and what the table is rounded to; a sensor itself is made to 1 to 2 K, infrared reads to 2 K',
  },
};

function temperatures(values: Values, curve: SensorCurve, show: QuantityFormatter): Reading | Refusal {
  const resistance = values.optional('resistance');
  const scan = values.optional('scan');
  const infrared = values.optional('infrared');
  if (resistance === undefined && scan === undefined && infrared === undefined)
    return refuse(
      'resistance',
      'Write at least one of the three readings: resistance, scan tool or infrared.',
    );
  const [lowest, highest] = [curve.resistanceAt(curve.to), curve.resistanceAt(curve.from)];
  // Points that lie too close or wildly apart make a curve that shoots off: no sensor of an engine does.
  if (highest > MOST_OHMS)
    return refuse(
      values.choice('curve') === 'b' ? 'r-25' : values.choice('curve') === 'two' ? 'r-one' : 't-20',
      'No sensor has such a curve. Check each temperature and its resistance.',
    );
  if (resistance !== undefined) {
    if (resistance < lowest)
      return refuse(
        'resistance',
        `Below ${show.quantity(lowest, 'Ω', 0)} no temperature fits this sensor: a short, or another sensor than the table’s.`,
      );
    if (resistance > highest)
      return refuse(
        'resistance',
        `Above ${show.quantity(highest, 'kΩ', 1)} no temperature fits this sensor: an open wire, a loose pin, or another sensor than the table’s.`,
      );
  }
  const sensor = resistance === undefined ? undefined : curve.temperatureAt(ohm(resistance));
  const truth = sensor ?? (scan === undefined ? undefined : kelvin(scan));
  const matt = values.choice('surface') !== 'metal';
  return {
    ...(resistance !== undefined &&
      sensor !== undefined && { sensor, resistance, rounding: roundingOf(values, resistance, sensor) }),
    ...(scan !== undefined && { scan: kelvin(scan) }),
    ...(infrared !== undefined && { infrared: kelvin(infrared) }),
    matt,
    wallDrop: (coolant) => wallDrop(values, coolant),
    ...(!matt && truth !== undefined && { onMetal: metalSpan(truth) }),
  };
}

/** Most that the outside is below the coolant, K: by the wall and the wind on it. */
function wallDrop(values: Values, coolant: Kelvin): number {
  const wall = values.choice('surface') === 'plastic' ? PLASTIC : HOSE;
  const wind = HEAT_GIVEN_OFF[values.choice('air') === 'fan' ? 'fan' : 'still'];
  return surfaceBelowCoolant(coolant, AROUND_HOSE, wall, wind);
}

/** How far the temperature moves when each point of the table is out by what it is rounded to, K. */
function roundingOf(values: Values, resistance: number, at: Kelvin): number {
  const points = pointsOf(values);
  if (!points) return 0;
  const moved = points.map((point, which) => {
    const others = points.map((each, i) =>
      i === which ? { ...each, resistance: ohm(each.resistance + point.rounding) } : each,
    );
    return Math.abs(temperatureOn(others, resistance, at) - at);
  });
  return moved.reduce((sum, each) => sum + each, 0);
}

/** As the curve through three points reads a resistance; where they make none, as before. */
function temperatureOn(points: readonly SensorPoint[], resistance: number, before: Kelvin): Kelvin {
  try {
    return curveThrough(points).temperatureAt(ohm(resistance));
  } catch (fault) {
    if (!(fault instanceof OutOfRange)) throw fault;
    return before;
  }
}

/** What infrared shows on bare metal of a temperature, lowest and highest. */
function metalSpan(truth: Kelvin): readonly [Kelvin, Kelvin] {
  const shows = (emissivity: number) =>
    infraredReading({ emissivity, set: 0.95, surroundings: fromCelsius(20) }, truth);
  const [low, high] = BARE_ALUMINIUM.map(shows).toSorted((a, b) => a - b);
  return [low ?? truth, high ?? truth];
}

function figuresOf(read: Reading, curve: SensorCurve, show: QuantityFormatter): AnswerFigure[] {
  const { sensor: own, scan } = read;
  const expected = (name: string, at: Kelvin | undefined): AnswerFigure[] =>
    at === undefined || at < curve.from || at > curve.to
      ? []
      : [{ label: `Sensor should have, if ${name} is right`, value: ohms(curve.resistanceAt(at), show) }];
  return [
    ...(own === undefined
      ? []
      : [
          {
            label: 'By resistance',
            value: show.quantity(own, '°C', 0),
            ...((read.rounding ?? 0) >= 1 && {
              note: `± ${show.difference(read.rounding ?? 0)}, as the table is rounded`,
            }),
          },
        ]),
    ...surfaceFigure(own ?? scan, read, show),
    ...expected('the scan tool', scan),
  ];
}

/** What the outside may show when the inside is right. */
function surfaceFigure(inside: Kelvin | undefined, read: Reading, show: QuantityFormatter): AnswerFigure[] {
  if (inside === undefined || read.infrared === undefined || !read.matt) return [];
  const coldest = kelvin(inside - read.wallDrop(inside) - INFRARED_ERROR);
  return [
    {
      label: 'The outside may then show',
      value: show.range(coldest, kelvin(inside + INFRARED_ERROR), '°C', 0),
      note: `by wall and wind, air round it at ${show.quantity(AROUND_HOSE, '°C', 0)}`,
    },
  ];
}

function notesOf(values: Values, show: QuantityFormatter): string[] {
  return [
    ...(values.choice('curve') === 'common'
      ? [
          'The common curve is from memory and may not be this sensor’s: take three points from the maker’s sheet before condemning it.',
        ]
      : []),
    `Counted as agreeing: sensor and scan tool within ${show.difference(SENSOR_AGREES)}. Infrared only below: a surface is colder than the coolant by what its wall takes, and ${show.difference(HOSE_ABOVE)} above it is no error of reading.`,
    'Pulling the sensor’s plug makes many controllers start the fan at once: hands, hair and sleeves clear of it. Unscrewing the sensor opens the system: only cold, as the maker describes.',
  ];
}

function pictureOf(values: Values, curve: SensorCurve, read: Reading, show: QuantityFormatter): Picture {
  const low = Math.max(-20, Math.ceil(toCelsius(curve.from)));
  const high = Math.min(130, Math.floor(toCelsius(curve.to)));
  const steps = Array.from({ length: 31 }, (_, i) => low + ((high - low) * i) / 30);
  const points = steps.map((celsius) => [celsius, curve.resistanceAt(fromCelsius(celsius))] as const);
  const spots =
    read.sensor === undefined || read.resistance === undefined
      ? []
      : [
          {
            x: toCelsius(read.sensor),
            y: read.resistance,
            label: `${ohms(read.resistance, show)}, ${show.quantity(read.sensor, '°C', 0)}`,
          },
        ];
  const hot = points.at(-1);
  return {
    kind: 'curve',
    title: values.choice('curve') === 'common' ? 'Common 2.5 kΩ sensor' : 'This sensor',
    x: { label: 'temperature', unit: '°C', low, high },
    y: { label: 'resistance', unit: 'Ω', low: hot?.[1] ?? 50, high: points[0]?.[1] ?? 50000, ratio: true },
    curves: [{ points }],
    points: spots,
  };
}
