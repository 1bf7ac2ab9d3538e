/**
 * The whole shelf as one file, read back as somebody else's script would: by a general-purpose validator (ajv 8, MIT) and with
 * an outside library of units (js-quantities 1.8.0, MIT).
 */
import { Ajv2020 } from 'ajv/dist/2020.js';
import Qty from 'js-quantities';
import { beforeAll, describe, expect, test } from 'vitest';
import { wholeShelf } from '../../src/library/whole-shelf.ts';
import { wholeShelfSchema } from '../../src/library/whole-shelf-schema.ts';
import { KIND_NAMES } from '../../src/model/kinds.ts';
import { isDemonstration, shelf } from './shelf.ts';

interface Reading {
  text: string;
  measures: string;
  unit: string;
  low: number;
  high: number;
  si: { unit: string; low: number; high: number };
}

/** How js-quantities writes the unit of each dimension, as written on the shelf and in SI. */
const OUTSIDE: Record<string, string> = {
  '°C': 'tempC',
  K: 'degK',
  bar: 'bar',
  Pa: 'Pa',
  N·m: 'N*m',
  l: 'l',
  'm³': 'm3',
  mm: 'mm',
  m: 'm',
  kΩ: 'kohm',
  Ω: 'ohm',
  V: 'V',
  A: 'A',
  W: 'W',
  kW: 'kW',
  min: 'min',
  h: 'h',
  s: 's',
  '°': 'deg',
  rad: 'rad',
  'l/min': 'l/min',
  'm³/s': 'm3/s',
  'km/h': 'km/h',
  'm/s': 'm/s',
  rpm: 'rpm',
  'rad/s': 'rad/s',
  km: 'km',
  kg: 'kg',
};

/** Seconds; IAU Style Manual (1989), table 5: a Julian year. js-quantities has the tropical one. */
const BY_DEFINITION: Record<string, number> = { years: 31_557_600, months: 2_629_800 };

const text = JSON.stringify(wholeShelf(shelf, { name: 'headertank', version: '9.9.9', license: 'MIT' }));
const file = JSON.parse(text);
const readings: Reading[] = [];

function collect(value: unknown): void {
  if (typeof value !== 'object' || value === null) return;
  if ('measures' in value && 'si' in value) readings.push(value as Reading);
  else for (const each of Object.values(value)) collect(each);
}

function validator(open: boolean) {
  // Strict: a word of the schema that the validator does not know is an error.
  const ajv = new Ajv2020({
    strict: true,
    strictTypes: false,
    strictRequired: false,
    formats: { uri: (address) => URL.canParse(address) },
  });
  return ajv.compile(wholeShelfSchema({ open }));
}

beforeAll(() => collect(file.records));

describe('the whole shelf as one file', () => {
  test('every name in it is in the schema, and every record of the shelf is in it', () => {
    const isRight = validator(false);
    expect(isRight(file), JSON.stringify(isRight.errors)).toBe(true);
    for (const kind of KIND_NAMES)
      expect(Object.keys(file.records[kind]), kind).toEqual([...shelf.records[kind].keys()]);
    expect(file.guides).toHaveLength(shelf.guides.length);
    expect([file.licence, file.software]).toEqual(['MIT', 'headertank 9.9.9']);
  });

  test.skipIf(!isDemonstration)(
    'a reader passes a field that is new to it, and refuses one that is wrong or gone',
    () => {
      const isRight = validator(true);
      const [id] = Object.keys(file.records.vehicle);
      const changed = (change: (entry: { record: Record<string, unknown> }) => void) => {
        const other = { ...file, records: { ...file.records, vehicle: {} as Record<string, unknown> } };
        const entry = structuredClone(file.records.vehicle[id ?? '']);
        change(entry);
        other.records.vehicle[id ?? ''] = entry;
        return other;
      };
      expect(isRight(changed(({ record }) => Object.assign(record, { 'of-tomorrow': 1 })))).toBe(true);
      expect(isRight(changed(({ record }) => Reflect.deleteProperty(record, 'maker')))).toBe(false);
      expect(isRight(changed(({ record }) => Object.assign(record, { years: 2012 })))).toBe(false);
      expect(isRight({ ...file, 'form-version': 3 })).toBe(false);
    },
  );

  test('every quantity is in SI what an outside library makes of it', () => {
    const compared = new Set<string>();
    for (const { text: written, unit, low, high, si, measures } of readings) {
      const [from, to] = [OUTSIDE[unit], si.unit === 'K' && unit === '°C' ? 'tempK' : OUTSIDE[si.unit]];
      const seconds = BY_DEFINITION[unit];
      if (seconds !== undefined) {
        expect([si.unit, si.low, si.high], written).toEqual(['s', low * seconds, high * seconds]);
        continue;
      }
      if (from === undefined || to === undefined) {
        expect([unit, si.unit], written).toEqual([unit === '%' ? '%' : '', '1']);
        continue;
      }
      compared.add(measures);
      for (const end of ['low', 'high'] as const) {
        const outside = Qty({ low, high }[end], from).to(to).scalar;
        expect(Math.abs(si[end] - outside), `${written} ${si[end]}`).toBeLessThanOrEqual(
          1e-9 * Math.abs(outside),
        );
      }
    }
    if (!isDemonstration) return;
    expect(readings.length).toBeGreaterThan(300);
    expect([...compared]).toEqual(
      expect.arrayContaining([
        'temperature',
        'pressure',
        'torque',
        'volume',
        'resistance',
        'current',
        'angle',
      ]),
    );
  });

  test('every record that one names has its address there, and that address is one of the file', () => {
    const addresses = new Set<string>();
    const named: string[] = [];
    for (const kind of KIND_NAMES)
      for (const { address, links } of Object.values<{ address?: string; links: object }>(
        file.records[kind],
      )) {
        if (address !== undefined) addresses.add(address);
        for (const ofKind of Object.values(links)) named.push(...Object.values<string>(ofKind));
      }
    expect(named.length).toBeGreaterThan(5_000);
    expect([...new Set(named.filter((address) => !addresses.has(address)))]).toEqual([null]);
  });
});
