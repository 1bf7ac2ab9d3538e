/** The calculators a record can ask for. Each is declared in src/calculators/<id>.ts. */
export const CALCULATOR_IDS = [
  'mixture',
  'correct-mixture',
  'coolant-order',
  'coolant-change',
  'fill-account',
  'vacuum-fill',
  'level',
  'loss-rate',
  'boil-margin',
  'cooling-time',
  'pressure-decay',
  'compression',
  'bench-test',
  'sensor',
  'sensor-volts',
  'voltage-drop',
  'fan-stage',
  'torque',
  'heat-balance',
  'radiator-air',
  'belt-speed',
  'estimate',
] as const;

export type CalculatorId = (typeof CALCULATOR_IDS)[number];
