/**
 * What a car is made of, as far as its coolant feels it: one figure each, the range a car is drawn from, and where
 * both are from. Figures marked `size` belong to an engine of 1.6 l and grow with it.
 *
 * What "fit" means: fitted to open logs of one healthy 1.5 l petrol car (129 trips) and one 2 l diesel (77 trips, KIT
 * Automotive OBD-II Dataset, DOI 10.35097/1130, CC BY 4.0). Heat capacity and share of heat cannot be told apart from
 * coolant temperature alone, so both are drawn.
 *
 * Nobody was found who measured: flow past a shut thermostat, pump flow of a road car, air through its radiator, give
 * of its hoses, lag of its sensor and gauge, heat of its cabin. Those say "from memory" and are guesses of the size.
 */
export type Unit =
  | '1'
  | 'kJ/K'
  | 'W/K'
  | 'W/(K m/s)'
  | 'W'
  | 'bar'
  | 'K'
  | '°C'
  | 's'
  | 'm2'
  | 'm/s'
  | 'kg'
  | 'rpm'
  | 'l'
  | 'l/min'
  | 'l/min per 1000 rpm'
  | 'l/bar';

/** Lowest, usual and highest. */
export type Range = readonly [number, number, number];

export interface Parameter {
  readonly what: string;
  readonly unit: Unit;
  readonly range: Range;
  /** Where a diesel differs. */
  readonly diesel?: Range;
  /** Power of the engine's size it grows with; 0 where left out. */
  readonly size?: number;
  readonly from: string;
}

const MEMORY = 'from memory';
const PRACTICE = 'common practice, no source';
const FIT = 'fit';

export const PARAMETERS = {
  metal: {
    what: 'Metal near the gas',
    unit: 'kJ/K',
    range: [7.6, 9.5, 11.4],
    diesel: [13, 16, 19],
    size: 1,
    from: FIT,
  },
  block: {
    what: 'Block with oil',
    unit: 'kJ/K',
    range: [16.8, 21, 25.2],
    diesel: [31, 39, 47],
    size: 1,
    from: FIT,
  },
  jacket: {
    what: 'Coolant jackets of block and head, with their coolant',
    unit: 'kJ/K',
    range: [6.6, 8, 9.6],
    diesel: [8.4, 10.4, 12.5],
    size: 1,
    from: FIT,
  },
  radiator: { what: 'Radiator with its coolant', unit: 'kJ/K', range: [5.8, 7.3, 8.8], size: 1, from: FIT },
  hose: {
    what: 'Upper hose, and lower hose, with coolant',
    unit: 'kJ/K',
    range: [1.3, 1.6, 2],
    size: 1,
    from: FIT,
  },
  heaterCore: {
    what: 'Heater core with its hoses',
    unit: 'kJ/K',
    range: [2.7, 3.4, 4.1],
    size: 0.5,
    from: FIT,
  },
  tank: { what: 'Header tank with its coolant', unit: 'kJ/K', range: [1.5, 2.5, 3.5], from: MEMORY },
  cabin: { what: 'Air and trim of the cabin', unit: 'kJ/K', range: [40, 70, 110], from: MEMORY },
  cabinLoss: { what: 'Cabin to outside', unit: 'W/K', range: [40, 55, 75], from: MEMORY },
  metalToCoolant: {
    what: 'Metal to coolant',
    unit: 'W/K',
    range: [1000, 1600, 2200],
    size: 1,
    from: `${FIT}; a third-party fit gave 2,200, its bound`,
  },
  metalToBlock: { what: 'Metal to block', unit: 'W/K', range: [60, 90, 200], size: 1, from: FIT },
  blockToCoolant: { what: 'Block to coolant', unit: 'W/K', range: [70, 110, 200], size: 1, from: FIT },
  stillMixing: {
    what: 'Head to block jacket with the pump standing',
    unit: 'W/K',
    range: [15, 40, 90],
    size: 1,
    from: `${MEMORY}: nobody was found who measured a head without flow`,
  },
  wallFactor: {
    what: 'Heat to the walls, kW at 1 kW of fuel',
    unit: '1',
    range: [0.68, 0.76, 0.84],
    diesel: [0.6, 0.66, 0.73],
    from: FIT,
  },
  indicated: {
    what: 'Work at the piston over fuel',
    unit: '1',
    range: [0.37, 0.39, 0.42],
    diesel: [0.41, 0.44, 0.47],
    from: MEMORY,
  },
  friction: {
    what: 'Friction and pumping at no speed, as mean pressure',
    unit: 'bar',
    range: [1.2, 1.47, 1.9],
    from: MEMORY,
  },
  frictionSlope: { what: 'The same, added at 3,000 rpm', unit: 'bar', range: [0.1, 0.15, 0.3], from: MEMORY },
  accessories: { what: 'Alternator, pump, steering', unit: 'W', range: [350, 470, 780], from: MEMORY },
  skin: {
    what: 'Engine to outside, standing and running',
    unit: 'W/K',
    range: [4, 6, 13],
    size: 1,
    from: FIT,
  },
  skinBySpeed: {
    what: 'The same, added per m/s',
    unit: 'W/(K m/s)',
    range: [0.2, 0.7, 1.4],
    size: 1,
    from: FIT,
  },
  pump: {
    what: 'Coolant through the engine, thermostat open',
    unit: 'l/min per 1000 rpm',
    range: [14, 20, 30],
    size: 1,
    from: `${MEMORY}; the fits ran to their bounds`,
  },
  heaterShare: {
    what: 'Passage of the heater beside that of the radiator',
    unit: '1',
    range: [0.19, 0.25, 0.32],
    from: `${MEMORY}; fit`,
  },
  byPass: {
    what: 'Passage of the by-pass with the thermostat shut',
    unit: '1',
    range: [0.35, 0.5, 0.7],
    from: `${MEMORY}; fit`,
  },
  seatLeak: {
    what: 'Past the shut thermostat at idle',
    unit: 'l/min',
    range: [0.003, 0.02, 0.08],
    size: 1,
    from: MEMORY,
  },
  stamp: {
    what: 'Stamp of the thermostat',
    unit: '°C',
    range: [82, 88, 92],
    from: `${PRACTICE}; whole range 80 to 105`,
  },
  tolerance: {
    what: 'Off its stamp',
    unit: 'K',
    range: [-1.5, 0, 1.5],
    from: 'maker’s page as in the shelf, 2 K',
  },
  span: {
    what: 'Start of opening to fully open',
    unit: 'K',
    range: [10, 12, 17],
    from: 'maker’s page as in the shelf, 10 to 20 K',
  },
  play: {
    what: 'Closes this much below where it opens',
    unit: 'K',
    range: [1, 2, 4],
    from: `${PRACTICE}: 2 to 6 K; fit nearer 2`,
  },
  waxLag: {
    what: 'Wax behind the coolant round it',
    unit: 's',
    range: [5, 7, 15],
    from: `${MEMORY}; two fitted cars gave 5 to 10`,
  },
  thermosiphon: {
    what: 'Flow by warmth alone at 50 K, pump standing',
    unit: 'l/min',
    range: [0.1, 0.4, 1],
    size: 1,
    from: MEMORY,
  },
  face: { what: 'Face of the radiator', unit: 'm2', range: [0.17, 0.21, 0.26], size: 0.5, from: MEMORY },
  ram: { what: 'Air at the face over road speed', unit: '1', range: [0.1, 0.14, 0.18], from: MEMORY },
  stillAir: { what: 'Air at the face standing, no fan', unit: 'm/s', range: [0.025, 0.035, 0.06], from: FIT },
  fanAir: {
    what: 'Air at the face by the fan alone',
    unit: 'm/s',
    range: [2, 2.6, 3.2],
    from: 'fit to a fan cycle',
  },
  fanFastAir: { what: 'The same, fast stage', unit: 'm/s', range: [3.1, 3.6, 4.2], from: MEMORY },
  airSide: {
    what: 'Fins to air per m2 of face at 1 m/s',
    unit: 'W/K',
    range: [2300, 2800, 3300],
    from: 'fit to a fan cycle',
  },
  waterSide: {
    what: 'Coolant to tubes per m2 of face at 40 l/min',
    unit: 'W/K',
    range: [13000, 18000, 24000],
    from: MEMORY,
  },
  bayWarmth: {
    what: 'Air before the radiator above outside, standing hot',
    unit: 'K',
    range: [3, 6, 8],
    from: 'bonnet air measured at 55 to 68 °C at 28 °C outside',
  },
  heaterAir: {
    what: 'Heater core, fins to air at full blower',
    unit: 'W/K',
    range: [95, 120, 150],
    from: 'output 4 to 8 kW across 80 K, common practice',
  },
  blower: {
    what: 'Heat an air flow at full blower carries',
    unit: 'W/K',
    range: [90, 110, 140],
    from: MEMORY,
  },
  fanOn: { what: 'Fan starts above the stamp', unit: 'K', range: [8, 9, 14], from: 'figures of the shelf' },
  fanOff: { what: 'Fan stops below its start', unit: 'K', range: [4, 5, 6], from: 'figures of the shelf' },
  fanFast: { what: 'Fast stage above the first', unit: 'K', range: [3, 5, 7], from: PRACTICE },
  coolant: {
    what: 'Coolant in the system, cold',
    unit: 'l',
    range: [4.8, 6, 7.5],
    size: 0.7,
    from: 'figures of the shelf',
  },
  air: {
    what: 'Air above it, cold',
    unit: 'l',
    range: [0.7, 1.1, 1.8],
    size: 0.7,
    from: 'figures of the shelf',
  },
  give: { what: 'Hoses and tank give', unit: 'l/bar', range: [0.03, 0.08, 0.15], from: MEMORY },
  cap: { what: 'Cap opens', unit: 'bar', range: [1, 1.4, 1.5], from: 'figures of the shelf' },
  sensorLag: { what: 'Sensor behind the coolant', unit: 's', range: [2, 4, 10], from: MEMORY },
  gaugeLag: { what: 'Needle behind the sensor', unit: 's', range: [10, 25, 60], from: MEMORY },
  mass: { what: 'Vehicle with driver', unit: 'kg', range: [1050, 1250, 1500], size: 0.7, from: MEMORY },
  dragArea: { what: 'Drag area', unit: 'm2', range: [0.58, 0.64, 0.75], size: 0.3, from: MEMORY },
  rolling: { what: 'Rolling resistance', unit: '1', range: [0.008, 0.0105, 0.013], from: MEMORY },
  idle: {
    what: 'Idle speed, hot',
    unit: 'rpm',
    range: [620, 700, 800],
    diesel: [720, 780, 850],
    from: 'two measured cars',
  },
  gearing: {
    what: 'Engine speed at 90 km/h in the top gear',
    unit: 'rpm',
    range: [2000, 2500, 2800],
    diesel: [1600, 1850, 2200],
    size: -0.4,
    from: MEMORY,
  },
  mixture: { what: 'Glycol by mass', unit: '1', range: [0.42, 0.5, 0.54], from: PRACTICE },
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof PARAMETERS;
/** Parameters of one car, SI. */
export type Values = Readonly<Record<ParameterId, number>>;

/** SI in one of each unit. */
const SI: Record<Exclude<Unit, '°C'>, number> = {
  '1': 1,
  'kJ/K': 1e3,
  'W/K': 1,
  'W/(K m/s)': 1,
  W: 1,
  bar: 1e5,
  K: 1,
  s: 1,
  m2: 1,
  'm/s': 1,
  kg: 1,
  rpm: 1,
  l: 1e-3,
  'l/min': 1 / 60e3,
  'l/min per 1000 rpm': 1 / 60e6,
  'l/bar': 1e-8,
};

/** A figure in a table's unit, in SI. Engine speed stays in rpm. */
export function inSi(value: number, unit: Unit): number {
  return unit === '°C' ? value + 273.15 : value * SI[unit];
}

/** Displacement that the figures marked `size` belong to, m3. */
const REFERENCE = 1.6e-3;

/**
 * One figure for each parameter.
 *
 * @param displacement of the engine, 0.6e-3 to 5e-3 m3
 * @param choose from the lowest, usual and highest figure
 */
export function valuesOf(
  fuel: 'petrol' | 'diesel',
  displacement: number,
  choose: (range: Range, id: ParameterId) => number,
): Values {
  const of = (id: ParameterId): number => {
    const parameter: Parameter = PARAMETERS[id];
    const range = fuel === 'diesel' && parameter.diesel ? parameter.diesel : parameter.range;
    const size = parameter.size === undefined ? 1 : (displacement / REFERENCE) ** parameter.size;
    return inSi(choose(range, id) * size, parameter.unit);
  };
  return mapKeys(of);
}

const IDS = Object.keys(PARAMETERS) as ParameterId[];

function mapKeys(of: (id: ParameterId) => number): Values {
  return Object.fromEntries(IDS.map((id) => [id, of(id)])) as Record<ParameterId, number>;
}
