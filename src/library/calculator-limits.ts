/**
 * The limits a calculator judges by, as a record that shows it would write them. One figure, one source: the arithmetic's
 * own constants.
 */
import type { CalculatorId } from '../model/calculator-ids.ts';
import { findUnit, fromSI } from '../model/units.ts';
import { EVEN_BELOW, LOW_FROM } from '../physics/cylinder-spread.ts';
import { AT_THE_MARK } from '../physics/expansion.ts';
import { EVEN_WITHIN, NOT_STARTED_ABOVE_EVEN } from '../physics/fill-account.ts';
import {
  AROUND_HOSE,
  HEAT_GIVEN_OFF,
  HOSE,
  HOSE_ABOVE,
  INFRARED_ERROR,
  surfaceBelowCoolant,
} from '../physics/hose-wall.ts';
import { DROP_LIMITS } from '../physics/joint.ts';
import { LOSS_FROM, NO_LOSS_BELOW } from '../physics/loss-rate.ts';
import { HOLDS_WITHIN, LEAKS_FROM } from '../physics/pressure-decay.ts';
import { SENSOR_AGREES } from '../physics/thermistor.ts';
import { fromCelsius } from '../physics/units.ts';

export interface CalculatorLimits {
  /** Unit a record writes them in. */
  symbol: string;
  /** Numbers in that unit from here on are something else. */
  below: number;
  values: readonly number[];
}

/** A hose of a warm engine, below its coolant by wall and infrared, K, up to the next whole one. */
function hoseBelow(wind: keyof typeof HEAT_GIVEN_OFF): number {
  return Math.ceil(
    surfaceBelowCoolant(fromCelsius(90), AROUND_HOSE, HOSE, HEAT_GIVEN_OFF[wind]) + INFRARED_ERROR,
  );
}

function limits(symbol: string, below: number, inSI: readonly number[]): CalculatorLimits {
  const unit = findUnit(symbol);
  if (!unit) throw new Error(`No unit is called ${symbol}`);
  return { symbol, below, values: inSI.map((each) => Number(fromSI(each, unit).toFixed(6))) };
}

export const CALCULATOR_LIMITS: Partial<Record<CalculatorId, CalculatorLimits>> = {
  'pressure-decay': limits('bar', 0.1, [HOLDS_WITHIN, LEAKS_FROM]),
  'fill-account': limits('l', 1, [
    EVEN_WITHIN.usual,
    EVEN_WITHIN.large,
    EVEN_WITHIN.usual + NOT_STARTED_ABOVE_EVEN,
  ]),
  'voltage-drop': limits('V', 1, Object.values(DROP_LIMITS)),
  sensor: limits('K', 30, [HOSE_ABOVE, SENSOR_AGREES, hoseBelow('still'), hoseBelow('fan')]),
  level: limits('mm', 30, [AT_THE_MARK]),
  compression: limits('%', 100, [EVEN_BELOW, LOW_FROM]),
  'vacuum-fill': limits('bar', 0.1, [HOLDS_WITHIN, LEAKS_FROM]),
  'loss-rate': limits('l', 1, [NO_LOSS_BELOW, LOSS_FROM]),
};
