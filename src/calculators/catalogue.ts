/** All calculators that are declared, in the order of the list. Adding one: its id in model/calculator-ids.ts, its file, this line. */
import type { CalculatorId } from '../model/calculator-ids.ts';
import { beltSpeed } from './belt-speed.ts';
import { benchTestCalculator } from './bench-test.ts';
import { boilMarginCalculator } from './boil-margin.ts';
import { compression } from './compression.ts';
import { coolantChange } from './coolant-change.ts';
import { coolantOrder } from './coolant-order.ts';
import { coolingTimeCalculator } from './cooling-time.ts';
import { correctMixtureCalculator } from './correct-mixture.ts';
import type { Calculator } from './declaration.ts';
import { estimate } from './estimate.ts';
import { fanStage } from './fan-stage.ts';
import { fillAccount } from './fill-account.ts';
import { heatBalance } from './heat-balance.ts';
import { level } from './level.ts';
import { lossRate } from './loss-rate.ts';
import { mixture } from './mixture.ts';
import { pressureDecay } from './pressure-decay.ts';
import { radiatorAir } from './radiator-air.ts';
import { sensor } from './sensor.ts';
import { sensorVolts } from './sensor-volts.ts';
import { torque } from './torque.ts';
import { vacuumFill } from './vacuum-fill.ts';
import { voltageDropCalculator } from './voltage-drop.ts';

export const CALCULATORS: readonly Calculator[] = [
  mixture,
  correctMixtureCalculator,
  coolantOrder,
  coolantChange,
  fillAccount,
  vacuumFill,
  level,
  lossRate,
  boilMarginCalculator,
  coolingTimeCalculator,
  pressureDecay,
  compression,
  benchTestCalculator,
  sensor,
  sensorVolts,
  heatBalance,
  radiatorAir,
  beltSpeed,
  voltageDropCalculator,
  fanStage,
  torque,
  estimate,
];

/** @throws Error when no calculator has that id */
export function calculatorOf(id: CalculatorId): Calculator {
  const found = CALCULATORS.find((calculator) => calculator.id === id);
  if (!found) throw new Error(`No calculator is called ${id}`);
  return found;
}
