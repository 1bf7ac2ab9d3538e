/** Everything that changes while a car is driven. Temperatures in K. */
export interface State {
  metal: number;
  block: number;
  /** Coolant jackets, of the block and of the head. The head's is the outlet. */
  low: number;
  head: number;
  upperHose: number;
  slice1: number;
  slice2: number;
  slice3: number;
  slice4: number;
  lowerHose: number;
  heater: number;
  tank: number;
  cabin: number;
  /** Coolant where the returns meet, before the pump. */
  mixed: number;
  wax: number;
  lift: number;
  sensor: number;
  gauge: number;
  /** Gas that sits in the circuit, m3; what sits above the liquid in the tank is the vessel's. */
  gasHead: number;
  gasHeater: number;
  gasRadiator: number;
  /** Pressure in the system, Pa absolute. */
  pressure: number;
  /** Liquid in the system as it measures at 20 °C, m3. */
  liquid: number;
  /** All gas, mol; of it from combustion. */
  gas: number;
  exhaust: number;
  /** Fan: 0 still, 1 and 2 its stages; grip of a viscous clutch 0 to 1. */
  fanStage: number;
  grip: number;
  /** Energy book, J: given by the engine, gone outside, gone with steam. */
  given: number;
  gone: number;
  boiled: number;
}

/** Everything at one temperature. */
export function stateAt(temperature: number, pressure: number): State {
  const t = temperature;
  return {
    metal: t,
    block: t,
    low: t,
    head: t,
    upperHose: t,
    slice1: t,
    slice2: t,
    slice3: t,
    slice4: t,
    lowerHose: t,
    heater: t,
    tank: t,
    cabin: t,
    mixed: t,
    wax: t,
    lift: 0,
    sensor: t,
    gauge: t,
    gasHead: 0,
    gasHeater: 0,
    gasRadiator: 0,
    pressure,
    liquid: 0,
    gas: 0,
    exhaust: 0,
    fanStage: 0,
    grip: 0,
    given: 0,
    gone: 0,
    boiled: 0,
  };
}
