/** Records of a kind in groups for their list: causes by part of the system, tests by what they ask of car and bench. */
import type { Entry } from '../../library/shelf.ts';
import { SYSTEMS } from '../../model/cause.ts';

export interface Group<T> {
  name: string;
  members: T[];
}

/** Causes by the system they sit in. */
export function causesBySystem(causes: readonly Entry<'cause'>[]): Group<Entry<'cause'>>[] {
  return grouped(causes, SYSTEMS, ({ data }) => data.system).map(({ name, members }) => ({
    name: name.charAt(0).toUpperCase() + name.slice(1),
    members,
  }));
}

const FROM_COLD = 'Engine cold, or warming up from cold';
const WARM = 'Engine warm';
const EITHER = 'Cold or warm, engine off or on';
const METER = 'With meter, lamp or lead';
const ROAD = 'On the road';

/** Tests by what they take: a cold engine, a meter, a road. */
export function testsByState(tests: readonly Entry<'test'>[]): Group<Entry<'test'>>[] {
  return grouped(tests, [FROM_COLD, EITHER, WARM, METER, ROAD], ({ data }) => {
    if (data.place === 'road') return ROAD;
    if (data.work === 'electrical') return METER;
    return { cold: FROM_COLD, warm: WARM, any: EITHER }[data.engine];
  });
}

function grouped<T>(all: readonly T[], names: readonly string[], nameOf: (one: T) => string): Group<T>[] {
  return names
    .map((name) => ({ name, members: all.filter((one) => nameOf(one) === name) }))
    .filter(({ members }) => members.length > 0);
}
