/** A drive written down as a scan tool writes it, for judging a reader of logs by a car that it did not make. */
import type { Car } from './car.ts';
import type { Drive } from './drive.ts';
import { type FaultId, withFault } from './faults.ts';
import { type Random, randomOf } from './random.ts';
import { runCar, type Sample } from './run.ts';

/** How the file is written. */
export interface LogShape {
  readonly delimiter: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  readonly clock: 'seconds' | 'milliseconds' | 'time of day' | 'epoch';
  readonly temperature: '°C' | '°F';
  readonly speed: 'km/h' | 'mph';
  /** s between lines. */
  readonly every: number;
}

/** Five ways of writing the same drive. */
export const SHAPES = {
  plain: { delimiter: ',', decimal: '.', clock: 'seconds', temperature: '°C', speed: 'km/h', every: 1 },
  continental: {
    delimiter: ';',
    decimal: ',',
    clock: 'time of day',
    temperature: '°C',
    speed: 'km/h',
    every: 2,
  },
  milliseconds: {
    delimiter: '\t',
    decimal: '.',
    clock: 'milliseconds',
    temperature: '°C',
    speed: 'km/h',
    every: 1,
  },
  imperial: { delimiter: ',', decimal: '.', clock: 'seconds', temperature: '°F', speed: 'mph', every: 1 },
  slow: { delimiter: ',', decimal: '.', clock: 'epoch', temperature: '°C', speed: 'km/h', every: 5 },
} as const satisfies Record<string, LogShape>;
export type ShapeName = keyof typeof SHAPES;

export interface LogOptions {
  readonly shape?: LogShape;
  /** Columns beside time, coolant and speed. */
  readonly columns?: {
    readonly rpm?: boolean;
    readonly intake?: boolean;
    readonly ambient?: boolean;
    readonly fan?: boolean;
  };
}

export interface Log {
  /** A header and a line for each moment. */
  readonly text: string;
  /** What truly happened. */
  readonly samples: readonly Sample[];
}

const ALL = { rpm: true, intake: true, ambient: true, fan: true };

/**
 * Log of a drive.
 *
 * Coolant is the scan figure in whole kelvins, −40 °C with an open circuit; ambient is the car's own sensor, half a
 * kelvin off and slow; the fan is the order where a controller gives one, so a viscous clutch has no such column.
 * @param fault undefined for a sound car; severity inside the fault's range
 * @returns the same text for the same seed
 */
export function logOf(
  drive: Drive,
  car: Car,
  fault: { readonly id: FaultId; readonly severity: number } | undefined,
  seed: number,
  { shape = SHAPES.plain, columns = ALL }: LogOptions = {},
): Log {
  const faulty = fault ? withFault(car, fault.id, fault.severity) : car;
  const { samples } = runCar(faulty, drive, seed);
  const shown = { ...columns, fan: columns.fan === true && car.layout.fan !== 'viscous clutch' };
  const random = randomOf(seed, 'logger');
  const ambient = drive.outside + random.between(-0.5, 1.5);
  const lines = samples
    .filter(({ time }) => time % shape.every === 0)
    .map((sample) => lineOf(sample, shape, shown, ambient, random).join(shape.delimiter));
  return { text: `${[headerOf(shape, shown).join(shape.delimiter), ...lines].join('\n')}\n`, samples };
}

function headerOf(shape: LogShape, columns: NonNullable<LogOptions['columns']>): string[] {
  const degrees = shape.temperature;
  const time = { seconds: 'Time (s)', milliseconds: 'Time (ms)', 'time of day': 'Time', epoch: 'Unix time' };
  return [
    time[shape.clock],
    `Engine coolant temperature (${degrees})`,
    `Vehicle speed (${shape.speed})`,
    ...(columns.rpm ? ['Engine speed (rpm)'] : []),
    ...(columns.intake ? [`Intake air temperature (${degrees})`] : []),
    ...(columns.ambient ? [`Ambient air temperature (${degrees})`] : []),
    ...(columns.fan ? ['Radiator fan'] : []),
  ];
}

function lineOf(
  sample: Sample,
  shape: LogShape,
  columns: NonNullable<LogOptions['columns']>,
  ambient: number,
  random: Random,
): string[] {
  const number = (value: number, decimals: number) => value.toFixed(decimals).replace('.', shape.decimal);
  const degrees = (kelvin: number) => {
    const celsius = Math.round(kelvin - 273.15);
    return number(
      shape.temperature === '°F' ? celsius * 1.8 + 32 : celsius,
      shape.temperature === '°F' ? 1 : 0,
    );
  };
  return [
    clockOf(sample.time, shape, number),
    degrees(sample.scan),
    number(sample.speed * (shape.speed === 'mph' ? 2.23694 : 3.6), 0),
    ...(columns.rpm ? [number(sample.rpm + (sample.rpm > 0 ? 12 * random.normal() : 0), 0)] : []),
    ...(columns.intake ? [degrees(sample.intake)] : []),
    ...(columns.ambient ? [degrees(ambient)] : []),
    ...(columns.fan ? [sample.fan > 0 ? 'on' : 'off'] : []),
  ];
}

/** Clock of the first line: half past eight; any second of any year would do. */
const HALF_PAST_EIGHT = 30_600;
const EPOCH = 1_765_000_000;

function clockOf(
  time: number,
  { clock }: LogShape,
  number: (value: number, decimals: number) => string,
): string {
  if (clock === 'seconds') return number(time, 1);
  if (clock === 'milliseconds') return number(time * 1000, 0);
  if (clock === 'epoch') return number(EPOCH + time, 0);
  const of = HALF_PAST_EIGHT + time;
  return [of / 3600, (of % 3600) / 60, of % 60]
    .map((part) => String(Math.floor(part)).padStart(2, '0'))
    .join(':');
}
