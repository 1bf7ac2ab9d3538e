/**
 * Flow through the branches: pump head grows with the square of speed, every branch loses with the square of flow, so
 * the shares follow in closed form.
 */
import type { Car } from './car.ts';
import type { State } from './state.ts';

export interface Flow {
  /** m3/s. */
  total: number;
  radiator: number;
  heater: number;
  byPass: number;
  vent: number;
}

/** Passage of a thermostat at full lift beside that of the radiator; with lift to the power 1.5. */
const VALVE = 1.6;
const VENT = 0.012;
/** Radiator, heater and vent, thermostat open: the sum of passages that the pump's figure belongs to. */
const REFERENCE = 1.07;
const AT_REFERENCE = Math.sqrt(1 + REFERENCE ** 2) / REFERENCE;
/** A plain by-pass stays this open when the thermostat is; a closing one shuts. */
const PLAIN_BY_PASS = 0.35;
/** Gas in the circuit above this makes the pump lose its flow, and all of it this much further, m3. */
const GAS_BORNE = 0.3e-3;
const GAS_STOPS = 1.2e-3;
/** An auxiliary heater pump, m3/s; the main pump gives such a heater this share of the usual. */
const AUXILIARY = 5 / 60e3;
const WITHOUT_AUXILIARY = 0.3;
/** Passage of a hose that has drawn flat. */
const DRAWN_FLAT = 0.08;
/** Gas that fills a heater core, m3. */
const CORE = 0.35e-3;
/** Engine speed that an electric pump corresponds to, cold and warm, rpm. */
const ELECTRIC = [900, 2000] as const;

/** Passages that do not change while a car is driven. */
export function makeFlow(
  car: Car,
): (state: State, rpm: number, running: boolean, hot: number, into: Flow) => void {
  const { values, condition, layout } = car;
  const perRpm = values.pump * AT_REFERENCE;
  const idleHead = perRpm * values.idle * 0.85;
  const leak = values.seatLeak / idleHead + condition.seatPassage;
  const auxiliary = layout.heater === 'auxiliary pump';
  const core = condition.core * condition.valve;
  const throttled = layout.heater === 'valve-controlled';
  return (state, rpm, running, hot, into) => {
    const { lift } = state;
    const valve = VALVE * lift * Math.sqrt(lift) + leak;
    const tubes = condition.tubes * (rpm > condition.hoseClosesAt ? DRAWN_FLAT : 1);
    const radiator = (valve * tubes) / Math.sqrt(valve * valve + tubes * tubes);
    const closed = layout.kind === 'plain wax' ? 1 - (1 - PLAIN_BY_PASS) * lift : 1 - lift;
    const byPass = values.byPass * (condition.byPassStays ? 1 : closed);
    const wet = Math.max(0, 1 - state.gasHeater / CORE);
    const heater =
      values.heaterShare * core * wet * (throttled ? hot : 1) * (auxiliary ? WITHOUT_AUXILIARY : 1);
    const sum = radiator + byPass + heater + VENT;
    const turns = layout.pump === 'electric' ? ELECTRIC[state.head > 333 ? 1 : 0] : rpm;
    const slip = condition.beltSlip * Math.min(1, turns / 3000);
    const gas = state.gasHead + state.gasHeater + state.gasRadiator;
    const primed = Math.min(1, Math.max(0, 1 - (gas - GAS_BORNE) / GAS_STOPS));
    const driven = running ? turns * condition.pump * (1 - slip) * primed * perRpm : 0;
    const pumped = (driven * sum) / Math.sqrt(1 + sum * sum);
    const rise = Math.max(0, state.head - state.lowerHose) / 50;
    const warmth = values.thermosiphon * Math.sqrt(rise) * primed * Math.min(1, sum);
    const total = Math.max(pumped, warmth);
    const each = total / sum;
    into.radiator = each * radiator;
    into.heater = each * heater;
    into.byPass = each * byPass;
    into.vent = each * VENT;
    if (auxiliary && condition.heaterPump && running && primed > 0.5)
      into.heater = Math.max(into.heater, AUXILIARY * core * wet * hot);
    into.total = into.radiator + into.heater + into.byPass + into.vent;
  };
}
