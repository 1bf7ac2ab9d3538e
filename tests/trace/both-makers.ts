/** Road tests of both makers in one shape, and how each is judged with more or less known of the car. */
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { type FiguresOf, traceVehicleOf, type VehicleFigures } from '../../src/trace/vehicle.ts';
import type { FindingId } from '../../src/trace/verdict.ts';
import { sheetWith } from './known-cars.ts';
import { type Score, score, type Truth } from './score.ts';
import { caseOf } from './second-maker/cases.ts';
import { simulate } from './simulate.ts';

export interface RoadTest {
  number: number;
  /** In words. */
  fault: string;
  truth: Truth;
  text: string;
  /** °C. */
  stamp: number;
  fanOn: number;
  fanOff: number;
  inletSide: boolean;
}

export const MAKERS: Record<'first' | 'second', (number: number) => RoadTest> = {
  first: (number) => {
    const { fault, truth, text, car } = simulate(number);
    const { opens: stamp, fanOn, fanOff, inletSide } = car;
    return { number, fault, truth, text, stamp, fanOn, fanOff, inletSide };
  },
  second: (number) => {
    const { fault, truth, text, engine } = caseOf(number);
    const { stamp, fanOn, fanOff, inletSide } = engine;
    return { number, fault, truth, text, stamp, fanOn, fanOff, inletSide };
  },
};

/** The car's own stamp and fan, as a record of it would hold them. */
export function ownFigures({ stamp, fanOn, fanOff, inletSide }: RoadTest): VehicleFigures {
  return sheetWith(
    {
      'thermostat.opens': `${stamp} °C`,
      'fan.on': `${Math.round(fanOn)} °C`,
      'fan.off': `${Math.round(fanOff)} °C`,
    },
    { thermostat: inletSide ? 'inlet side' : 'outlet side', fan: 'electric, one stage' },
  );
}

export interface Scored {
  number: number;
  fault: string;
  finding: FindingId | 'not read';
  open: readonly string[];
  score: Score;
}

/** @param sheet figures the log is judged by; undefined for a car that nothing is known of @param whose they are */
export function scored(
  { number, fault, truth, text }: RoadTest,
  sheet: VehicleFigures | undefined,
  whose: FiguresOf = 'this car',
): Scored {
  const read = finish(readLog(text));
  if (!read.ok) return { number, fault, finding: 'not read', open: [], score: 'cannot tell' };
  const { verdict } = judgeTrace(read.trace, traceVehicleOf(sheet, {}, whose));
  return { number, fault, finding: verdict.finding, open: verdict.open, score: score(truth, verdict) };
}
