/** How a sensor is known: the questions, and the curve they make. Asked for its ohms and for its volts in the same words. */
import { OutOfRange } from '../physics/out-of-range.ts';
import {
  bValue,
  curveFromB,
  curveFromTable,
  curveThroughThree,
  type SensorCurve,
  type SensorPoint,
} from '../physics/thermistor.ts';
import { fromCelsius, kelvin, ohm } from '../physics/units.ts';
import type { Input, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';

/** A common fluid sensor of 2.5 kΩ at 20 °C: a component maker's sheet, from memory. °C and ohm. */
const COMMON_CURVE: readonly (readonly [celsius: number, ohm: number])[] = [
  [-40, 45313],
  [-30, 26114],
  [-20, 15462],
  [-10, 9397],
  [0, 5896],
  [10, 3792],
  [20, 2500],
  [25, 2057],
  [30, 1707],
  [40, 1175],
  [50, 834],
  [60, 596],
  [70, 436],
  [80, 323],
  [90, 243],
  [100, 187],
  [110, 144],
  [120, 113],
  [130, 89],
];

function pointTemperature(name: string, value: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label: 'Temperature of the point',
    dimension: 'temperature',
    unit: '°C',
    default: value,
    limits: ['-40 °C', '150 °C'],
    when: { curve: ['points'] },
  };
}

function pointResistance(
  name: string,
  label: string,
  value: string,
  path: 'sensor.at-20' | 'sensor.at-80' | 'sensor.at-100',
): QuantityInput[] {
  const common = {
    kind: 'quantity',
    dimension: 'resistance',
    unit: 'Ω',
    default: value,
    limits: ['1 Ω', '1000 kΩ'],
  } as const;
  return [
    { ...common, name: `r-${name}`, label, figure: { path, end: 'middle' }, when: { curve: ['usual'] } },
    { ...common, name: `own-r-${name}`, label: 'Resistance there', when: { curve: ['points'] } },
  ];
}

function twoPoints(name: string, temperature: string, resistance: string): QuantityInput[] {
  const common = { kind: 'quantity', when: { curve: ['two'] } } as const;
  return [
    {
      ...common,
      name: `t-${name}`,
      label: 'Temperature of the point',
      dimension: 'temperature',
      unit: '°C',
      default: temperature,
      limits: ['-40 °C', '150 °C'],
    },
    {
      ...common,
      name: `r-${name}`,
      label: 'Resistance there',
      dimension: 'resistance',
      unit: 'Ω',
      default: resistance,
      limits: ['1 Ω', '1000 kΩ'],
    },
  ];
}

export const CURVE_INPUTS: readonly Input[] = [
  {
    kind: 'choice',
    name: 'curve',
    label: 'The sensor is known by',
    default: 'usual',
    options: [
      { value: 'usual', label: 'its resistance at 20, 80 and 100 °C' },
      { value: 'points', label: 'three points of another table' },
      { value: 'two', label: 'two points of another table' },
      { value: 'b', label: 'one resistance and its B value' },
      { value: 'common', label: 'nothing: take the common 2.5 kΩ curve' },
    ],
  },
  ...pointResistance('20', 'At 20 °C', '2500 Ω', 'sensor.at-20'),
  ...pointResistance('80', 'At 80 °C', '323 Ω', 'sensor.at-80'),
  ...pointResistance('100', 'At 100 °C', '187 Ω', 'sensor.at-100'),
  pointTemperature('t-20', '0 °C'),
  pointTemperature('t-80', '40 °C'),
  pointTemperature('t-100', '90 °C'),
  ...twoPoints('one', '20 °C', '2500 Ω'),
  ...twoPoints('two', '80 °C', '323 Ω'),
  {
    kind: 'quantity',
    name: 'r-25',
    label: 'At 25 °C',
    dimension: 'resistance',
    unit: 'Ω',
    default: '10 kΩ',
    limits: ['10 Ω', '1000 kΩ'],
    when: { curve: ['b'] },
  },
  {
    kind: 'quantity',
    name: 'b',
    label: 'B value',
    hint: 'On the sheet; most lie between 3000 and 4500.',
    dimension: 'temperature difference',
    unit: 'K',
    default: '3977 K',
    limits: ['1500 K', '7000 K'],
    when: { curve: ['b'] },
  },
];

/** A point of the table, its field, and half a unit of its last digit. */
export interface TypedPoint extends SensorPoint {
  field: string;
  /** Ohm. */
  rounding: number;
}

/** The points typed, the coldest first; undefined where the curve is not made of points. */
export function pointsOf(values: Values): TypedPoint[] | undefined {
  const known = values.choice('curve');
  if (known === 'common' || known === 'b') return undefined;
  if (known === 'two')
    return ['one', 'two']
      .map(
        (name): TypedPoint => ({
          temperature: kelvin(values.number(`t-${name}`)),
          resistance: ohm(values.number(`r-${name}`)),
          rounding: values.rounding(`r-${name}`),
          field: `r-${name}`,
        }),
      )
      .toSorted((a, b) => a.temperature - b.temperature);
  const own = known === 'points';
  return ['20', '80', '100']
    .map((name): TypedPoint => {
      const field = own ? `own-r-${name}` : `r-${name}`;
      return {
        temperature: own ? kelvin(values.number(`t-${name}`)) : fromCelsius(Number(name)),
        resistance: ohm(values.number(field)),
        rounding: values.rounding(field),
        field,
      };
    })
    .toSorted((a, b) => a.temperature - b.temperature);
}

/** The curve that the fields describe: the common one, by a B value, or by points of a table; refused where they contradict each other. */
export function curveOf(values: Values, show: QuantityFormatter): SensorCurve | Refusal {
  const known = values.choice('curve');
  if (known === 'common')
    return curveFromTable(
      COMMON_CURVE.map(([celsius, value]) => ({ temperature: fromCelsius(celsius), resistance: ohm(value) })),
    );
  if (known === 'b')
    return curveFromB(
      { temperature: fromCelsius(25), resistance: ohm(values.number('r-25')) },
      values.number('b'),
    );
  const points = pointsOf(values) ?? [];
  const refusal = refusalOf(points, show);
  if (refusal) return refusal;
  try {
    return curveThrough(points);
  } catch (fault) {
    if (!(fault instanceof OutOfRange)) throw fault;
    return refuse(
      points[1],
      points.length === 2
        ? 'Between these two points no sensor runs. Look at the table again: one of the two is misread, or Ω and kΩ are mixed.'
        : 'The three points bend as no sensor does. Look at the table again: one of the three is misread.',
    );
  }
}

/** Steinhart and Hart through three points; through two by the B value between them. @throws OutOfRange as they do */
export function curveThrough(points: readonly SensorPoint[]): SensorCurve {
  const [one, two, three] = points;
  if (!one || !two) throw new Error('Two points are declared at least');
  return three ? curveThroughThree([one, two, three]) : curveFromB(two, bValue(one, two));
}

/** Two neighbours that are no table of a sensor whose resistance falls. */
function refusalOf(points: readonly TypedPoint[], show: QuantityFormatter): Refusal | undefined {
  for (const [at, after] of points.entries()) {
    const before = points[at - 1];
    if (!before) continue;
    if (after.temperature - before.temperature < 5)
      return refuse(
        after,
        `The points must lie at least ${show.difference(5)} apart. Take others from the table.`,
      );
    if (after.resistance > before.resistance * 0.999)
      return refuse(
        after,
        'The resistance must fall as it warms. Look at the table again: Ω and kΩ are easily mixed.',
      );
  }
  return undefined;
}

function refuse(point: TypedPoint | undefined, message: string): Refusal {
  return { refused: { name: point?.field ?? '', message } };
}
