/** What the reader needs to know of the vehicle: its figures, or the general ranges, labelled so. */
import { FIGURES, type FigurePath } from '../model/figures.ts';
import type { KnownLayout } from '../model/layout.ts';
import { type Quantity, readQuantity } from '../model/quantity.ts';

/** A figure in SI with where it is from. `low` equals `high` for a single value. */
export interface Figure {
  low: number;
  high: number;
  from: 'vehicle' | 'nearest' | 'general' | 'computed';
}

export interface TraceVehicle {
  /** Undefined when no vehicle is chosen. */
  title: string | undefined;
  layout: KnownLayout;
  /** Thermostat starts to open; the energised figure of a map-controlled one is the lower end. */
  opens: Figure;
  fullyOpen: Figure;
  /** Usual at steady cruise. */
  cruise: Figure;
  /** Under it at steady cruise is too low. */
  lowLimit: Figure;
  fanOn: Figure;
  fanOff: Figure;
  /** Past it nobody goes on driving. */
  stopAt: Figure;
  /** What it is: the fan's fast stage, so far over the fan's start where it has none, or the warning if that is sooner. */
  stopBy: 'fast stage' | 'over the fan' | 'warning';
  warning: Figure;
  /** Cold start to opening, mixed driving at 20 °C, s. */
  warmUpTime: Figure;
}

/** The part of a vehicle's data sheet that is read here. */
export interface VehicleFigures {
  title: string;
  layout: KnownLayout;
  figures: Readonly<Record<string, { quantity: Quantity }>>;
}

/** Common practice: too low at cruise begins so far under the opening (85 °C in town, under 78 °C at speed, stamp 87). */
const LOW_LIMIT_UNDER_OPENING = 9;
/** Common practice: fully open 10 to 15 K above the opening by the trade, 15 to 20 by one maker. */
const FULLY_OPEN_ABOVE = [10, 18] as const;
/** Where no fast stage is known: so far above the fan's start it has failed to bring the figure down. */
export const STOP_ABOVE_FAN = 8;

/** Whose figures the record holds: this car's, or those of the nearest one on the shelf. */
export type FiguresOf = 'this car' | 'nearest';

/**
 * Two cars that look alike in a list differ by this much in their stamps and in their fans, K. Thermostats of one
 * engine are sold in steps of 3 to 7 K and fans start by the maker's own map (common practice, no source).
 */
const STAMPS_DIFFER = 3;
const FANS_DIFFER = 6;

/** Figures of another car that say nothing of this one: its map, its speeds, its habits. */
const NOT_OF_ANOTHER: ReadonlySet<string> = new Set([
  'thermostat.opens-energised',
  'thermostat.fully-open',
  'running.cruise',
  'running.low-limit',
  'fan.off',
  'fan.fast',
  'warm-up.time',
] satisfies FigurePath[]);

/** Figures read off the car itself, K: they go before those of a record. */
export interface TypedFigures {
  /** Stamp on the thermostat. */
  stamp?: number;
  fanOn?: number;
  fanOff?: number;
}

/** What a record says around its stamp holds for that stamp, not for another. */
const WITH_STAMP: ReadonlySet<string> = new Set([
  'thermostat.opens-energised',
  'thermostat.fully-open',
  'running.cruise',
  'running.low-limit',
] satisfies FigurePath[]);

/**
 * The figures a log is held against: those typed, else the vehicle’s own, else the general range, each saying which.
 * @param sheet undefined while no vehicle is chosen
 * @param whose the stamp and fan of a nearest vehicle are widened by what two vehicles differ, and its layout is left open
 */
export function traceVehicleOf(
  sheet: VehicleFigures | undefined,
  typed: TypedFigures = {},
  whose: FiguresOf = 'this car',
): TraceVehicle {
  const nearest = sheet !== undefined && whose === 'nearest';
  const said: Partial<Record<FigurePath, number | undefined>> = {
    'thermostat.opens': typed.stamp,
    'fan.on': typed.fanOn,
    'fan.off': typed.fanOff,
  };
  const own = (path: FigurePath): Figure | undefined => {
    const figure = said[path];
    if (figure !== undefined) return { low: figure, high: figure, from: 'vehicle' };
    if (typed.stamp !== undefined && WITH_STAMP.has(path)) return undefined;
    // A fan whose start was typed stops and speeds up by its own figures.
    if (typed.fanOn !== undefined && (path === 'fan.off' || path === 'fan.fast')) return undefined;
    if (nearest && NOT_OF_ANOTHER.has(path)) return undefined;
    const quantity = sheet?.figures[path]?.quantity;
    if (!quantity) return undefined;
    const differs = nearest ? differsBy(path) : 0;
    return {
      low: quantity.low - differs,
      high: quantity.high + differs,
      from: nearest ? 'nearest' : 'vehicle',
    };
  };
  const stamped = own('thermostat.opens') ?? generalFigure('thermostat.opens');
  const energised = own('thermostat.opens-energised');
  const opens: Figure = energised ? { ...stamped, low: Math.min(stamped.low, energised.low) } : stamped;
  const above = (figure: Figure, low: number, high = low): Figure => ({
    low: figure.low + low,
    high: figure.high + high,
    from: figure.from === 'general' ? 'general' : 'computed',
  });
  const fanOn = own('fan.on') ?? atLeast(generalFigure('fan.on'), stamped.high + 5);
  const ownWarning = own('warning.lamp');
  const fast = own('fan.fast');
  const hasFast = fast !== undefined && fast.high > fanOn.high + 3;
  const byFan = hasFast ? fast : above({ ...fanOn, low: fanOn.high }, STOP_ABOVE_FAN);
  const warnsSooner = ownWarning !== undefined && ownWarning.low < byFan.high;
  return {
    title: sheet?.title,
    layout: nearest ? {} : (sheet?.layout ?? {}),
    opens,
    fullyOpen: own('thermostat.fully-open') ?? above(stamped, ...FULLY_OPEN_ABOVE),
    cruise: own('running.cruise') ?? above(opens, -2, 8),
    lowLimit: own('running.low-limit') ?? above(opens, -LOW_LIMIT_UNDER_OPENING),
    fanOn,
    fanOff: own('fan.off') ?? above(fanOn, -5),
    stopAt: warnsSooner ? ownWarning : byFan,
    stopBy: warnsSooner ? 'warning' : hasFast ? 'fast stage' : 'over the fan',
    warning: ownWarning ?? generalFigure('warning.lamp'),
    warmUpTime: own('warm-up.time') ?? generalFigure('warm-up.time'),
  };
}

function differsBy(path: FigurePath): number {
  if (path === 'thermostat.opens') return STAMPS_DIFFER;
  return path === 'fan.on' ? FANS_DIFFER : 0;
}

/** 12 kW into 35 l/min of half water, half glycol, at 61 W/K a litre a minute, are 5.6 K. */
export const ACROSS_ENGINE = 6;

/**
 * An inlet-side thermostat regulates what comes in; the outlet, where the sensor sits, is hotter by what the engine
 * gives it, K. Where the side is not known it may be that one.
 */
export function acrossEngine({ layout }: TraceVehicle): number {
  return layout.thermostat === 'outlet side' ? 0 : ACROSS_ENGINE;
}

function generalFigure(path: FigurePath): Figure {
  const { general, dimension } = FIGURES[path];
  const read = readQuantity(general, dimension);
  if (!read.ok) throw new Error(`The general range of ${path} cannot be read`);
  return { low: read.quantity.low, high: read.quantity.high, from: 'general' };
}

function atLeast(figure: Figure, least: number): Figure {
  return { ...figure, low: Math.max(figure.low, least), high: Math.max(figure.high, least) };
}
