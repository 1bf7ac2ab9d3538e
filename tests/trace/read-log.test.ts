/** Logs as tools write them, and what the reader takes them for. */
import { describe, expect, test } from 'vitest';
import { decode } from '../../src/trace/read/decode.ts';
import type { Choice } from '../../src/trace/read/layout.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';

function read(text: string, choice: Choice = {}) {
  const result = finish(readLog(text, choice));
  if (!result.ok) throw new Error(`${result.fault.id}: ${result.fault.message}`);
  return result;
}

function fault(text: string, choice: Choice = {}) {
  const result = finish(readLog(text, choice));
  if (result.ok) throw new Error('It was read');
  return result.fault;
}

/** °C to a tenth. */
const celsius = (values: Float64Array) => Array.from(values, (each) => Math.round((each - 273.15) * 10) / 10);
const units = (text: string, choice?: Choice) =>
  Object.fromEntries(
    Object.entries(read(text, choice).understood.roles).map(([role, taken]) => [role, taken?.unit.symbol]),
  );

describe('delimiters and decimal marks', () => {
  test.each([
    ['comma', 'time,coolant\n0,20.5\n1,21.5\n2,22.5'],
    ['semicolon and decimal comma', 'time;coolant\n0;20,5\n1;21,5\n2;22,5'],
    ['tab', 'time\tcoolant\n0\t20.5\n1\t21.5\n2\t22.5'],
    ['upright stroke', 'time|coolant\n0|20.5\n1|21.5\n2|22.5'],
    ['blanks', 'time coolant\n 0   20.5\n 1   21.5\n 2   22.5'],
    ['quoted decimal comma between commas', '"time","coolant"\n"0","20,5"\n"1","21,5"\n"2","22,5"'],
    ['Windows line ends', 'time,coolant\r\n0,20.5\r\n1,21.5\r\n2,22.5\r\n'],
    ['old Mac line ends', 'time,coolant\r0,20.5\r1,21.5\r2,22.5\r'],
    ['byte order mark', '\ufefftime,coolant\n0,20.5\n1,21.5\n2,22.5'],
    [
      'preamble and a line of units',
      'Logger 3\nDriver;somebody\n\ntime;coolant\ns;°C\n0;20.5\n1;21.5\n2;22.5',
    ],
    ['blank lines and trailing junk', 'time,coolant\n0,20.5\n\n1,21.5\n\n2,22.5\nEND OF LOG\n***'],
    ['a trailing comma on every line', 'time,coolant,\n0,20.5,\n1,21.5,\n2,22.5,'],
  ])('%s', (_, text) => {
    const { trace } = read(text);
    expect(celsius(trace.coolant.value)).toEqual([20.5, 21.5, 22.5]);
    expect([...trace.coolant.time]).toEqual([0, 1, 2]);
  });

  test('decimal commas between commas are refused in words, not guessed', () => {
    const found = fault('time,coolant\n0,20,5\n1,21,5\n2,22,5\n3,23,5');
    expect(found.id).toBe('decimal-comma-between-commas');
    expect(found.message).toContain('Export again with semicolons or tabs');
  });

  test('a quotation mark that is never closed costs its own line only', () => {
    const { trace } = read('time,coolant,note\n0,20,a\n1,21,"b\n2,22,c\n3,23,d');
    expect(celsius(trace.coolant.value)).toEqual([20, 21, 22, 23]);
  });
});

describe('clocks', () => {
  const with2 = (stamps: string[], head = 'time') =>
    `${head};coolant\n${stamps.map((each, at) => `${each};${60 + at}`).join('\n')}`;
  test.each([
    ['seconds', with2(['0', '0.5', '1.0']), [0, 0.5, 1]],
    ['milliseconds named', with2(['0', '500', '1000'], 'Time (ms)'), [0, 0.5, 1]],
    ['milliseconds by size', with2(['0', '500', '1000']), [0, 0.5, 1]],
    ['minutes named', with2(['0', '1', '2'], 'Time (min)'), [0, 60, 120]],
    ['h:mm:ss', with2(['12:00:00', '12:00:01.5', '12:00:03']), [0, 1.5, 3]],
    ['h:mm:ss with comma', with2(['12:00:00,0', '12:00:01,5', '12:00:03,0']), [0, 1.5, 3]],
    ['past midnight', with2(['23:59:59', '00:00:01', '00:00:02']), [0, 2, 3]],
    ['afternoon by letters', with2(['11:59:59 AM', '12:00:01 PM', '12:00:02 PM']), [0, 2, 3]],
    ['m:ss', with2(['0:10', '0:11', '0:12']), [0, 1, 2]],
    [
      'ISO 8601',
      with2(['2026-03-01T10:00:00Z', '2026-03-01T10:00:02.5Z', '2026-03-01T10:00:04Z']),
      [0, 2.5, 4],
    ],
    [
      'ISO 8601 with offsets',
      with2(['2026-03-01T10:00:00+01:00', '2026-03-01T09:00:02Z', '2026-03-01T10:00:04+01:00']),
      [0, 2, 4],
    ],
    [
      'date and time, day first',
      with2(['01.03.2026 10:00:00', '01.03.2026 10:00:01', '01.03.2026 10:00:02']),
      [0, 1, 2],
    ],
    ['Unix seconds', with2(['1765000000', '1765000001', '1765000002']), [0, 1, 2]],
    ['Unix milliseconds', with2(['1765000000000', '1765000001000', '1765000002000']), [0, 1, 2]],
    ['spreadsheet days', with2(['46000.5', '46000.50001157', '46000.50002315']), [0, 1, 2]],
  ])('%s', (_, text, seconds) => {
    expect(Array.from(read(text).trace.coolant.time, (each) => Math.round(each * 100) / 100)).toEqual(
      seconds,
    );
  });

  test('counts of a hand-written sheet are minutes when as seconds no engine could warm so fast', () => {
    const { understood } = read('t;coolant\n0;15\n1;22\n2;31\n3;40\n4;49\n5;58\n6;66\n7;73');
    expect(understood.duration).toBe(420);
    expect(understood.remarks.join(' ')).toContain('taken as minutes');
  });
});

describe('times out of order', () => {
  test('rows that go back or leap away are left out and counted', () => {
    const { trace, understood } = read('time,coolant\n0,60\n1,61\n9999,61\n2,62\n1.5,62\n3,63\n4,64');
    expect([...trace.coolant.time]).toEqual([0, 1, 2, 3, 4]);
    expect(understood.rows.backward).toBe(2);
    expect(understood.remarks).toContain('2 lines with a time that goes back left out.');
  });

  test('the same time twice is kept once', () => {
    const { trace, understood } = read('time,coolant\n0,60\n1,61\n1,61\n2,62\n3,63\n4,64\n5,64\n6,65\n7,66');
    expect([...trace.coolant.time]).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(understood.rows.duplicate).toBe(1);
  });

  test('many lines under one stamp are spread to the next', () => {
    const lines = Array.from({ length: 20 }, (_, at) => `12:00:0${Math.floor(at / 5)},${60 + at}`);
    const { trace } = read(`time,coolant\n${lines.join('\n')}`);
    expect(Array.from(trace.coolant.time.slice(0, 6), (each) => Math.round(each * 10) / 10)).toEqual([
      0, 0.2, 0.4, 0.6, 0.8, 1,
    ]);
  });

  test('of two recordings in one file the longer is read', () => {
    const part = (from: number, rows: number) =>
      Array.from({ length: rows }, (_, at) => `${at},${from + at}`).join('\n');
    const { trace, understood } = read(`time,coolant\n${part(20, 15)}\n${part(50, 30)}`);
    expect(trace.coolant.time.length).toBe(30);
    expect(celsius(trace.coolant.value)[0]).toBe(50);
    expect(understood.rows.otherRecording).toBe(15);
  });
});

describe('names and units', () => {
  test.each(
    [
      [
        'ECT',
        'Coolant Temp (°C)',
        'Engine Coolant Temperature [degC]',
        'coolant_c',
        'CLT',
        'Kühlmitteltemperatur',
        'Water temp',
        'Motortemperatur',
        'Temp. liquide de refroidissement',
      ],
    ].flat(),
  )('%s is the coolant', (name) => {
    expect(
      read(`time;Engine oil temperature;${name};Coolant level\n0;90;80;1\n1;90;81;1\n2;90;82;1`).understood
        .roles.coolant?.column,
    ).toBe(2);
  });

  test('engine speed is no road speed, a fan speed neither', () => {
    const { roles } = read(
      'time,ECT,Engine speed (rpm),Fan speed (%),Vehicle speed (km/h)\n0,80,800,0,0\n1,81,900,0,5\n2,82,900,50,9',
    ).understood;
    expect([roles.rpm?.column, roles.fan?.column, roles.speed?.column]).toEqual([2, 3, 4]);
  });

  test('Fahrenheit and miles from the headings', () => {
    const { trace } = read('time,ECT (F),VSS (mph)\n0,212,60\n1,212,60\n2,212,60');
    expect(celsius(trace.coolant.value)).toEqual([100, 100, 100]);
    expect(trace.speed?.value[0]).toBeCloseTo(26.8224, 4);
  });

  test('without a unit the size decides, and it is said', () => {
    const { understood } = read('time,ECT\n0,180\n1,190\n2,195');
    expect(understood.roles.coolant?.unit.symbol).toBe('°F');
    expect(understood.remarks).toContain('"ECT" names no unit; taken as °F.');
    expect(units('time,ECT\n0,350\n1,355\n2,358')).toMatchObject({ coolant: 'K' });
    expect(units('time,ECT\n0,80\n1,85\n2,90')).toMatchObject({ coolant: '°C' });
  });

  test('a heading whose unit the numbers cannot be in is not believed, and it is said', () => {
    const { understood } = read('time,coolant °C\n0,288.1\n1,295.4\n2,302.2');
    expect(understood.roles.coolant?.unit.symbol).toBe('K');
    expect(understood.remarks).toContain('"coolant °C" says °C, which its numbers cannot be; taken as K.');
    // A shorted sensor stands at the end of its scale: that is no kelvin.
    expect(units('time,coolant °C\n0,255\n1,255\n2,255')).toMatchObject({ coolant: '°C' });
  });

  test('a column in a unit of speed is the road speed, whatever its name', () => {
    expect(
      read('Zeit;Kühlmittel °C;Tempo km/h\n0;15,0;0\n5;17,2;30\n10;19,4;50').understood.roles.speed?.unit
        .symbol,
    ).toBe('km/h');
  });

  test('units stuck to the cells', () => {
    const { trace } = read('time,coolant\n0 s,176 °F\n1 s,185 °F\n2 s,194 °F');
    expect(celsius(trace.coolant.value)).toEqual([80, 85, 90]);
  });

  test('fans in words', () => {
    const { trace } = read('time,ECT,Radiator fan\n0,95,off\n1,96,ON\n2,95,off');
    expect([...(trace.fan?.value ?? [])]).toEqual([0, 1, 0]);
  });

  test('cells that are empty in turn, as tools write that ask for one value after the other', () => {
    const { trace } = read('time,ECT,VSS\n0,80,\n0.5,,30\n1,81,\n1.5,,31\n2,82,');
    expect(celsius(trace.coolant.value)).toEqual([80, 81, 82]);
    expect(trace.speed?.time.length).toBe(2);
  });

  test('a person puts a column and its unit right', () => {
    const text = 'time,a,b\n0,70,176\n1,71,185\n2,72,194';
    expect(fault(text).id).toBe('no-coolant');
    const { trace, understood } = read(text, { columns: { coolant: 2 }, units: { coolant: '°F' } });
    expect(celsius(trace.coolant.value)).toEqual([80, 85, 90]);
    expect(understood.roles.coolant?.unitFrom).toBe('person');
    expect(
      read('time,ECT,VSS\n0,80,1\n1,80,2\n2,80,3', { columns: { speed: null } }).trace.speed,
    ).toBeUndefined();
  });

  test('a sheet by hand that names the units alone', () => {
    const { trace, understood } = read('min;°C;km/h\n0;15;0\n1;24;50\n2;33;50\n3;42;50');
    expect(celsius(trace.coolant.value)).toEqual([15, 24, 33, 42]);
    expect(understood.duration).toBe(180);
    expect(trace.speed?.value[1]).toBeCloseTo(50 / 3.6, 6);
  });

  test('letters as headings are no units', () => {
    const { understood } = read(
      'a;b;c;d;e;f\n0;80;50;900;20;14\n1;81;50;910;20;14\n2;82;50;920;20;14\n3;83;50;930;20;14',
      {
        columns: { coolant: 1, speed: 2, ambient: 5 },
      },
    );
    expect(understood.roles.time?.column).toBe(0);
    expect(understood.roles.ambient?.unit.symbol).toBe('°C');
  });

  test('two columns without any heading', () => {
    expect(celsius(read('0,20\n1,21\n2,22\n3,23').trace.coolant.value)).toEqual([20, 21, 22, 23]);
  });
});

describe('what is no log gets a message that says what to do', () => {
  test.each([
    ['', 'empty', 'Export the log again'],
    ['  \n\n', 'empty', 'Export the log again'],
    ['PK\u0003\u0004\u0000\u0000', 'not-text', 'save it as CSV'],
    ['Dear customer, here is your log.', 'no-table', 'one line a reading'],
    ['a,b\nx,y\nu,v', 'no-table', 'one line a reading'],
    ['coolant,speed\n80,50\n81,49\n80,51\n82,50', 'no-time', 'Say which column holds the time'],
    ['time,speed\n0,50\n1,51\n2,50', 'no-coolant', 'Say which column it is'],
    ['time,ECT\n0,80\n1,x', 'no-readings', 'Check the columns'],
  ])('%j', (text, id, words) => {
    const found = fault(text);
    expect(found.id).toBe(id);
    expect(found.message).toContain(words);
  });
});

test('bytes of three encodings', () => {
  const text = 'Zeit;Kühlmittel °C\n0;80';
  expect(decode(new TextEncoder().encode(text))).toBe(text);
  expect(decode(Uint8Array.from(text, (each) => each.charCodeAt(0)))).toBe(text);
  const wide = new Uint8Array(2 + 2 * text.length);
  wide.set([0xff, 0xfe]);
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    wide.set([code & 255, code >> 8], 2 + 2 * at);
  }
  expect(decode(wide).replace('\ufeff', '')).toBe(text);
});
