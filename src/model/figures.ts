/**
 * The figures a vehicle can have: one catalogue. A text may quote any of them in braces, `{thermostat.opens}`.
 * `general` is the range shown, labelled as such, when the chosen vehicle has no figure or none is chosen;
 * `plausible` is what the shelf check lets through. Both are common practice, no source, unless a source is named.
 */
import { type KnownLayout, type LayoutCondition, layoutAllows } from './layout.ts';
import type { Dimension } from './units.ts';

interface FigureKind {
  /** What it is, as a label. */
  label: string;
  dimension: Dimension;
  /** Usual range over cars and light vans, as a person writes it. */
  general: string;
  /** Lowest and highest value that can be meant, as a person writes it. */
  plausible: [string, string];
  /** Vehicles that can have it; without it, all. What a vehicle states itself it has, whatever stands here. */
  layout?: LayoutCondition;
}

const power: LayoutCondition['power'] = ['combustion', 'hybrid'];
/** An engine warms the coolant: its figures mean nothing on a battery-electric car. */
const ENGINE: LayoutCondition = { power };
const THERMOSTAT: LayoutCondition = { thermostat: ['inlet side', 'outlet side'] };
const ELECTRIC_FANS: NonNullable<LayoutCondition['fan']> = [
  'electric, one stage',
  'electric, two stages',
  'electric, pulse-width',
];
const DRIVEN_PUMP: LayoutCondition = { pump: ['accessory belt', 'timing belt', 'chain or gears'] };
const WATER_COOLED_CHARGE: LayoutCondition = { 'charge-air': ['water-cooled'] };
const ELECTRIC_DRIVE: LayoutCondition = { power: ['hybrid', 'battery electric'] };
const GEARBOX_COOLER: LayoutCondition = {
  'transmission-cooler': [
    'in the radiator',
    'on the gearbox',
    'on the gearbox, with a valve',
    'in the radiator and air-cooled',
  ],
};

export const FIGURES = {
  'thermostat.opens': {
    label: 'Thermostat starts to open',
    dimension: 'temperature',
    general: '82 to 92 °C',
    plausible: ['65 °C', '112 °C'],
    layout: THERMOSTAT,
  },
  'thermostat.fully-open': {
    label: 'Thermostat fully open',
    dimension: 'temperature',
    general: '95 to 108 °C',
    plausible: ['75 °C', '130 °C'],
    layout: THERMOSTAT,
  },
  'thermostat.opens-energised': {
    label: 'Thermostat opens with its heater energised',
    dimension: 'temperature',
    general: '75 to 90 °C',
    plausible: ['60 °C', '105 °C'],
    layout: { 'thermostat-kind': ['map-controlled'] },
  },
  'thermostat.heater': {
    label: 'Heating element of the thermostat',
    dimension: 'resistance',
    general: '10 to 18 Ω',
    plausible: ['3 Ω', '60 Ω'],
    layout: { 'thermostat-kind': ['map-controlled'] },
  },
  'thermostat.diameter': {
    label: 'Thermostat, diameter of the flange',
    dimension: 'length',
    general: '44 to 67 mm',
    plausible: ['25 mm', '100 mm'],
    layout: THERMOSTAT,
  },
  'thermostat.height': {
    label: 'Thermostat, height over all',
    dimension: 'length',
    general: '35 to 75 mm',
    plausible: ['15 mm', '140 mm'],
    layout: THERMOSTAT,
  },
  'block-thermostat.opens': {
    label: 'Thermostat of the block starts to open',
    dimension: 'temperature',
    general: '95 to 108 °C',
    plausible: ['75 °C', '120 °C'],
    layout: { 'second-thermostat': ['in the block'] },
  },
  'running.cruise': {
    label: 'Coolant at steady cruise',
    dimension: 'temperature',
    general: '85 to 98 °C',
    plausible: ['70 °C', '115 °C'],
    layout: ENGINE,
  },
  'running.low-limit': {
    label: 'Too low at steady cruise, warm engine',
    dimension: 'temperature',
    general: '74 to 80 °C',
    plausible: ['55 °C', '100 °C'],
    layout: ENGINE,
  },
  'warm-up.time': {
    label: 'Cold start to thermostat opening, mixed driving at 20 °C',
    dimension: 'time',
    general: '5 to 12 min',
    plausible: ['2 min', '40 min'],
    layout: ENGINE,
  },
  'fan.on': {
    label: 'Fan starts',
    dimension: 'temperature',
    general: '95 to 102 °C',
    plausible: ['75 °C', '118 °C'],
    layout: ENGINE,
  },
  'fan.off': {
    label: 'Fan stops',
    dimension: 'temperature',
    general: '90 to 97 °C',
    plausible: ['70 °C', '115 °C'],
    layout: ENGINE,
  },
  'fan.fast': {
    label: 'Fan at full speed',
    dimension: 'temperature',
    general: '101 to 110 °C',
    plausible: ['85 °C', '125 °C'],
    layout: { power, fan: ['electric, two stages', 'electric, pulse-width'] },
  },
  'fan.current': {
    label: 'Fan motor current at full speed',
    dimension: 'current',
    general: '10 to 30 A',
    plausible: ['3 A', '80 A'],
    layout: { fan: ELECTRIC_FANS },
  },
  'fan.current-slow': {
    label: 'Fan motor current on the slow stage',
    dimension: 'current',
    general: '6 to 15 A',
    plausible: ['1 A', '50 A'],
    layout: { fan: ['electric, two stages', 'electric, pulse-width'] },
  },
  'fan.resistor': {
    label: 'Series resistor of the slow stage',
    dimension: 'resistance',
    general: '0.2 to 0.6 Ω',
    plausible: ['0.05 Ω', '3 Ω'],
    layout: { fan: ['electric, two stages'] },
  },
  'fan.after-run': {
    label: 'Fan may run on after switch-off',
    dimension: 'time',
    general: '3 to 12 min',
    plausible: ['0.2 min', '30 min'],
    layout: { fan: ELECTRIC_FANS },
  },
  'fan.air-conditioning': {
    label: 'Air-conditioning pressure at which the fan comes',
    dimension: 'pressure',
    general: '12 to 18 bar',
    plausible: ['6 bar', '30 bar'],
    layout: { fan: [...ELECTRIC_FANS, 'hydraulic'] },
  },
  'fan.fuse': {
    label: 'Fan fuse',
    dimension: 'current',
    general: '20 to 50 A',
    plausible: ['10 A', '100 A'],
    layout: { fan: ELECTRIC_FANS },
  },
  'pump.current': {
    label: 'Electric main pump, current at full speed',
    dimension: 'current',
    general: '12 to 40 A',
    plausible: ['2 A', '90 A'],
    layout: { pump: ['electric'] },
  },
  'heater-pump.current': {
    label: 'Heater pump current',
    dimension: 'current',
    general: '0.8 to 2.5 A',
    plausible: ['0.2 A', '8 A'],
    layout: { 'heater-pump': ['in a heater hose'] },
  },
  'after-run-pump.current': {
    label: 'After-run pump current',
    dimension: 'current',
    general: '0.8 to 3 A',
    plausible: ['0.2 A', '10 A'],
    layout: { 'after-run-pump': ['fitted'] },
  },
  'after-run-pump.time': {
    label: 'After-run pump runs on',
    dimension: 'time',
    general: '3 to 15 min',
    plausible: ['0.2 min', '40 min'],
    layout: { 'after-run-pump': ['fitted'] },
  },
  'warning.lamp': {
    label: 'Temperature warning',
    dimension: 'temperature',
    general: '112 to 120 °C',
    plausible: ['95 °C', '135 °C'],
    layout: ENGINE,
  },
  'cap.opens': {
    label: 'Cap opens, gauge pressure',
    dimension: 'pressure',
    general: '0.9 to 1.5 bar',
    plausible: ['0.2 bar', '2.4 bar'],
    layout: ENGINE,
  },
  'cap.vacuum-opens': {
    label: 'Cap vacuum valve opens, below atmospheric',
    dimension: 'pressure',
    general: '0.02 to 0.1 bar',
    plausible: ['0.005 bar', '0.25 bar'],
    layout: ENGINE,
  },
  'coolant.capacity': {
    label: 'Whole cooling system',
    dimension: 'volume',
    general: '4 to 9 l',
    plausible: ['2 l', '30 l'],
  },
  'coolant.drain': {
    label: 'Comes out at a radiator drain',
    dimension: 'volume',
    general: '3 to 6 l',
    plausible: ['1 l', '25 l'],
    layout: ENGINE,
  },
  'coolant.mixture': {
    label: 'Concentrate by volume',
    dimension: 'share',
    general: '45 to 55 %',
    plausible: ['30 %', '70 %'],
  },
  'coolant.air-space': {
    label: 'Air above the cold mark',
    dimension: 'volume',
    general: '0.4 to 1 l',
    plausible: ['0.1 l', '4 l'],
    layout: ENGINE,
  },
  'coolant.change-age': {
    label: 'Coolant is changed after',
    dimension: 'time',
    general: '4 to 6 years',
    plausible: ['12 months', '15 years'],
    layout: ENGINE,
  },
  'coolant.change-distance': {
    label: 'Coolant is changed after, driven',
    dimension: 'length',
    general: '100000 to 240000 km',
    plausible: ['20000 km', '400000 km'],
    layout: ENGINE,
  },
  'charge-air.over-ambient': {
    label: 'Charge air over outside air, after a pull',
    dimension: 'temperature difference',
    general: '15 to 35 K',
    plausible: ['3 K', '80 K'],
    layout: { 'charge-air': ['air-cooled', 'water-cooled'] },
  },
  'charge-air.capacity': {
    label: 'Charge-air loop',
    dimension: 'volume',
    general: '2 to 4 l',
    plausible: ['0.5 l', '12 l'],
    layout: WATER_COOLED_CHARGE,
  },
  'charge-air.cap-opens': {
    label: 'Cap of the charge-air loop opens, gauge pressure',
    dimension: 'pressure',
    general: '0.8 to 1.5 bar',
    plausible: ['0.1 bar', '2.4 bar'],
    layout: WATER_COOLED_CHARGE,
  },
  'charge-air.pump-current': {
    label: 'Charge-air loop pump current',
    dimension: 'current',
    general: '1.5 to 5 A',
    plausible: ['0.3 A', '15 A'],
    layout: WATER_COOLED_CHARGE,
  },
  'drive.capacity': {
    label: 'Loop of motor and power electronics',
    dimension: 'volume',
    general: '2 to 6 l',
    plausible: ['0.5 l', '20 l'],
    layout: ELECTRIC_DRIVE,
  },
  'drive.cap-opens': {
    label: 'Cap of the drive loop opens, gauge pressure',
    dimension: 'pressure',
    general: '0.3 to 1.2 bar',
    plausible: ['0.05 bar', '2.4 bar'],
    layout: ELECTRIC_DRIVE,
  },
  'drive.change-age': {
    label: 'Coolant of the drive loop is changed after',
    dimension: 'time',
    general: '5 to 10 years',
    plausible: ['12 months', '15 years'],
    layout: ELECTRIC_DRIVE,
  },
  'battery.capacity': {
    label: 'Loop of the battery',
    dimension: 'volume',
    general: '3 to 8 l',
    plausible: ['0.5 l', '25 l'],
    layout: ELECTRIC_DRIVE,
  },
  'vent.heater': {
    label: 'Heater outlet air, hot, blower on second speed',
    dimension: 'temperature',
    general: '50 to 65 °C',
    plausible: ['35 °C', '85 °C'],
    layout: ENGINE,
  },
  'sensor.at-20': {
    label: 'Coolant sensor at 20 °C',
    dimension: 'resistance',
    general: '2 to 3 kΩ',
    plausible: ['0.2 kΩ', '60 kΩ'],
    layout: ENGINE,
  },
  'sensor.at-80': {
    label: 'Coolant sensor at 80 °C',
    dimension: 'resistance',
    general: '0.25 to 0.4 kΩ',
    plausible: ['0.02 kΩ', '10 kΩ'],
    layout: ENGINE,
  },
  'sensor.at-100': {
    label: 'Coolant sensor at 100 °C',
    dimension: 'resistance',
    general: '0.15 to 0.22 kΩ',
    plausible: ['0.01 kΩ', '6 kΩ'],
    layout: ENGINE,
  },
  'sensor.substitute': {
    label: 'Value taken for a lost sensor',
    dimension: 'temperature',
    general: '80 to 110 °C',
    plausible: ['-40 °C', '150 °C'],
    layout: ENGINE,
  },
  'second-sensor.at-20': {
    label: 'Radiator outlet sensor at 20 °C',
    dimension: 'resistance',
    general: '2 to 3 kΩ',
    plausible: ['0.2 kΩ', '60 kΩ'],
    layout: ENGINE,
  },
  'second-sensor.at-80': {
    label: 'Radiator outlet sensor at 80 °C',
    dimension: 'resistance',
    general: '0.25 to 0.4 kΩ',
    plausible: ['0.02 kΩ', '10 kΩ'],
    layout: ENGINE,
  },
  'idle.speed': {
    label: 'Idle speed, warm',
    dimension: 'rotation',
    general: '650 to 900 rpm',
    plausible: ['400 rpm', '1300 rpm'],
    layout: ENGINE,
  },
  'belt.deflection': {
    label: 'Belt deflection by thumb, longest run',
    dimension: 'length',
    general: '5 to 12 mm',
    plausible: ['1 mm', '30 mm'],
    layout: DRIVEN_PUMP,
  },
  'belt.length': {
    label: 'Accessory belt, length',
    dimension: 'length',
    general: '800 to 2200 mm',
    plausible: ['400 mm', '3500 mm'],
    layout: { power, pump: ['accessory belt', 'timing belt', 'chain or gears'] },
  },
  'compression.lowest': {
    label: 'Compression, lowest allowed',
    dimension: 'pressure',
    general: '9 to 24 bar',
    plausible: ['5 bar', '40 bar'],
    layout: ENGINE,
  },
  'compression.spread': {
    label: 'Compression, most between cylinders',
    dimension: 'pressure',
    general: '1 to 4 bar',
    plausible: ['0.3 bar', '8 bar'],
    layout: ENGINE,
  },
  'leak-down.most': {
    label: 'Leak-down, most allowed',
    dimension: 'share',
    general: '10 to 20 %',
    plausible: ['2 %', '40 %'],
    layout: ENGINE,
  },
  'head.flatness': {
    label: 'Head out of true, most allowed',
    dimension: 'length',
    general: '0.03 to 0.1 mm',
    plausible: ['0.01 mm', '0.5 mm'],
    layout: ENGINE,
  },
  'exhaust.back-pressure': {
    label: 'Exhaust back pressure at 2,500 rpm, most allowed',
    dimension: 'pressure',
    general: '0.1 to 0.3 bar',
    plausible: ['0.02 bar', '0.8 bar'],
    layout: ENGINE,
  },
  'exhaust.temperature': {
    label: 'Exhaust before the turbine, most allowed',
    dimension: 'temperature',
    general: '750 to 1000 °C',
    plausible: ['500 °C', '1150 °C'],
    layout: { power },
  },
  'intake.temperature': {
    label: 'Intake air at the manifold, most before power is cut',
    dimension: 'temperature',
    general: '60 to 90 °C',
    plausible: ['30 °C', '130 °C'],
    layout: ENGINE,
  },
  'gearbox.temperature': {
    label: 'Gearbox fluid, most in long use',
    dimension: 'temperature',
    general: '110 to 130 °C',
    plausible: ['85 °C', '170 °C'],
    layout: GEARBOX_COOLER,
  },
  'freeze.protected': {
    label: 'Protected down to',
    dimension: 'temperature',
    general: '−37 to −30 °C',
    plausible: ['−70 °C', '0 °C'],
  },
} as const satisfies Record<string, FigureKind>;

export type FigurePath = keyof typeof FIGURES;

export const FIGURE_PATHS = Object.keys(FIGURES) as FigurePath[];

interface JointKind {
  label: string;
  bolt: string;
  usual: string;
  /** Vehicles that can have it; without it, all. */
  layout?: LayoutCondition;
}

/**
 * Joints a vehicle's torque list can name. `usual` is the range of makers' figures for the bolt commonly found
 * there; common practice, no source. A text quotes one as `{torque.thermostat-housing}`.
 */
export const JOINTS = {
  'thermostat-housing': {
    label: 'Thermostat or water-outlet housing',
    bolt: 'M6',
    usual: '8 to 12 N·m',
    layout: THERMOSTAT,
  },
  'water-pump': {
    label: 'Water pump to block',
    bolt: 'M6 or M8',
    usual: '9 to 25 N·m',
  },
  'pump-pulley': {
    label: 'Pump pulley',
    bolt: 'M6',
    usual: '8 to 12 N·m',
    layout: { pump: ['accessory belt'] },
  },
  'coolant-sensor': {
    label: 'Coolant temperature sensor',
    bolt: 'M12',
    usual: '12 to 22 N·m',
  },
  'drain-plug-block': {
    label: 'Drain plug, block',
    bolt: 'M14',
    usual: '20 to 40 N·m',
  },
  'drain-plug-radiator': {
    label: 'Drain plug, radiator',
    bolt: 'plastic',
    usual: '1 to 3 N·m',
  },
  'bleed-screw': {
    label: 'Bleed screw',
    bolt: 'M8 or M10',
    usual: '3 to 10 N·m',
  },
  'fan-shroud': {
    label: 'Fan shroud to radiator',
    bolt: 'M6',
    usual: '4 to 10 N·m',
  },
  'expansion-tank': { label: 'Header tank', bolt: 'M6', usual: '4 to 10 N·m' },
  'heater-hose-union': {
    label: 'Heater pipe flange',
    bolt: 'M6',
    usual: '8 to 12 N·m',
  },
  'belt-tensioner': {
    label: 'Belt tensioner',
    bolt: 'M8 or M10',
    usual: '20 to 50 N·m',
    layout: DRIVEN_PUMP,
  },
  'fan-clutch': {
    label: 'Viscous clutch to hub',
    bolt: 'M6 or M8',
    usual: '8 to 25 N·m',
    layout: { fan: ['viscous clutch'] },
  },
  'egr-cooler': {
    label: 'Exhaust-gas cooler to its bracket or pipe',
    bolt: 'M6 or M8',
    usual: '9 to 28 N·m',
    layout: { 'egr-cooler': ['on the circuit'] },
  },
  'oil-filter-housing': {
    label: 'Oil-filter housing with its cooler to the block',
    bolt: 'M8',
    usual: '18 to 28 N·m',
    layout: { 'oil-cooler': ['on the circuit', 'on the circuit and air-cooled'] },
  },
  'gearbox-cooler-union': {
    label: 'Gearbox cooler union or banjo',
    bolt: 'M14 or M16',
    usual: '20 to 40 N·m',
    layout: GEARBOX_COOLER,
  },
  'turbo-banjo': {
    label: 'Turbocharger coolant banjo',
    bolt: 'M10 to M14',
    usual: '18 to 40 N·m',
    layout: { turbo: ['on the circuit'] },
  },
  'fan-switch': {
    label: 'Fan switch in the radiator',
    bolt: 'M14 or M22',
    usual: '15 to 35 N·m',
    layout: { 'fan-switched-by': ['switch in the radiator'] },
  },
  'timing-tensioner': {
    label: 'Timing belt tensioner',
    bolt: 'M8 or M10',
    usual: '15 to 50 N·m',
    layout: { pump: ['timing belt'] },
  },
  'coolant-pipe': {
    label: 'Coolant pipe flange',
    bolt: 'M6 or M8',
    usual: '8 to 22 N·m',
  },
  'heater-valve': {
    label: 'Heater valve bracket',
    bolt: 'M6',
    usual: '4 to 10 N·m',
    layout: { heater: ['valve-controlled'] },
  },
  'front-cover': {
    label: 'Front cover over chain and pump',
    bolt: 'M6 or M8',
    usual: '9 to 25 N·m',
    layout: { pump: ['chain or gears'] },
  },
} as const satisfies Record<string, JointKind>;

export type Joint = keyof typeof JOINTS;

export const JOINT_NAMES = Object.keys(JOINTS) as Joint[];

/** Whether a torque list can name it. */
export function isJoint(name: string): name is Joint {
  return Object.hasOwn(JOINTS, name);
}

/** Whether a vehicle can have a figure of this path. */
export function isFigurePath(path: string): path is FigurePath {
  return Object.hasOwn(FIGURES, path);
}

/** The joint a reference such as `torque.water-pump` names, or undefined. */
export function jointOf(path: string): Joint | undefined {
  const name = path.startsWith('torque.') ? path.slice('torque.'.length) : '';
  return isJoint(name) ? name : undefined;
}

/**
 * Whether a vehicle can have this figure or torque at all; what is not known of its layout rules nothing out.
 * A figure the vehicle states itself is shown without asking this.
 */
export function figureFits(path: string, known: KnownLayout): boolean {
  const joint = jointOf(path);
  const kind: FigureKind | JointKind | undefined = joint
    ? JOINTS[joint]
    : isFigurePath(path)
      ? FIGURES[path]
      : undefined;
  return layoutAllows(kind?.layout, known);
}

/** Everything a text may put in braces. */
export const REFERABLE_PATHS: string[] = [...FIGURE_PATHS, ...JOINT_NAMES.map((joint) => `torque.${joint}`)];
