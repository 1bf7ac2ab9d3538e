/** What the simulated car shows of a case: the fault on a car of the same layout and stamp, drawn from the code of the case. Pure. */
import { type Car, type CarLayout, drawCar } from '../../car/car.ts';
import { FAULT_IDS, layoutFor, severityAt, withFault } from '../../car/faults.ts';
import { readingOf, TEST_IDS, testFits } from '../../car/reading.ts';
import type { KnownLayout } from '../../model/layout.ts';
import { mixed } from './case-codes.ts';
import type { AnswerOf, PracticeCase } from './practice-data.ts';

/** What of a vehicle the simulated car takes over. */
export interface ForCar {
  layout: KnownLayout;
  /** Stamp of its thermostat, K; undefined where nobody knows it. */
  stamp?: number | undefined;
  diesel: boolean;
}

/** How scripts/practice-car.js hands it to the page. */
export interface PracticeCar {
  answersOf: typeof simulatedAnswers;
  /** Whether the simulated car knows the fault on this layout. */
  knows(code: string, faults: readonly string[], vehicle: ForCar): boolean;
}

/** K; a mild day. */
const OUTSIDE = 288.15;
/** Half way between the ends of a fault's range. A judgement, no source. */
const SEVERITY = 0.5;

/** The car with its fault; undefined where the simulated car does not know the fault or the layout. */
export function simulatedCar(code: string, faults: readonly string[], vehicle: ForCar): Car | undefined {
  const layout = carLayout(vehicle);
  const fault = FAULT_IDS.find((id) => id === faults[0]);
  if (!layout || fault === undefined || faults.length !== 1) return undefined;
  const needs = Object.entries(layoutFor(fault));
  if (needs.some(([feature, value]) => layout[feature as keyof CarLayout] !== value)) return undefined;
  const { stamp } = vehicle;
  const sound = drawCar(mixed(code), { layout, ...(stamp !== undefined && { stamp }) });
  return withFault(sound, fault, severityAt(fault, SEVERITY));
}

/** What the simulated car shows at a test; nothing where it does not know the fault, the layout or the test. */
export function simulatedAnswers(
  { code, faults }: Pick<PracticeCase, 'code' | 'faults'>,
  vehicle: ForCar,
): AnswerOf {
  const car = simulatedCar(code, faults, vehicle);
  return (test) => {
    const known = TEST_IDS.find((id) => id === test);
    if (!car || known === undefined || !testFits(known, car)) return undefined;
    const { outcome, shows } = readingOf(known, car, mixed(code), OUTSIDE, 0);
    return {
      outcome,
      reading: Object.entries(shows)
        .map(([label, value]) => `${label}: ${typeof value === 'number' ? short(value) : value}`)
        .join(', '),
    };
  };
}

const short = (value: number) => String(Number(value.toFixed(2))).replace('-', '−');

/** The layout as the simulated car has it; undefined for one that it does not know, such as a car without a thermostat. */
function carLayout({ layout, diesel }: ForCar): CarLayout | undefined {
  const { thermostat, 'thermostat-kind': kind, fan, 'fan-switched-by': by, pump, heater } = layout;
  if (layout.power !== 'combustion') return undefined;
  if (thermostat !== 'inlet side' && thermostat !== 'outlet side') return undefined;
  if (kind !== 'plain wax' && kind !== 'by-pass closing' && kind !== 'map-controlled') return undefined;
  if (fan !== 'electric, one stage' && fan !== 'electric, two stages' && fan !== 'viscous clutch')
    return undefined;
  if (by !== 'engine controller' && by !== 'switch in the radiator' && by !== 'none') return undefined;
  return {
    fuel: diesel ? 'diesel' : 'petrol',
    thermostat,
    kind,
    fan,
    fanSwitchedBy: by,
    pump: pump === 'electric' ? 'electric' : 'belt',
    heater:
      heater === 'valve-controlled'
        ? 'valve-controlled'
        : layout['heater-pump'] === 'in a heater hose'
          ? 'auxiliary pump'
          : 'always flowing',
  };
}
