/** The sample logs of the demo, made here: by hand, or by the simulation with noise. All invented. */
import { type Car, drive, type Fault } from './car.ts';
import { handLog, OPENS_EARLY, SOUND_RUN } from './hand-log.ts';
import { randomOf } from './random.ts';
import { driveOver, type Leg } from './route.ts';
import { stampedCar } from './stamped-car.ts';
import { type LogStyle, writeLog } from './write-log.ts';

export const SAMPLES = {
  'sound-run': 'A sound engine: hose cold at 84 to 86 °C, pause at 90, fan at 96. Thermostat stamped 88 °C.',
  'opens-early': 'Warms to 85 °C standing, holds 76 to 78 °C at speed. Thermostat stamped 87 °C.',
  'no-flow': 'A pump that moves nothing. Thermostat stamped 87 °C.',
  'air-pocket': 'Air in the system, passing the sensor while hot. Thermostat stamped 87 °C.',
  'sensor-jumps': 'A loose contact in the sensor’s plug. Thermostat stamped 87 °C.',
  'snow-minus-25': 'A sound thermostat at −25 °C with everything on the heater. Thermostat stamped 87 °C.',
} as const;
export type SampleName = keyof typeof SAMPLES;

const STYLE: LogStyle = {
  delimiter: ',',
  comma: false,
  fahrenheit: false,
  mph: false,
  clock: 'time of day',
  every: 2,
  noise: 0.2,
  resolution: 1,
  irregular: true,
  columns: { speed: true, rpm: true, intake: true, ambient: true, fan: false, outlet: false, load: false },
  dirt: 0,
};

const ROUTE: Leg[] = [
  { kind: 'stand', seconds: 120 },
  { kind: 'town', seconds: 420 },
  { kind: 'road', seconds: 720, speed: 85 },
  { kind: 'stand', seconds: 600 },
];

function simulated(
  fault: Fault,
  outside: number,
  more: Partial<Car> = {},
  style: Partial<LogStyle> = {},
): string {
  const readings = drive(
    stampedCar(fault, more),
    driveOver(ROUTE, outside, randomOf(9)),
    outside,
    randomOf(8),
  );
  return writeLog(readings, { ...STYLE, ...style }, randomOf(6));
}

const LOGS: Record<SampleName, () => string> = {
  'sound-run': () => handLog(SOUND_RUN, 15),
  'opens-early': () => handLog(OPENS_EARLY, 14),
  'no-flow': () => simulated('pump moves nothing', 15),
  'air-pocket': () => simulated('air in the system', 20),
  'sensor-jumps': () => simulated('sensor jumps', 15, {}, { delimiter: ';', comma: true, clock: 'iso' }),
  'snow-minus-25': () =>
    simulated(
      'none',
      -25,
      { idleHeat: 1800, heater: 1, size: 1.3, mass: 1000, dragArea: 0.55 },
      { fahrenheit: true, mph: true },
    ),
};

/** A sample file with the line that says what it is. */
export function sampleLog(name: SampleName): string {
  return `# Invented: ${SAMPLES[name]}\n${LOGS[name]()}`;
}
