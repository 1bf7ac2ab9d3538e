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

/** Rungs for a vehicle, or the general ladder when none is given. Boiling is at sea level, ethylene glycol. */
export function rungsOf(vehicle: { figures: Vehicle['figures']; layout: KnownLayout } | undefined): Rung[] {
  const figures: Partial<Record<FigurePath, { is: Quantity } | undefined>> = vehicle?.figures ?? {};
  const value = (path: FigurePath) =>
    figures[path]?.is ?? parsed(FIGURES[path].general, FIGURES[path].dimension);
  const layout: KnownLayout = vehicle?.layout ?? {};
  const fan = vehicle?.layout.fan;
  const has = (path: FigurePath) => figures[path] !== undefined || figureFits(path, layout);
  const rungs = FIGURE_RUNGS.filter(([path]) => {
    // What the vehicle does not have, and where a clutch or a hydraulic fan comes in unmeasured, is no gap but no rung.
    if (figures[path] !== undefined) return true;
    if (
      path === 'fan.fast' ||
      ((path === 'fan.on' || path === 'fan.off') && fan && !fan.startsWith('electric'))
    )
      return false;
    return has(path);
  }).map(([path, label]): Rung => {
    const { low, high } = value(path);
    return {
      id: path,
      label,
      low: celsius(low),
      high: celsius(high),
      kind: figures[path] ? 'vehicle' : 'general',
    };
  });

  const mixture = value('coolant.mixture');
  const cap = value('cap.opens');
  const share = `${Math.round(((mixture.low + mixture.high) / 2) * 100)} % by volume`;
  const weak: Mixture = {
    glycol: 'ethylene',
    fraction: toMassFraction('ethylene', volumeFraction(mixture.low)),
  };
  const strong: Mixture = {
    glycol: 'ethylene',
    fraction: toMassFraction('ethylene', volumeFraction(mixture.high)),
  };
  const freezes = [mixture.low, mixture.high].map((each) =>
    freezingRangeByVolume('ethylene', volumeFraction(each)),
  );
  const coldest = Math.min(...freezes.map(({ lowest }) => lowest));
  const warmest = Math.max(...freezes.map(({ highest }) => highest));
  return [
    {
      id: 'freezes',
      label: 'Freezes',
      low: celsius(coldest),
      high: celsius(warmest),
      kind: 'computed',
      note: `${share}; sources differ`,
    },
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
    ...rungs,
    {
      id: 'boils-open',
      label: 'Boils with the cap off',
      ...between(flashTemperature(weak, SEA_LEVEL), flashTemperature(strong, SEA_LEVEL)),
      kind: 'computed',
      note: `${share}, sea level`,
    },
    ...(has('cap.opens')
      ? [
          {
            id: 'boils-cap',
            label: 'Boils under its cap',
            ...between(
              boilingPointUnderCap(weak, gaugePascal(cap.low), SEA_LEVEL),
              boilingPointUnderCap(strong, gaugePascal(cap.high), SEA_LEVEL),
            ),
            kind: 'computed' as const,
            note: figures['cap.opens'] ? 'the cap’s own pressure' : 'general cap pressures',
          },
        ]
      : []),
  ];
}

function celsius(si: number): number {
  return Math.round(toCelsius(kelvin(si)) * 10) / 10;
}

function between(low: Kelvin, high: Kelvin): { low: number; high: number } {
  return { low: Math.round(celsius(low)), high: Math.round(celsius(high)) };
}
