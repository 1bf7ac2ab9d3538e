import { expect, test } from 'vitest';
import { causesBySystem, testsByState } from '../../../src/site/shelf/record-groups.ts';
import { shelf } from '../../shelf/shelf.ts';

const causes = [...shelf.records.cause.values()];
const tests = [...shelf.records.test.values()];
const groupOf = (groups: { name: string; members: { id: string }[] }[], id: string) =>
  groups.filter(({ members }) => members.some((each) => each.id === id)).map(({ name }) => name);

test('every cause stands in one group, by its system', () => {
  const groups = causesBySystem(causes);
  expect(groups.flatMap(({ members }) => members)).toHaveLength(causes.length);
  expect(groupOf(groups, 'thermostat-stuck-open')).toEqual(['Thermostat']);
  expect(groupOf(groups, 'heater-pump-dead')).toEqual(['Heater and cabin']);
  expect(groupOf(groups, 'pump-impeller-failed')).toEqual(['Pump and belts']);
  expect(groupOf(groups, 'coolant-low')).toEqual(['Coolant and filling']);
  expect(groupOf(groups, 'header-tank-cracked')).toEqual(['Radiator, hoses, cap and coolers']);
  expect(groupOf(groups, 'regeneration-running')).toEqual(['Nothing at fault']);
});

test('every test stands in one group, by the state of the car and what it takes', () => {
  const groups = testsByState(tests);
  expect(groups.flatMap(({ members }) => members)).toHaveLength(tests.length);
  expect(groupOf(groups, 'cruise-trace')).toEqual(['On the road']);
  expect(groupOf(groups, 'fan-current')).toEqual(['With meter, lamp or lead']);
  expect(groupOf(groups, 'hose-warm-up-outlet-side')).toEqual(['Engine cold, or warming up from cold']);
});
