/** Parts of the circuit by themselves. */
import { heaterAir, radiatorAir } from '../../../src/car/air.ts';
import type { Car } from '../../../src/car/car.ts';
import { coolantOf } from '../../../src/car/coolant-state.ts';
import { driveOf, type Moment } from '../../../src/car/drive.ts';
import { type Flow, makeFlow } from '../../../src/car/flow.ts';
import { runCar } from '../../../src/car/run.ts';
import { stateAt } from '../../../src/car/state.ts';
import { pressureOf } from '../../../src/car/vessel.ts';
import { between, idle, mean } from './drives.ts';
import { celsius, DIESEL_CAR, kelvinOf, PETROL_CAR, PETROL_LOG, type Row } from './row.ts';

const OUTSIDE = 101325;

function flowAt(car: Car, rpm: number, lift: number): Flow {
  const flow: Flow = { total: 0, radiator: 0, heater: 0, byPass: 0, vent: 0 };
  makeFlow(car)({ ...stateAt(kelvinOf(85), OUTSIDE), lift }, rpm, true, 1, flow);
  return flow;
}
const litresPerMinute = (flow: number) => flow * 60e3;
const [MOMENT] = driveOf(kelvinOf(20), [{ seconds: 1 }]).moments;
function moment(more: Partial<Moment>): Moment {
  if (!MOMENT) throw new Error('no moment');
  return { ...MOMENT, ...more };
}
function effectiveness(car: Car, speed: number, fan: number, rpm: number): number {
  const flow = flowAt(car, rpm, 0.5).radiator;
  const { conductance, face } = radiatorAir(
    car,
    stateAt(kelvinOf(88), OUTSIDE),
    moment({ speed }),
    kelvinOf(40),
    fan,
    flow,
  );
  return conductance / (car.values.face * face * 1157);
}
/** Gauge pressure of 50 % glycol filled at 20 °C, all at one temperature, bar. */
function sealed(liquid: number, air: number, degrees: number): number {
  const coolant = coolantOf(0.53);
  const dry = OUTSIDE - coolant.vapourPressure(kelvinOf(20));
  const gas = (dry * air) / (8.314 * kelvinOf(20));
  const room = air - liquid * (coolant.swells(kelvinOf(degrees)) - 1);
  return (
    (pressureOf(room, 0.08e-8, gas, kelvinOf(degrees), coolant.vapourPressure(kelvinOf(degrees)), OUTSIDE) -
      OUTSIDE) /
    1e5
  );
}
const GAS_LAW = 'gas law, vapour pressure and expansion of published correlations';
const closed = (litres: number, air: number, degrees: number, bar: number): Row => ({
  id: `closed-pressure, ${litres} l, ${air} l air, ${degrees} °C`,
  what: `Sealed, 0.08 l/bar of give; ${bar} bar`,
  unit: 'bar',
  source: GAS_LAW,
  kind: 'computed from published correlation',
  range: [bar - 0.04, bar + 0.04],
  spread: [bar - 0.04, bar + 0.04],
  known: {},
  ours: () => sealed(litres * 1e-3, air * 1e-3, degrees),
});
/** Gas that makes 0.3 bar in two minutes, cold, ml/s. */
function gasFor(air: number): number {
  const least = (rate: number) => {
    const gas = (OUTSIDE * air) / (8.314 * 293.15) + (rate * 1e-6 * 120) / 0.02405;
    return pressureOf(air, 0.08e-8, gas, 293.15, 0, OUTSIDE) - OUTSIDE;
  };
  let [low, high] = [0, 50];
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (least(middle) < 0.3e5) low = middle;
    else high = middle;
  }
  return low;
}
const gasVisible = (air: number, rate: number): Row => ({
  id: `gas-leak-visible, ${air} l air`,
  what: `Gas for 0.3 bar within two minutes, cold; ${rate} ml/s`,
  unit: 'ml/s',
  source: 'gas law',
  kind: 'computed from published correlation',
  range: [rate * 0.93, rate * 1.07],
  spread: [rate * 0.93, rate * 1.07],
  known: {},
  ours: () => gasFor(air * 1e-3),
});
const idleSpeed = (car: Car, start: number, from: number, to: number) =>
  mean(between(runCar(car, driveOf(kelvinOf(start), [{ seconds: to }])), from, to).map(({ rpm }) => rpm));
const LOGS = 'both log sets';

export const PARTS: readonly Row[] = [
  {
    id: 'radiator-effectiveness, fan',
    what: 'Standing, fan on, air 40 °C',
    unit: '1',
    source: 'Karnik and Kotian, IJERT 13(4), 2024 (abstract): calculated, over all flows',
    kind: 'published',
    range: [0.44, 0.94],
    spread: [0.44, 0.94],
    known: {},
    ours: (car) => effectiveness(car, 0, car.values.fanAir, 900),
  },
  {
    id: 'radiator-effectiveness, road',
    what: '90 km/h, air 40 °C',
    unit: '1',
    source: 'Karnik and Kotian, IJERT 13(4), 2024 (abstract): calculated, over all flows',
    kind: 'published',
    range: [0.44, 0.94],
    spread: [0.44, 0.94],
    known: {},
    ours: (car) => effectiveness(car, 25, 0, 2500),
  },
  {
    id: 'fan-air',
    what: 'Air through the core, fan on, standing',
    unit: 'kg/s',
    source: 'none',
    kind: 'from memory',
    range: [0.4, 0.9],
    spread: [0.35, 1.1],
    fitted: true,
    known: {},
    ours: (car) => car.values.face * car.values.fanAir * 1.15,
  },
  {
    id: 'fan-heat',
    what: 'Extra conductance by the fan, standing',
    unit: 'W/K',
    source: `${PETROL_LOG}; inferred from the fan cycle`,
    kind: 'published',
    range: [200, 400],
    spread: [180, 520],
    fitted: true,
    known: PETROL_CAR,
    ours: (car) => {
      const all = between(idle(car), 1200, 2400);
      const by = (on: boolean) =>
        mean(
          all
            .filter(({ fan }) => fan > 0 === on)
            .map(
              ({ radiatorConductance, slice1, slice2, slice3, slice4, head }) =>
                (radiatorConductance * ((slice1 + slice2 + slice3 + slice4) / 4 - kelvinOf(34))) /
                (head - kelvinOf(34)),
            ),
        );
      return by(true) - by(false);
    },
  },
  {
    id: 'pump-flow, idle',
    what: 'Coolant through the engine',
    unit: 'l/min',
    source: 'none',
    kind: 'from memory',
    range: [8, 25],
    spread: [7, 27],
    known: { layout: { pump: 'belt' } },
    ours: (car) => litresPerMinute(flowAt(car, car.values.idle, 0).total),
  },
  {
    id: 'pump-flow, 2,500 rpm',
    what: 'The same, thermostat open',
    unit: 'l/min',
    source: 'none',
    kind: 'from memory',
    range: [40, 90],
    spread: [30, 100],
    known: { layout: { pump: 'belt' } },
    ours: (car) => litresPerMinute(flowAt(car, 2500, 1).total),
  },
  {
    id: 'pump-law',
    what: 'Flow at twice the speed over flow at one',
    unit: '1',
    source: 'affinity laws, quadratic branches: exact',
    kind: 'published',
    range: [1.9999, 2.0001],
    spread: [1.9999, 2.0001],
    known: { layout: { pump: 'belt', heater: 'always flowing' } },
    ours: (car) => flowAt(car, 3000, 0.6).total / flowAt(car, 1500, 0.6).total,
  },
  {
    id: 'heater-output',
    what: 'Full blower, 80 K, 2,000 rpm',
    unit: 'kW',
    source: 'common practice, no source',
    kind: 'common practice',
    range: [4, 8],
    spread: [4, 9],
    known: { layout: { heater: 'always flowing' } },
    ours: (car) => heaterKilowatts(car),
  },
  {
    id: 'heater-air',
    what: 'Effectiveness of the heater core, 0.7 in a simulator',
    unit: '1',
    source: 'ADVISOR vehicle simulator 2003 (NREL), 140 cfm; 0.6 to 0.8 in an unsigned text',
    kind: 'published',
    range: [0.6, 0.8],
    spread: [0.5, 0.9],
    fitted: true,
    known: { layout: { heater: 'always flowing' } },
    ours: (car) => {
      const air = heaterAir(car, moment({ blower: 0.6, hot: 1 }), flowAt(car, 1500, 0).heater);
      return air.conductance / air.carries;
    },
  },
  ...[
    [40, 0.22],
    [60, 0.55],
    [80, 1.04],
    [90, 1.36],
  ].map(([t = 0, bar = 0]) => closed(6, 0.5, t, bar)),
  ...[
    [40, 0.16],
    [60, 0.4],
    [80, 0.77],
    [90, 1.02],
  ].map(([t = 0, bar = 0]) => closed(6, 1.1, t, bar)),
  ...[
    [40, 0.16],
    [60, 0.41],
    [80, 0.78],
    [90, 1.04],
  ].map(([t = 0, bar = 0]) => closed(8, 1.5, t, bar)),
  gasVisible(0.5, 1.5),
  gasVisible(1, 2.7),
  gasVisible(1.5, 3.9),
  {
    id: 'underbonnet-idle',
    what: 'Intake air after long idling, 28 °C outside',
    unit: '°C',
    source: PETROL_LOG,
    kind: 'published',
    range: [55, 68],
    spread: [52, 70],
    fitted: true,
    known: PETROL_CAR,
    ours: (car) => celsius(idle(car).samples.at(-1)?.intake ?? Number.NaN),
  },
  {
    id: 'scan-resolution',
    what: 'Step of the scan figure',
    unit: 'K',
    source: 'SAE J1979 / ISO 15031-5, service 01',
    kind: 'published',
    range: [1, 1],
    spread: [1, 1],
    known: {},
    ours: (car) => {
      const steps = idle(car).samples.map(({ scan }) => Math.round(celsius(scan) * 1e6) / 1e6);
      return Math.min(
        ...steps.map((value, at) => Math.abs(value - (steps[at - 1] ?? value))).filter((step) => step > 0),
      );
    },
  },
  {
    id: 'idle-speed-cold, petrol first seconds',
    what: 'Idle speed',
    unit: 'rpm',
    source: LOGS,
    kind: 'published',
    range: [1600, 1900],
    spread: [1400, 2100],
    fitted: true,
    known: PETROL_CAR,
    ours: (car) => idleSpeed(car, 24, 0, 5),
  },
  {
    id: 'idle-speed-cold, petrol hot',
    what: 'Idle speed, 650 rpm',
    unit: 'rpm',
    source: LOGS,
    kind: 'published',
    range: [600, 750],
    spread: [600, 820],
    fitted: true,
    known: PETROL_CAR,
    ours: (car) => idleSpeed(car, 88, 60, 120),
  },
  {
    id: 'idle-speed-cold, diesel below 8 °C',
    what: 'Idle speed, 1,040 rpm',
    unit: 'rpm',
    source: LOGS,
    kind: 'published',
    range: [950, 1130],
    spread: [900, 1200],
    fitted: true,
    known: DIESEL_CAR,
    ours: (car) => idleSpeed(car, 4, 0, 30),
  },
  {
    id: 'idle-speed-cold, diesel hot',
    what: 'Idle speed, 770 rpm',
    unit: 'rpm',
    source: LOGS,
    kind: 'published',
    range: [720, 850],
    spread: [720, 850],
    fitted: true,
    known: DIESEL_CAR,
    ours: (car) => idleSpeed(car, 88, 60, 120),
  },
];

function heaterKilowatts(car: Car): number {
  const flow = flowAt(car, 2000, 0.2).heater;
  const carries = coolantOf(0.5).heatPerVolume * flow;
  const { conductance } = heaterAir(car, moment({ blower: 1, hot: 1 }), flow);
  // The core stands below the engine by what the coolant gives off on its way.
  return 80 / (1 / conductance + 1 / carries) / 1e3;
}
