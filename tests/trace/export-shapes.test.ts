/** One drive exported in the shapes that tools write: each is read to the same trace and the same verdict. */
import { describe, expect, test } from 'vitest';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import type { Choice } from '../../src/trace/read/layout.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { handLog, SOUND_RUN } from './hand-log.ts';
import { STAMP_88 } from './known-cars.ts';

interface Line {
  second: number;
  coolant: number;
  speed: number;
  rpm: number;
  ambient: number;
}

/** The drive as figures: a line each two seconds, °C and km/h. */
const LINES: readonly Line[] = handLog(SOUND_RUN, 15)
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [second = 0, coolant = 0, speed = 0, rpm = 0, , ambient = 0] = line.split(';').map(Number);
    return { second, coolant, speed, rpm, ambient };
  });

const comma = (value: number) => value.toFixed(1).replace('.', ',');
const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
const clock = (second: number) => `${two(14 + second / 3600)}:${two((second / 60) % 60)}:${two(second % 60)}`;
const iso = (second: number) => new Date(Date.UTC(2026, 1, 3, 14) + second * 1000).toISOString();

const SHAPES: Record<string, { text: string; choice?: Choice }> = {
  'commas, relative seconds, units in the headings': {
    text: [
      'Time (s),Coolant temperature (°C),Vehicle speed (km/h),Engine speed (rpm),Ambient air temperature (°C)',
      ...LINES.map((each) => [each.second, each.coolant, each.speed, each.rpm, each.ambient].join(',')),
    ].join('\n'),
  },
  'semicolons, decimal commas, clock time, a preamble and a row of units': {
    text: [
      'Protokoll;3',
      'Fahrt am;03.02.2026',
      '',
      'Uhrzeit;Kühlmitteltemperatur;Geschwindigkeit;Drehzahl;Außentemperatur',
      'hh:mm:ss;°C;km/h;1/min;°C',
      ...LINES.map((each) =>
        [clock(each.second), ...[each.coolant, each.speed, each.rpm, each.ambient].map(comma)].join(';'),
      ),
    ].join('\r\n'),
  },
  'tabs, milliseconds, °F and mph': {
    text: [
      'Time (ms)\tECT (°F)\tVSS (mph)\tRPM\tAAT (°F)',
      ...LINES.map((each) =>
        [
          each.second * 1000,
          (each.coolant * 1.8 + 32).toFixed(1),
          (each.speed / 1.609344).toFixed(1),
          each.rpm,
          (each.ambient * 1.8 + 32).toFixed(0),
        ].join('\t'),
      ),
    ].join('\n'),
  },
  'one reading a line, date and time, unit in a column of its own': {
    text: [
      'timestamp,parameter,value,unit',
      ...LINES.flatMap(({ second, coolant, speed, rpm, ambient }) => [
        `${iso(second)},Engine coolant temperature,${coolant},°C`,
        `${iso(second + 0.4)},Vehicle speed,${speed},km/h`,
        `${iso(second + 0.8)},Engine speed,${rpm},rpm`,
        `${iso(second + 1.2)},Ambient air temperature,${ambient},°C`,
        `${iso(second + 1.6)},Oil pressure,3.1,bar`,
      ]),
    ].join('\n'),
  },
  'one reading a line, no heading, decimal commas, all of a moment under one stamp': {
    text: LINES.flatMap(({ second, coolant, speed, rpm, ambient }) => [
      `${comma(second)};ECT;${comma(coolant)}`,
      `${comma(second)};VSS;${comma(speed)}`,
      `${comma(second)};RPM;${comma(rpm)}`,
      `${comma(second)};AAT;${comma(ambient)}`,
    ]).join('\n'),
  },
  'blanks, no heading, stopwatch; the person says which column is which': {
    text: LINES.map(
      ({ second, coolant, speed, rpm, ambient }) =>
        `${Math.floor(second / 60)}:${two(second % 60)}   ${coolant}  ${speed}  ${rpm}  ${ambient}`,
    ).join('\n'),
    choice: { columns: { coolant: 1, speed: 2, rpm: 3, ambient: 4 } },
  },
};

function read(text: string, choice: Choice = {}) {
  const result = finish(readLog(text, choice));
  if (!result.ok) throw new Error(result.fault.message);
  return result;
}

describe.each(Object.entries(SHAPES))('%s', (_, { text, choice }) => {
  const { trace } = read(text, choice);

  test('coolant, speed and air as they were driven', () => {
    expect(trace.coolant.time.length).toBe(LINES.length);
    for (const at of [0, 100, 400, 800]) {
      expect(trace.coolant.time[at]).toBeCloseTo(LINES[at]?.second ?? 0, 3);
      expect((trace.coolant.value[at] ?? 0) - 273.15).toBeCloseTo(LINES[at]?.coolant ?? 0, 1);
      expect((trace.speed?.value[at] ?? 0) * 3.6).toBeCloseTo(LINES[at]?.speed ?? 0, 0);
      expect(trace.rpm?.value[at]).toBeCloseTo(LINES[at]?.rpm ?? 0, 0);
    }
    expect((trace.ambient?.value[0] ?? 0) - 273.15).toBeCloseTo(15, 0);
  });

  test('the same verdict', () => {
    expect(judgeTrace(trace, traceVehicleOf(STAMP_88)).verdict.finding).toBe('sound');
  });
});

describe('one reading a line', () => {
  const words = (text: string) => read(text).understood.words;
  test('is said', () => {
    expect(
      words(SHAPES['one reading a line, date and time, unit in a column of its own']?.text ?? ''),
    ).toMatch(/^One reading a line with its name, cells cut by comma/);
  });

  test('a log in columns with a column of words stays one in columns', () => {
    const text = LINES.slice(0, 50)
      .map(({ second, coolant }) => `${second},${coolant},${second % 4 ? 'closed loop' : 'coolant cold'}`)
      .join('\n');
    const { understood, trace } = read(`time,ECT,state\n${text}`);
    expect(understood.words).toMatch(/^Columns/);
    expect(trace.coolant.time.length).toBe(50);
  });

  test('a name that a person chooses is a column', () => {
    const text = LINES.slice(0, 60)
      .flatMap(({ second, coolant }) => [`${second},Coolant,20`, `${second},Probe 7,${coolant + 5}`])
      .join('\n');
    const { trace } = read(`time,name,value\n${text}`, { columns: { coolant: 2 }, units: { coolant: '°C' } });
    expect((trace.coolant.value[30] ?? 0) - 273.15).toBeCloseTo((LINES[30]?.coolant ?? 0) + 5, 1);
  });
});

describe('air that cannot be', () => {
  test.each([60, 80, 99, 215, 1_000_000, -40])(
    'outside %d °C all along: left out, said, and no blame on the sensor',
    (air) => {
      const text = LINES.map((each) => [each.second, each.coolant, each.speed, air].join(',')).join('\n');
      const { trace, understood } = read(`time (s),ECT (°C),VSS (km/h),AAT (°C)\n${text}`);
      expect(trace.ambient).toBeUndefined();
      expect(understood.remarks.join(' ')).toContain('"AAT (°C)" is no temperature of air; left out.');
      expect(judgeTrace(trace, traceVehicleOf(STAMP_88)).verdict.causes).toEqual([]);
    },
  );
});

test.each([19, 24, 40])('a log of %d hours, one reading each 10 s, is judged', (hours) => {
  const lines = Array.from({ length: hours * 360 }, (_, at) => {
    const minute = at / 6;
    return `${at * 10},${Math.round(Math.min(90, 15 + 7 * minute))},${minute % 60 < 10 ? 0 : 80},15`;
  });
  const { trace } = read(`time (s),ECT (°C),VSS (km/h),AAT (°C)\n${lines.join('\n')}`);
  expect(judgeTrace(trace, traceVehicleOf(STAMP_88)).verdict.causes).toEqual([]);
});
