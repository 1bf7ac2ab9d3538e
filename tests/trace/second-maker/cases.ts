/** Road tests of the second maker by number: what is wrong with the car, the day, the journey, and the log of it. */
import { sheetWith } from '../known-cars.ts';
import { type Random, randomOf } from '../random.ts';
import type { Truth } from '../score.ts';
import { drawEngine, type Engine, type Ills, runEngine, WELL } from './engine.ts';
import { everyday, journeyOf, streetOnly, tryOut } from './journey.ts';
import { record } from './recorder.ts';

/** In the order in which they are dealt out; a sound car comes up most often, as it does in a workshop. */
const FAULTS = [
  'sound',
  'thermostat stuck open',
  'fan always on',
  'thermostat opens early',
  'sound',
  'fan dead',
  'sensor reads low',
  'sound in hard frost',
  'thermostat stuck shut',
  'sound, never at speed',
  'sensor jumps',
  'substitute value',
  'log too short',
  'sound',
  'thermostat opens late',
  'pump moves nothing',
  'radiator blocked',
] as const;
export type Fault = (typeof FAULTS)[number];

/** Causes on the shelf that each of them is. */
const CAUSES: Partial<Record<Fault, readonly string[]>> = {
  'thermostat stuck open': ['thermostat-stuck-open'],
  'thermostat opens early': ['thermostat-opens-early', 'thermostat-wrong-rating'],
  'thermostat stuck shut': ['thermostat-stuck-shut'],
  'thermostat opens late': ['thermostat-opens-late', 'thermostat-stuck-shut'],
  'pump moves nothing': ['pump-impeller-failed'],
  'radiator blocked': ['radiator-blocked-inside'],
  'fan dead': ['fan-motor-dead'],
  'sensor reads low': ['sensor-reads-low'],
  'sensor jumps': ['sensor-intermittent'],
  'substitute value': ['sensor-open-circuit'],
};

export interface Case {
  fault: Fault;
  truth: Truth;
  engine: Engine;
  /** °C. */
  outside: number;
  text: string;
}

/** The same number, the same case. */
export function caseOf(number: number): Case {
  const random = randomOf(700_000 + number);
  const fault = FAULTS[number % FAULTS.length] ?? 'sound';
  const engine = drawEngine(random);
  const outside = fault === 'sound in hard frost' ? random.between(-26, -12) : random.between(-8, 33);
  const ills = illsOf(fault, engine, outside, random);
  const pieces =
    fault === 'sound, never at speed'
      ? streetOnly(random)
      : random.chance(0.45)
        ? tryOut(random)
        : everyday(random);
  const heater = outside > 18 ? 0 : random.pick(outside < -10 ? [0.5, 1, 1] : [0, 0, 0.3, 1]);
  const startAt = random.chance(0.8) ? outside + random.between(-0.5, 2) : random.between(45, engine.stamp);
  const states = runEngine(engine, ills, journeyOf(pieces, outside, heater, random), startAt);
  const asked = states.filter(({ coolant }) => coolant > engine.fanOn + 1).length;
  const part = fault === 'log too short' ? states.slice(0, Math.round(random.between(20, 110))) : states;
  const truth: Truth = {
    causes: CAUSES[fault] ?? [],
    ...(fault === 'fan dead' && { fanAsked: asked }),
    ...(fault === 'radiator blocked' && { needsRadiator: true }),
  };
  return { fault, truth, engine, outside, text: record(part, fault, outside, random) };
}

function illsOf(fault: Fault, engine: Engine, outside: number, random: Random): Ills {
  switch (fault) {
    case 'thermostat stuck open':
      return noticed(engine, outside, () => ({ ...WELL, liftAtLeast: random.between(0.12, 0.9) }));
    case 'thermostat opens early':
      return noticed(engine, outside, () => ({ ...WELL, shift: -random.between(8, 25) }));
    case 'thermostat stuck shut':
      return { ...WELL, liftAtMost: 0 };
    case 'thermostat opens late':
      return { ...WELL, shift: random.between(9, 18) };
    case 'pump moves nothing':
      return { ...WELL, pumpShare: random.between(0, 0.05) };
    case 'radiator blocked':
      return { ...WELL, tubesShare: random.between(0.06, 0.2) };
    case 'fan dead':
      return { ...WELL, fan: 'dead' };
    case 'fan always on':
      return { ...WELL, fan: 'always' };
    default:
      return WELL;
  }
}

/** Nobody brings in a car whose thermostat is a little out: it has to read 7 K under its stamp on the road of that day. */
function noticed(engine: Engine, outside: number, draw: () => Ills): Ills {
  const road = Array.from({ length: 1500 }, (_, at) => ({
    speed: at < 20 ? at : 24,
    slope: 0,
    outside,
    heater: 0,
    running: true,
  }));
  let ills = draw();
  for (let tries = 0; tries < 12; tries++) {
    const end = runEngine(engine, ills, road, engine.stamp).slice(-300);
    const mean = end.reduce((sum, { coolant }) => sum + coolant, 0) / end.length;
    if (mean < engine.stamp - 7) break;
    ills = draw();
  }
  return ills;
}

/** The car's own figures, as a record of it would hold them. */
export function ownSheet({ stamp, fanOn, fanOff, inletSide }: Engine) {
  return sheetWith(
    {
      'thermostat.opens': `${stamp} °C`,
      'fan.on': `${Math.round(fanOn)} °C`,
      'fan.off': `${Math.round(fanOff)} °C`,
    },
    { thermostat: inletSide ? 'inlet side' : 'outlet side', fan: 'electric, one stage' },
  );
}
