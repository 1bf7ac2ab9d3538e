/** The cases the trade tells, from file text to sentence. */
import { describe, expect, test } from 'vitest';
import { eventsOf } from '../../src/trace/events.ts';
import { type DriverInput, judgeTrace } from '../../src/trace/judge-trace.ts';
import { fromTrace, milestonesFor, passes } from '../../src/trace/proof.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { eventText, monitorText, stopText, tell } from '../../src/trace/say.ts';
import { traceVehicleOf, type VehicleFigures } from '../../src/trace/vehicle.ts';
import { type Car, drive } from './car.ts';
import { handLog, OPENS_EARLY, SOUND_RUN } from './hand-log.ts';
import { STAMP_87, STAMP_88, sheetWith } from './known-cars.ts';
import { randomOf } from './random.ts';
import { driveOver, type Leg } from './route.ts';
import { stampedCar } from './stamped-car.ts';
import { type LogStyle, writeLog } from './write-log.ts';

function judged(text: string, sheet: VehicleFigures | undefined, said?: DriverInput) {
  const read = finish(readLog(text));
  if (!read.ok) throw new Error(read.fault.message);
  const vehicle = traceVehicleOf(sheet);
  const result = judgeTrace(read.trace, vehicle, said);
  return { ...result, told: tell(result, vehicle) };
}

const PLAIN: LogStyle = {
  delimiter: ',',
  comma: false,
  fahrenheit: false,
  mph: false,
  clock: 'seconds',
  every: 1,
  noise: 0.2,
  resolution: 1,
  irregular: false,
  columns: { speed: true, rpm: true, intake: true, ambient: true, fan: false, outlet: false, load: false },
  dirt: 0,
};

const RECIPE: Leg[] = [
  { kind: 'stand', seconds: 120 },
  { kind: 'town', seconds: 420 },
  { kind: 'road', seconds: 720, speed: 85 },
  { kind: 'stand', seconds: 1100 },
];

function simulated(car: Car, outside: number, legs: Leg[] = RECIPE, style: Partial<LogStyle> = {}): string {
  const readings = drive(car, driveOver(legs, outside, randomOf(9)), outside, randomOf(8));
  return writeLog(readings, { ...PLAIN, ...style }, randomOf(6));
}

describe('what the trade tells', () => {
  test('idles to 85 °C, then holds 76 to 78 °C at steady cruise with a stamp of 87 °C: opens too early or stuck open', () => {
    const { verdict, told } = judged(handLog(OPENS_EARLY, 14), STAMP_87);
    expect(verdict.finding).toBe('cold-at-speed');
    expect(verdict.causes.slice(0, 2)).toEqual(['thermostat-stuck-open', 'thermostat-opens-early']);
    expect(told.sentence).toMatch(
      /^The thermostat opens too early or stands open: warmed to 85\s°C, then sinks to 7[678]\s°C at steady speed/,
    );
    expect(verdict.outcomes).toContainEqual({ test: 'cruise-trace', outcome: 'falls-at-speed' });
    expect(verdict.symptom).toBe('reads-low-at-cruise');
  });

  test('cold hose at 84 to 86, pause at 90, climb to 96, fan, fall: passes with the fan on at 96', () => {
    const result = judged(handLog(SOUND_RUN, 15), STAMP_88);
    const { verdict, told, vehicle } = result;
    expect(verdict.finding).toBe('sound');
    expect(told.sentence).toMatch(/^The thermostat holds: 90\s°C/);
    const readings = fromTrace(result, vehicle);
    expect((readings['fan-on'] ?? 0) - 273.15).toBeCloseTo(96, 0);
    const milestones = milestonesFor(vehicle, STAMP_88);
    for (const id of ['opens', 'holds', 'fan-on', 'fan-off'] as const) {
      const milestone = milestones.find((each) => each.id === id);
      expect(milestone && passes(milestone, readings[id])).toBe('pass');
    }
    expect(verdict.outcomes).toContainEqual({ test: 'idle-to-fan-trace', outcome: 'cycles' });
  });

  test('a pump that moves nothing: stop', () => {
    const { verdict, told } = judged(simulated(stampedCar('pump moves nothing'), 15), STAMP_87);
    expect(verdict.stop).toBe(true);
    expect(verdict.causes).toContain('pump-impeller-failed');
    expect(told.sentence).toMatch(/^Stop\. /);
    expect(told.next).toContain('leave the cap alone');
    // Beside a stop nothing is said of a fan that was not needed.
    expect(told.open).toEqual([]);
  });

  test('a thermostat that stays shut: stop', () => {
    const { verdict } = judged(simulated(stampedCar('thermostat stuck shut'), 15), STAMP_87);
    expect(verdict).toMatchObject({ stop: true, finding: 'straight-past' });
    expect(verdict.outcomes).toContainEqual({ test: 'warm-up-timing', outcome: 'too-fast' });
  });

  test('air passing the sensor while hot: stop', () => {
    const { verdict } = judged(simulated(stampedCar('air in the system'), 20), STAMP_87);
    expect(verdict.stop).toBe(true);
    expect(verdict.causes).toContain('trapped-air');
    // Falls among swings are no fan.
    expect(verdict.outcomes.map(({ test: id }) => id)).not.toContain('idle-to-fan-trace');
  });

  test('jumps are the sensor, whatever else the log seems to show', () => {
    const { verdict, told } = judged(simulated(stampedCar('sensor jumps'), 15), STAMP_87);
    expect(verdict.finding).toBe('sensor-jumps');
    expect(verdict.stop).toBe(false);
    expect(told.sentence).toContain('faster than coolant can');
  });

  test.each([-25, -18])(
    'a sound thermostat in the snow at %d °C is not blamed, however cold it stays',
    (outside) => {
      // A light-footed diesel with everything on the heater and a bare grille.
      const car = stampedCar('none', { idleHeat: 1800, heater: 1, size: 1.3, mass: 1000, dragArea: 0.55 });
      const { verdict, told } = judged(simulated(car, outside), STAMP_87);
      expect(verdict.causes).toEqual([]);
      expect(['sound', 'cannot-tell']).toContain(verdict.finding);
      if (verdict.finding === 'cannot-tell') expect(told.open.join(' ')).toMatch(/heater|cold a day|settled/);
    },
  );

  test('the same snow with a thermostat really stuck open and the heater known to be off: blamed', () => {
    const car = stampedCar('thermostat stuck open', { leak: 0.9, heater: 0 });
    const { verdict } = judged(simulated(car, -18), STAMP_87, { heater: 'off' });
    expect(verdict.finding).toBe('cold-at-speed');
  });

  test('standing past its figure with no fan: stop, and the fan’s walk', () => {
    const { verdict } = judged(
      simulated(stampedCar('fan dead'), 30, [...RECIPE, { kind: 'stand', seconds: 900 }]),
      STAMP_87,
    );
    expect(verdict).toMatchObject({ finding: 'no-fan', stop: true, symptom: 'hot-in-traffic' });
    expect(verdict.outcomes).toContainEqual({ test: 'idle-to-fan-trace', outcome: 'climbs-no-fan' });
  });

  test('a sensor 12 K under both airs at a cold start is the sensor', () => {
    const { verdict } = judged(
      simulated(stampedCar('sensor reads low', { sensorOffset: -12 }), 18),
      STAMP_87,
    );
    expect(verdict.causes).toContain('sensor-reads-low');
  });
});

test('one air alone: 12 K under it at a cold start is the sensor, 9 K may be the morning sun', () => {
  const columns = { ...PLAIN.columns, intake: false };
  const start = (sensorOffset: number) =>
    judged(
      simulated(stampedCar('sensor reads low', { sensorOffset }), 18, [{ kind: 'town', seconds: 240 }], {
        columns,
      }),
      STAMP_87,
    );
  const told = start(-13);
  expect(told.verdict).toMatchObject({ finding: 'sensor-under-air', sure: 'likely' });
  expect(told.told.because).toContain('Only one air');
  expect(start(-9).verdict.finding).toBe('cannot-tell');
});

test('cold and driven, a reading that stays within 15 K of the air makes the log doubtful and blames nobody', () => {
  const rows = Array.from({ length: 400 }, (_, second) => `${second},2,${second < 20 ? 0 : 95},-8`);
  const { verdict, told } = judged(
    `time (s),coolant (°C),speed (km/h),ambient (°C)\n${rows.join('\n')}`,
    STAMP_87,
  );
  expect(verdict).toMatchObject({ finding: 'cannot-tell', causes: [] });
  expect(told.open.join(' ')).toMatch(/stands at 2.°C from 0:00 to the end.*compare scan tool and hose/);
});

test.each([
  [-40, 'sensor-open', 'sensor-open-circuit', 'stays-dead-cold', /^The sensor circuit is open: it reads −40/],
  [215, 'sensor-shorted', 'sensor-short-circuit', 'reads-hot-engine-is-not', /is shorted: it reads 215/],
] as const)(
  '%d °C all along: the end of the scale says which fault, and where to go on',
  (reading, finding, cause, symptom, words) => {
    const rows = Array.from({ length: 400 }, (_, second) => `${second},${reading},50,18`);
    const { verdict, told } = judged(
      `time (s),coolant (°C),speed (km/h),ambient (°C)\n${rows.join('\n')}`,
      STAMP_87,
    );
    expect(verdict).toMatchObject({ finding, causes: [cause], symptom });
    expect(told.sentence).toMatch(words);
  },
);

test('let down at speed, then past its opening standing: not called straight past', () => {
  const legs: Leg[] = [
    { kind: 'town', seconds: 500 },
    { kind: 'road', seconds: 700, speed: 85 },
    { kind: 'stand', seconds: 1500 },
  ];
  const { verdict } = judged(simulated(stampedCar('fan dead'), 34, legs), STAMP_87);
  expect(verdict.finding).toBe('no-fan');
});

describe('what a log cannot tell is said', () => {
  test.each([
    ['too short', [{ kind: 'town', seconds: 60 }], {}, /too short/],
    ['never at speed', [{ kind: 'town', seconds: 900 }], {}, /never at speed/],
  ] as [string, Leg[], Partial<LogStyle>, RegExp][])('%s', (_, legs, style, words) => {
    const { verdict, told } = judged(simulated(stampedCar('none'), 15, legs, style), STAMP_87);
    expect(verdict.finding).toBe('cannot-tell');
    expect(told.open.join(' ')).toMatch(words);
  });

  test('no road speed: at most that it opens where it should, and never what it does at speed', () => {
    const columns = { ...PLAIN.columns, speed: false };
    const { verdict, told } = judged(simulated(stampedCar('none'), 15, RECIPE, { columns }), STAMP_87);
    expect(verdict.causes).toEqual([]);
    expect(told.open.join(' ')).toMatch(/no road speed/);
    expect(verdict.outcomes.map(({ test: id }) => id)).not.toContain('cruise-trace');
    // Without a vehicle nothing says which stamp it is.
    const unknown = judged(simulated(stampedCar('none'), 15, RECIPE, { columns }), undefined);
    expect(unknown.verdict.finding).toBe('cannot-tell');
  });

  test('a sound run that never needed its fan says nothing about the fan', () => {
    const legs: Leg[] = [
      { kind: 'town', seconds: 600 },
      { kind: 'road', seconds: 700, speed: 85 },
    ];
    const { verdict, told } = judged(simulated(stampedCar('none'), 5, legs), STAMP_87);
    expect(verdict.finding).toBe('sound');
    expect(told.open.join(' ')).toContain('fan was not needed');
  });

  test('without a stamp what regulates is not called held: it is said for which stamps it would be right', () => {
    const { verdict, told } = judged(simulated(stampedCar('none'), 15), undefined);
    expect(verdict).toMatchObject({ finding: 'cannot-tell', causes: [] });
    expect(told.open.join(' ')).toMatch(
      /regulates at 8[5-8].°C: right for a stamp up to (8[89]|9[01]).°C, too low for a higher one.*Type the stamp/,
    );
    // As high as the highest stamp holds it is sound whatever the stamp, and the range is called general.
    const high = judged(simulated(stampedCar('none', { opens: 92, fanOn: 101 }), 15), undefined);
    expect(high.verdict).toMatchObject({ finding: 'sound', sure: 'likely' });
    expect(high.told.sentence).toContain('(general)');
  });
});

describe('beside the verdict', () => {
  test('the regulation’s measure, from memory: within 20 °F of the stamp, and not back under it', () => {
    const early = judged(simulated(stampedCar('thermostat stuck open', { leak: 0.8 }), 5), STAMP_87);
    expect(['falls back', 'does not reach']).toContain(early.monitor.result);
    expect(monitorText(early, early.vehicle)).toContain('it fails');
    const sound = judged(handLog(SOUND_RUN, 15), STAMP_88);
    expect(sound.monitor.result).toBe('meets');
    // 88 °C: pass at or above 76.9 °C, arithmetic of the check figures.
    expect(sound.monitor.threshold - 273.15).toBeCloseTo(76.9, 1);
    expect(monitorText(sound, sound.vehicle)).toContain('it passes');
  });

  test('the regulation’s measure is silent beside a stop and where the verdict is not on the thermostat', () => {
    for (const fault of ['pump moves nothing', 'air in the system', 'sensor jumps'] as const) {
      const result = judged(simulated(stampedCar(fault), 20), STAMP_87);
      expect(monitorText(result, result.vehicle), fault).toBeUndefined();
    }
  });

  test('where it passes with a thermostat that opens too early, it says that it does not look so near', () => {
    const early = judged(handLog(OPENS_EARLY, 14), STAMP_87);
    expect(early.monitor.result).toBe('meets');
    expect(monitorText(early, early.vehicle)).toContain('the verdict above stands');
  });

  test('one figure to stop at, and what it is: the fast stage, 8 K over the fan, or the warning if that is sooner', () => {
    const stop = (figures: Parameters<typeof sheetWith>[0]) => {
      const vehicle = traceVehicleOf(sheetWith({ 'thermostat.opens': '88 °C', ...figures }));
      return [Math.round(vehicle.stopAt.high - 273.15), stopText(vehicle)];
    };
    expect(stop({ 'fan.on': '97 °C', 'warning.lamp': '116 °C' })).toEqual([
      105,
      '8\u00a0K over its fan’s start',
    ]);
    expect(stop({ 'fan.on': '99 °C', 'fan.fast': '106 °C' })).toEqual([
      106,
      'where its fan goes to the fast stage',
    ]);
    expect(stop({ 'fan.on': '105 °C', 'warning.lamp': '110 °C' })).toEqual([110, 'where its warning comes']);
  });

  test('a stretch is told whole, and the log begins with its own first reading', () => {
    const result = judged(handLog(SOUND_RUN, 15), STAMP_88);
    const events = eventsOf(result, result.vehicle);
    const first = events.find(({ kind }) => kind === 'start');
    expect((first?.kelvin ?? 0) - 273.15).toBeCloseTo(15, 1);
    const told = events.map((event) => eventText(event).replaceAll('\u00a0', ' '));
    expect(told.find((each) => each.startsWith('Standing'))).toMatch(
      /^Standing for [\d:]+, from \d+ °C to \d+ °C$/,
    );
    for (const each of told) expect(each).not.toMatch(/ (to|for)$/);
  });

  test('the events stand in order and hold the pause, the speed, the fan', () => {
    const result = judged(handLog(SOUND_RUN, 15), STAMP_88);
    const events = eventsOf(result, result.vehicle);
    expect(events.map(({ at }) => at)).toEqual(events.map(({ at }) => at).sort((a, b) => a - b));
    const pause = events.find(({ kind }) => kind === 'opens');
    expect((pause?.kelvin ?? 0) - 273.15).toBeGreaterThan(86);
    expect(events.filter(({ kind }) => kind === 'fan on')).toHaveLength(2);
    expect(events.some(({ kind }) => kind === 'at speed')).toBe(true);
  });

  test('a switched-off engine that gets warmer is heat soak', () => {
    const rows = Array.from({ length: 900 }, (_, second) => {
      const off = second > 400;
      return `${second},${Math.round(off ? 88 + Math.min(8, (second - 400) / 20) : 88)},0,${off ? 0 : 800}`;
    });
    const result = judged(`time (s),coolant (°C),speed (km/h),rpm\n${rows.join('\n')}`, STAMP_87);
    expect(eventsOf(result, result.vehicle).some(({ kind }) => kind === 'heat soak')).toBe(true);
  });

  test('a map-controlled thermostat may run at its energised figure', () => {
    const sheet = sheetWith({
      'thermostat.opens': '100 °C',
      'thermostat.opens-energised': '82 °C',
      'running.low-limit': '77 °C',
      'warm-up.time': '8 min',
    });
    const { verdict } = judged(simulated(stampedCar('none', { opens: 84, tolerance: 0 }), 15), sheet);
    expect(verdict.causes).toEqual([]);
  });
});
