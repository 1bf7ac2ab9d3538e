/** Records of a kind in groups for their list: causes by part of the system, tests by what they ask of car and bench. */
import type { Entry } from '../../library/shelf.ts';

export interface Group<T> {
  name: string;
  members: T[];
}

/** The first whose words stand in the name of the part; the order tells "heater pump" from "pump". */
const SYSTEMS: readonly (readonly [string, RegExp])[] = [
  ['Thermostat', /thermostat/],
  ['Radiator fan', /\bfan\b/],
  ['Heater and cabin', /heater|blend door|blower|flap|cabin|evaporator|body|air box/],
  ['Pump and belts', /pump|belt|pulley/],
  ['Sensors, gauge and wiring', /sensor|gauge|wir(?:e|ing)|earth|battery/],
  ['Radiator, hoses, cap and coolers', /radiator|hose|\bcap\b|cooler|grille|vent line|plug/],
  ['Coolant and filling', /coolant|filling|power steering|urea/],
  ['Gearbox and brakes', /gearbox|converter|brake/],
  [
    'Engine and exhaust',
    /head|manifold|fuelling|exhaust|catalyst|engine oil|injector|timing cover|particulate/,
  ],
];

/** Causes by the part of the system they sit in. */
export function causesBySystem(causes: readonly Entry<'cause'>[]): Group<Entry<'cause'>>[] {
  return grouped(
    causes,
    [...SYSTEMS.map(([name]) => name), 'Elsewhere'],
    ({ data }) => SYSTEMS.find(([, words]) => words.test(data.part))?.[0] ?? 'Elsewhere',
  );
}

const ELECTRICAL = ['multimeter', 'clamp-meter', 'test-lamp', 'fused-jump-lead', 'terminal-tools'];

const FROM_COLD = 'Engine cold, or warming up from cold';
const WARM = 'Engine warm';
const EITHER = 'Cold or warm, engine off or on';
const METER = 'With meter, lamp or lead';
const ROAD = 'On the road';

/** Tests by what they take: a cold engine, a meter, a road. */
export function testsByState(tests: readonly Entry<'test'>[]): Group<Entry<'test'>>[] {
  return grouped(tests, [FROM_COLD, EITHER, WARM, METER, ROAD], ({ data }) => {
    if (data.place === 'road') return ROAD;
    if (data.tools.some((tool) => ELECTRICAL.includes(tool))) return METER;
    return { cold: FROM_COLD, warm: WARM, any: EITHER }[data.engine];
  });
}

function grouped<T>(all: readonly T[], names: readonly string[], nameOf: (one: T) => string): Group<T>[] {
  return names
    .map((name) => ({ name, members: all.filter((one) => nameOf(one) === name) }))
    .filter(({ members }) => members.length > 0);
}
