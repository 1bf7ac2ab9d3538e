/** How fast it warms. */
import { driveOf } from '../../../src/car/drive.ts';
import { runCar } from '../../../src/car/run.ts';
import { between, cycle, idle, mean, slowTown, timeTo, trip } from './drives.ts';
import {
  CYCLE_CAR,
  celsius,
  DIESEL_CAR,
  DIESEL_LOG,
  kelvinOf,
  PETROL_CAR,
  PETROL_LOG,
  type Row,
  stampedAt,
  TEST_CYCLE,
} from './row.ts';

const cold = trip(-6, 0.4);
const cool = trip(3, 0.35);
const mild = trip(10, 0.2);
const fair = trip(18, 0);
const warm = trip(25, 0);
const toTemperature = (
  id: string,
  degrees: number,
  run: typeof idle,
  source: string,
  known: Row['known'],
  range: Row['range'],
  spread: Row['spread'],
  explained?: Row['explained'],
): Row => ({
  id,
  what: `Time from cold to ${degrees} °C`,
  unit: 's',
  source,
  kind: 'published',
  range,
  spread,
  known,
  ours: (car) => timeTo(run(car), degrees),
  ...(explained && { explained }),
});

/** The file gives one time; ±20 % stands for the cars that its name covers. */
const EARLY = (published: number): Row['explained'] => ({
  range: [0.6 * published, 1.2 * published],
  why: 'nothing of that car is fitted; drawn cars of its size are early by a fifth to a third',
});

export const WARM_UP: readonly Row[] = [
  toTemperature('warmup-idle-petrol, 40 °C', 40, idle, PETROL_LOG, PETROL_CAR, [38, 53], [25, 110]),
  toTemperature('warmup-idle-petrol, 60 °C', 60, idle, PETROL_LOG, PETROL_CAR, [161, 216], [140, 340], {
    range: [161, 260],
    why: 'the measured car idled up longer; the first minutes are cold-start strategy, not heat',
  }),
  toTemperature('warmup-idle-petrol, 80 °C', 80, idle, PETROL_LOG, PETROL_CAR, [377, 533], [300, 680]),
  toTemperature('warmup-idle-petrol, 88 °C', 88, idle, PETROL_LOG, PETROL_CAR, [536, 713], [400, 1150], {
    range: [536, 900],
    why: 'this near the opening the stamp decides, and that of the measured car is not known',
  }),
  toTemperature('warmup-town-petrol, 40 °C', 40, slowTown, PETROL_LOG, PETROL_CAR, [29, 69], [20, 90]),
  toTemperature('warmup-town-petrol, 60 °C', 60, slowTown, PETROL_LOG, PETROL_CAR, [111, 196], [90, 240]),
  toTemperature('warmup-town-petrol, 80 °C', 80, slowTown, PETROL_LOG, PETROL_CAR, [219, 448], [180, 480]),
  toTemperature(
    'warmup-diesel-by-weather, −11 to 0 °C',
    80,
    cold,
    DIESEL_LOG,
    DIESEL_CAR,
    [552, 2015],
    [450, 2400],
  ),
  toTemperature(
    'warmup-diesel-by-weather, 0 to 6 °C',
    80,
    cool,
    DIESEL_LOG,
    DIESEL_CAR,
    [590, 1227],
    [450, 1500],
  ),
  toTemperature(
    'warmup-diesel-by-weather, 6 to 15 °C',
    80,
    mild,
    DIESEL_LOG,
    DIESEL_CAR,
    [474, 865],
    [400, 1100],
  ),
  toTemperature(
    'warmup-diesel-by-weather, 15 to 22 °C',
    80,
    fair,
    DIESEL_LOG,
    DIESEL_CAR,
    [361, 889],
    [320, 950],
  ),
  toTemperature(
    'warmup-diesel-by-weather, 22 to 28 °C',
    80,
    warm,
    DIESEL_LOG,
    DIESEL_CAR,
    [504, 736],
    [300, 800],
    { range: [380, 736], why: 'five slow trips of the source; the route here is the same in every weather' },
  ),
  toTemperature(
    'warmup-60-by-weather, −11 to 0 °C',
    60,
    cold,
    DIESEL_LOG,
    DIESEL_CAR,
    [327, 1034],
    [280, 1200],
  ),
  toTemperature('warmup-60-by-weather, 0 to 6 °C', 60, cool, DIESEL_LOG, DIESEL_CAR, [391, 834], [280, 900]),
  toTemperature(
    'warmup-60-by-weather, 15 to 22 °C',
    60,
    fair,
    DIESEL_LOG,
    DIESEL_CAR,
    [256, 614],
    [200, 650],
  ),
  {
    id: 'never-warm-in-frost',
    what: 'After 25 min at 27 km/h in −6 °C, heater full on; 64 °C',
    unit: '°C',
    source: `${DIESEL_LOG}; one trip`,
    kind: 'published',
    range: [57, 75],
    spread: [48, 90],
    known: DIESEL_CAR,
    ours: (car) => {
      const drive = driveOf(
        kelvinOf(-6),
        [
          { seconds: 60, blower: 1, hot: 1 },
          ...Array.from({ length: 15 }, () => [
            { seconds: 70, speed: 11, blower: 1, hot: 1 },
            { seconds: 30, blower: 1, hot: 1 },
          ]).flat(),
        ],
        kelvinOf(-1),
      );
      return celsius(mean(between(runCar(car, drive), 1440, 1500).map(({ head }) => head)));
    },
  },
  toTemperature('nedc-diesel, 40 °C', 40, cycle, TEST_CYCLE, CYCLE_CAR, [126, 188], [75, 204], EARLY(157)),
  toTemperature('nedc-diesel, 50 °C', 50, cycle, TEST_CYCLE, CYCLE_CAR, [227, 341], [136, 369], EARLY(284)),
  toTemperature('nedc-diesel, 60 °C', 60, cycle, TEST_CYCLE, CYCLE_CAR, [401, 601], [240, 651], EARLY(501)),
  toTemperature('nedc-diesel, 70 °C', 70, cycle, TEST_CYCLE, CYCLE_CAR, [554, 832], [333, 901], EARLY(693)),
  toTemperature('nedc-diesel, 80 °C', 80, cycle, TEST_CYCLE, CYCLE_CAR, [668, 1002], [401, 1086], EARLY(835)),
  toTemperature('nedc-diesel, 85 °C', 85, cycle, TEST_CYCLE, CYCLE_CAR, [718, 1076], [431, 1166], EARLY(897)),
  {
    id: 'nedc-diesel, end',
    what: 'At the end of the cycle, 89 °C',
    unit: '°C',
    source: TEST_CYCLE,
    kind: 'published',
    range: [87, 93],
    spread: [84, 96],
    known: CYCLE_CAR,
    ours: (car) => celsius(cycle(car).samples.at(-1)?.head ?? Number.NaN),
  },
  {
    id: 'warmup-idle-frost-1l',
    what: 'Idle from −7 °C to 91 °C, 1.0 l petrol, 17 min',
    unit: 's',
    source: 'hobby measurement on a personal web page, 2006; one run',
    kind: 'published',
    range: [820, 1220],
    spread: [700, 2400],
    known: { ...stampedAt(91, { fuel: 'petrol' }), displacement: 1e-3 },
    ours: (car) => timeTo(runCar(car, driveOf(kelvinOf(-7), [{ seconds: 3000 }])), 91),
  },
  {
    id: 'warmup-trade',
    what: '20 to 80 °C, normal driving',
    unit: 's',
    source: 'common practice, as in the shelf',
    kind: 'common practice',
    range: [300, 720],
    spread: [200, 800],
    known: {},
    ours: (car) =>
      timeTo(
        runCar(
          car,
          driveOf(kelvinOf(20), [
            { seconds: 30 },
            { seconds: 90, speed: 14 },
            { seconds: 30 },
            { seconds: 120, speed: 14 },
            { seconds: 30 },
            { seconds: 1200, speed: 16 },
          ]),
        ),
        80,
      ),
  },
];
