import type { CalculatorId } from '../../../src/model/calculator-ids.ts';
import { jobs as beltSpeed } from './belt-speed.ts';
import { jobs as benchTest } from './bench-test.ts';
import { jobs as boilMargin } from './boil-margin.ts';
import { jobs as compression } from './compression.ts';
import { jobs as coolantChange } from './coolant-change.ts';
import { jobs as coolantOrder } from './coolant-order.ts';
import { jobs as coolingTime } from './cooling-time.ts';
import { jobs as correctMixture } from './correct-mixture.ts';
import { jobs as estimate } from './estimate.ts';
import { jobs as fanStage } from './fan-stage.ts';
import { jobs as fillAccount } from './fill-account.ts';
import { jobs as heatBalance } from './heat-balance.ts';
import type { Job } from './job.ts';
import { jobs as level } from './level.ts';
import { jobs as lossRate } from './loss-rate.ts';
import { jobs as mixture } from './mixture.ts';
import { jobs as pressureDecay } from './pressure-decay.ts';
import { jobs as radiatorAir } from './radiator-air.ts';
import { jobs as sensor } from './sensor.ts';
import { jobs as sensorVolts } from './sensor-volts.ts';
import { jobs as torque } from './torque.ts';
import { jobs as vacuumFill } from './vacuum-fill.ts';
import { jobs as voltageDrop } from './voltage-drop.ts';

export const JOBS: Readonly<Record<CalculatorId, readonly Job[]>> = {
  mixture,
  'correct-mixture': correctMixture,
  'fill-account': fillAccount,
  'vacuum-fill': vacuumFill,
  level,
  'loss-rate': lossRate,
  'boil-margin': boilMargin,
  'pressure-decay': pressureDecay,
  compression,
  'bench-test': benchTest,
  sensor,
  'voltage-drop': voltageDrop,
  'sensor-volts': sensorVolts,
  'fan-stage': fanStage,
  'cooling-time': coolingTime,
  'coolant-order': coolantOrder,
  'coolant-change': coolantChange,
  torque,
  'heat-balance': heatBalance,
  'radiator-air': radiatorAir,
  'belt-speed': beltSpeed,
  estimate,
};
