/** The rungs of a vehicle's temperature ladder: its own figures, the general ranges it lacks, and what is computed. */
import { FIGURES, type FigurePath, figureFits } from '../../model/figures.ts';
import type { KnownLayout } from '../../model/layout.ts';
import type { Quantity } from '../../model/quantity.ts';
import { parsed } from '../../model/scalars.ts';
import type { Vehicle } from '../../model/vehicle.ts';
import { boilingPointUnderCap, flashTemperature } from '../../physics/boiling.ts';
import { freezingRangeByVolume } from '../../physics/freezing-range.ts';
import type { Mixture } from '../../physics/glycol.ts';
import { toMassFraction } from '../../physics/strength.ts';
import { gaugePascal, type Kelvin, kelvin, metre, toCelsius, volumeFraction } from '../../physics/units.ts';
import type { Rung } from '../drawings/ladder.ts';

const COLD_SOAK = 20;
const SEA_LEVEL = metre(0);

const FIGURE_RUNGS: [FigurePath, string][] = [
  ['running.low-limit', 'Too low at steady cruise'],
  ['thermostat.opens', 'Thermostat starts to open'],
  ['running.cruise', 'Steady cruise'],
  ['fan.off', 'Fan stops'],
  ['fan.on', 'Fan starts'],
  ['thermostat.fully-open', 'Thermostat fully open'],
  ['fan.fast', 'Fan at full speed'],
  ['warning.lamp', 'Warning'],
];

interface LadderVehicle {
  figures: Vehicle['figures'];
  layout: KnownLayout;
}

/** Rungs for a vehicle, or the general ladder when none is given. Boiling is at sea level, ethylene glycol. */
export function rungsOf(vehicle: LadderVehicle | undefined): Rung[] {
  const figures: KnownFigures = vehicle?.figures ?? {};
  const layout: KnownLayout = vehicle?.layout ?? {};
  const mixture = figureOf(figures, 'coolant.mixture');
  const share = `${Math.round(((mixture.low + mixture.high) / 2) * 100)} % by volume`;
  const weak = ethyleneMixture(mixture.low);
  const strong = ethyleneMixture(mixture.high);
  return [
    freezingRung(mixture, share),
    {
      id: 'cold-soak',
      label: 'Cold soak, a mild day',
      low: COLD_SOAK,
      high: COLD_SOAK,
      kind: 'general',
      note:
        layout.power === 'battery electric'
          ? 'coolant and outside agree'
          : 'coolant, intake and outside agree',
    },
    ...FIGURE_RUNGS.filter(([path]) => hasRung(path, figures, layout)).map(([path, label]) =>
      figureRung(path, label, figures),
    ),
    {
      id: 'boils-open',
      label: 'Boils with the cap off',
      ...between(flashTemperature(weak, SEA_LEVEL), flashTemperature(strong, SEA_LEVEL)),
      kind: 'computed',
      note: `${share}, sea level`,
    },
    ...(hasFigure('cap.opens', figures, layout) ? [capRung(figures, weak, strong)] : []),
  ];
}

type KnownFigures = Partial<Record<FigurePath, { is: Quantity } | undefined>>;

/** The vehicle's own figure, or the general range. */
function figureOf(figures: KnownFigures, path: FigurePath): Quantity {
  return figures[path]?.is ?? parsed(FIGURES[path].general, FIGURES[path].dimension);
}

function hasFigure(path: FigurePath, figures: KnownFigures, layout: KnownLayout): boolean {
  return figures[path] !== undefined || figureFits(path, layout);
}

/** What the vehicle does not have, and where a clutch or a hydraulic fan comes in unmeasured, is no gap but no rung. */
function hasRung(path: FigurePath, figures: KnownFigures, layout: KnownLayout): boolean {
  if (figures[path] !== undefined) return true;
  if (path === 'fan.fast') return false;
  const isFan = path === 'fan.on' || path === 'fan.off';
  if (isFan && layout.fan && !layout.fan.startsWith('electric')) return false;
  return hasFigure(path, figures, layout);
}

function figureRung(path: FigurePath, label: string, figures: KnownFigures): Rung {
  const { low, high } = figureOf(figures, path);
  return {
    id: path,
    label,
    low: celsius(low),
    high: celsius(high),
    kind: figures[path] ? 'vehicle' : 'general',
  };
}

function freezingRung(mixture: Quantity, share: string): Rung {
  const ranges = [mixture.low, mixture.high].map((each) =>
    freezingRangeByVolume('ethylene', volumeFraction(each)),
  );
  return {
    id: 'freezes',
    label: 'Freezes',
    low: celsius(Math.min(...ranges.map(({ lowest }) => lowest))),
    high: celsius(Math.max(...ranges.map(({ highest }) => highest))),
    kind: 'computed',
    note: `${share}; sources differ`,
  };
}

function capRung(figures: KnownFigures, weak: Mixture, strong: Mixture): Rung {
  const cap = figureOf(figures, 'cap.opens');
  return {
    id: 'boils-cap',
    label: 'Boils under its cap',
    ...between(
      boilingPointUnderCap(weak, gaugePascal(cap.low), SEA_LEVEL),
      boilingPointUnderCap(strong, gaugePascal(cap.high), SEA_LEVEL),
    ),
    kind: 'computed',
    note: figures['cap.opens'] ? 'the cap’s own pressure' : 'general cap pressures',
  };
}

function ethyleneMixture(volume: number): Mixture {
  return { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(volume)) };
}

function celsius(si: number): number {
  return Math.round(toCelsius(kelvin(si)) * 10) / 10;
}

function between(low: Kelvin, high: Kelvin): { low: number; high: number } {
  return { low: Math.round(celsius(low)), high: Math.round(celsius(high)) };
}
