/** What is typed into the form of a vehicle becomes a record that the shelf takes, and says nothing that nobody typed. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { checkVehicle } from '../../src/library/check-vehicle.ts';
import { takeIn } from '../../src/library/take-in.ts';
import { type PlainData, vehicleText } from '../../src/model/vehicle-file.ts';
import { DONT_KNOW, recordOf } from '../../src/site/vehicle/vehicle-draft.ts';
import { soundShelf } from '../library/shelves.ts';

const TYPED: Record<string, string> = {
  title: 'Sedge 2.0 diesel van, 2015-2020',
  maker: 'Heronby',
  model: 'Sedge',
  body: 'van',
  years: '2015-2020',
  'engine/code': 'H20',
  'engine/size': '1968 cc',
  'engine/fuel': 'diesel',
  'layout/power': 'combustion',
  'layout/thermostat': 'outlet side',
  'layout/thermostat-kind': 'plain wax',
  'layout/heater': 'always flowing',
  'layout/heater-pump': DONT_KNOW,
  'layout/reservoir': 'header tank',
  'layout/fan': 'electric, two stages',
  'layout/fan-switched-by': 'engine controller',
  'layout/pump': 'timing belt',
  'layout/radiator': 'cross-flow',
  'layout/turbo': 'on the circuit',
  'layout/egr-cooler': 'none',
  'layout/oil-cooler': 'none',
  'layout/transmission-cooler': 'none',
  'figures/cap.opens/is': '1,4 bar',
  'figures/cap.opens/from': 'plate on the vehicle',
  'figures/cap.opens/sure': 'read off the source',
  'figures/fan.on/page': 'typed before the figure and then left alone',
  'torques/water-pump/is': '10 N·m',
  'torques/water-pump/bolt': 'M6',
  'torques/water-pump/into': 'aluminium',
  'torques/water-pump/from': 'manual',
  'torques/water-pump/page': '12',
  'torques/water-pump/sure': 'read off the source',
  access: 'From above, air duct off.\n\nThe lower bolt is felt, not seen.',
  bleeding: 'At the screw: above the gearbox.',
  gauge: 'Damped.',
  known: 'manual',
  source: 'Book of the van, chapter 19',
};
const DAY = '2026-11-30';

function fileOf(typed: Record<string, string>): string {
  const { value, faults } = checkVehicle('sedge', recordOf(typed, DAY));
  expect(faults).toEqual([]);
  return vehicleText(value as Record<string, PlainData>);
}

test('a whole form is a file that reads back as what was typed', () => {
  const data = parse(fileOf(TYPED));
  expect(data).toMatchObject({
    invented: false,
    engine: { size: '1968 cc' },
    figures: { 'cap.opens': { is: '1.4 bar', checked: DAY } },
    torques: { 'water-pump': { is: '10 N·m', page: '12' } },
    access: ['From above, air duct off.', 'The lower bolt is felt, not seen.'],
    sources: [{ manual: 'Book of the van, chapter 19' }],
  });
  // "Don't know" and a page without its figure are nothing.
  expect(data.layout).not.toHaveProperty('heater-pump');
  expect(data.figures).not.toHaveProperty('fan.on');
  expect(data.torques['water-pump']).not.toHaveProperty('class');
});

test('take-in takes the file, knows it the second time, and refuses another under its name', () => {
  const bytes = new TextEncoder().encode(fileOf(TYPED));
  const taken = takeIn('content', soundShelf(), [{ name: 'sedge.yaml', bytes }]);
  expect(taken.refused).toEqual([]);
  expect(taken.notes.map(({ path }) => path)).toEqual(['vehicles/sedge.yaml']);
  const shelf = [...soundShelf(), { path: 'vehicles/sedge.yaml', bytes }];
  expect(takeIn('content', shelf, [{ name: 'sedge.yaml', bytes }]).known).toHaveLength(1);
  const other = new TextEncoder().encode(fileOf({ ...TYPED, years: '2016-2020' }));
  expect(takeIn('content', shelf, [{ name: 'sedge.yaml', bytes: other }]).refused[0]?.why).toMatch(
    /has this name already/,
  );
});

test('what is missing or cannot be is said at its place', () => {
  const { faults } = checkVehicle(
    'sedge',
    recordOf(
      {
        ...TYPED,
        'layout/thermostat': DONT_KNOW,
        'figures/cap.opens/from': '',
        'figures/fan.current/is': '900 A',
        'torques/water-pump/is': '10 kg',
      },
      DAY,
    ),
  );
  expect(faults.map(({ path }) => path.join('/')).sort()).toEqual([
    'figures/cap.opens/from',
    'figures/fan.current/from',
    'figures/fan.current/is',
    'figures/fan.current/sure',
    'layout/thermostat',
    'torques/water-pump/is',
  ]);
  const impossible = checkVehicle('sedge', recordOf({ ...TYPED, 'torques/water-pump/is': '60 N·m' }, DAY));
  expect(impossible.faults.map(({ says }) => says).join()).toMatch(/No M6 bolt bears 60/);
});

test('whatever is typed, the file reads back as the record', () => {
  const hostile = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.constantFrom(
      '<script>alert(1)</script>',
      '__proto__',
      '- x: {',
      'a, b: [c]',
      '2026-11-30',
      'yes',
      '12',
      '"',
      "'#",
    ),
  );
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...Object.keys(TYPED)), hostile), (typed) => {
      const record = recordOf(typed, DAY);
      expect(parse(vehicleText(record))).toEqual(JSON.parse(JSON.stringify(record)));
      expect(() => checkVehicle('sedge', record)).not.toThrow();
    }),
    { numRuns: 40 },
  );
}, 60_000);
