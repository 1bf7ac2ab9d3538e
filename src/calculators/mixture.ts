/** What a strength protects against, and what strength a measured freezing point means. */
import { freezingRange, freezingRangeByVolume } from '../physics/freezing-range.ts';
import { CORRELATION_ENDS } from '../physics/glycol.ts';
import { toMassFraction, toVolumeFraction } from '../physics/strength.ts';
import { fromCelsius, massFraction, volumeFraction } from '../physics/units.ts';
import { ALTITUDE, CAP, doubtfulCap, doubtfulStrength, GLYCOL, glycolOf } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, Refusal, Values } from './declaration.ts';
import {
  type Basis,
  boilingFigure,
  freezeCurve,
  freezingLabel,
  freezingNote,
  judge,
  middleOf,
} from './mixture-judge.ts';
import { fromBrix, fromDensity, fromFreezing } from './mixture-readings.ts';

export const mixture: Calculator = {
  id: 'mixture',
  title: 'Mixture',
  settles: 'what a mixture protects against, or what strength a measured freezing point means',
  also: [
    'freeze point',
    'freezing point',
    'antifreeze percent',
    'refractometer',
    'Brix',
    'ATC',
    'hydrometer',
    'specific gravity',
    'glycol strength',
    'boiling point',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'known',
      label: 'You know',
      default: 'strength',
      options: [
        { value: 'strength', label: 'how strong it is' },
        { value: 'freezing', label: 'the freezing point read off it' },
        { value: 'brix', label: 'the degrees Brix off a sugar scale' },
        { value: 'density', label: 'the density a hydrometer shows' },
      ],
    },
    {
      kind: 'quantity',
      name: 'strength',
      label: 'Concentrate',
      dimension: 'share',
      unit: '%',
      default: '50 %',
      limits: ['0 %', '100 %'],
      figure: { path: 'coolant.mixture', end: 'middle' },
      when: { known: ['strength'] },
    },
    {
      kind: 'choice',
      name: 'by',
      label: 'Percent by',
      hint: 'A jug measures volume; a laboratory sheet often gives mass.',
      default: 'volume',
      options: [
        { value: 'volume', label: 'volume' },
        { value: 'mass', label: 'mass' },
      ],
      when: { known: ['strength'] },
    },
    {
      kind: 'quantity',
      name: 'freezes',
      label: 'Freezing point read',
      hint: 'Off a refractometer.',
      dimension: 'temperature',
      unit: '°C',
      default: '-30 °C',
      limits: ['-70 °C', '0 °C'],
      reading: true,
      when: { known: ['freezing'] },
    },
    {
      kind: 'choice',
      name: 'scale',
      label: 'Read on the scale for',
      hint: 'Refractometers have one for each glycol.',
      default: 'ethylene',
      options: [
        { value: 'ethylene', label: 'ethylene glycol' },
        { value: 'propylene', label: 'propylene glycol' },
      ],
      when: { known: ['freezing'] },
    },
    {
      kind: 'quantity',
      name: 'brix',
      label: 'Degrees Brix',
      dimension: 'plain',
      unit: '',
      default: '32',
      limits: ['0', '45'],
      reading: true,
      when: { known: ['brix'] },
    },
    {
      kind: 'choice',
      name: 'corrects',
      label: 'The refractometer',
      hint: 'Set to nought with clean water: a warm room is 20 °C.',
      default: 'itself',
      options: [
        { value: 'itself', label: 'corrects for temperature itself (ATC)' },
        { value: 'warm', label: 'does not; zeroed with water as warm as the sample' },
        { value: 'no', label: 'does not; zeroed in a warm room' },
      ],
      when: { known: ['freezing', 'brix'] },
    },
    {
      kind: 'quantity',
      name: 'read-at',
      label: 'Temperature of sample and prism',
      dimension: 'temperature',
      unit: '°C',
      default: '30 °C',
      limits: ['0 °C', '50 °C'],
      reading: true,
      when: { known: ['freezing', 'brix'], corrects: ['warm', 'no'] },
    },
    {
      kind: 'quantity',
      name: 'density',
      label: 'Hydrometer shows',
      hint: 'Density in kg/l, the same as the specific gravity on its stem, such as 1.070.',
      dimension: 'plain',
      unit: '',
      default: '1.070',
      limits: ['0.95', '1.15'],
      reading: true,
      when: { known: ['density'] },
    },
    {
      kind: 'quantity',
      name: 'sample',
      label: 'Temperature of the sample',
      dimension: 'temperature',
      unit: '°C',
      default: '20 °C',
      limits: ['0 °C', '60 °C'],
      reading: true,
      when: { known: ['density'] },
    },
    GLYCOL,
    CAP,
    ALTITUDE,
  ],
  answer(values, show): Answer | Refusal {
    const doubt = doubtfulCap(values, show);
    if (doubt) return doubt;
    if (values.choice('known') === 'density') return fromDensity(values, show);
    if (values.choice('known') === 'brix') return fromBrix(values, show);
    if (values.choice('known') === 'freezing') return fromFreezing(values, show);
    return doubtfulStrength(values, 'strength', show) ?? fromStrength(values, show);
  },
  method: {
    formula:
      'freezing point: polynomial in the mass fraction to 60 % by mass, above it a range between sources; boiling: vapour pressure of the mixture = air pressure + cap',
    sources: [
      'Melinder (2010), Properties of Secondary Working Fluids, 2nd ed., IIR',
      'ASHRAE Handbook – Fundamentals (2001), secondary coolants',
      'CRC Handbook of Chemistry and Physics, 102nd ed. (2021)',
      'Ott, Goates and Lamb (1972), freezing of undiluted ethylene glycol',
      'degrees Brix: ICUMSA (1974), refractive index of sugar, from memory; temperature by Lorentz and Lorenz with the density',
      'Kamihama et al., J. Chem. Eng. Data 57 (2012) 339; IAPWS-IF97; Perry, 8th ed.: boiling',
    ],
    valid:
      'neat glycol and water, 0 to 100 %; a strength from a freezing point only down to that of 60 % by mass; volumes before mixing at 20 °C',
    error:
      'a hydrometer tells 3 to 5 points, a sugar scale 2; a refractometer without ATC, corrected here, another half a point in 10 K; handbooks differ by up to 3 K in the freezing point up to 60 % by mass, and by more above; boiling within 1 K (ethylene) or 2 K (propylene) for coolant as bought. Concentrate as bought holds 3 to 7 % water and inhibitors, which moves the freezing point by 1 to 2 K.',
  },
};

function fromStrength(values: Values, show: QuantityFormatter): Answer {
  const glycol = glycolOf(values);
  const by: Basis = values.choice('by') === 'mass' ? 'mass' : 'volume';
  const typed = values.number('strength');
  const mass = by === 'mass' ? massFraction(typed) : toMassFraction(glycol, volumeFraction(typed));
  const volume = toVolumeFraction(glycol, mass);
  const range =
    by === 'mass'
      ? freezingRange({ glycol, fraction: mass })
      : freezingRangeByVolume(glycol, volumeFraction(typed));
  const freezes = show.range(range.lowest, range.highest, '°C', 0);
  return {
    ...judge(volume, range, glycol, freezes, show),
    figures: [
      { label: freezingLabel(range), value: freezes, note: freezingNote(range) },
      ...boilingFigure({ glycol, fraction: mass }, values, show),
      {
        label: by === 'mass' ? 'The same by volume' : 'The same by mass',
        value: show.quantity(by === 'mass' ? volume : mass, '%', 0),
      },
    ],
    notes: [
      ...(mass > CORRELATION_ENDS ? [whyStrongIsWorse(show)] : []),
      'First crystals form at the freezing point; the mixture sets solid some degrees below it. What protects against rust is the inhibitor, and a freezing point says nothing about that.',
    ],
    pictures: [freezeCurve(glycol, by, typed, middleOf(range), freezes)],
  };
}

function whyStrongIsWorse(show: QuantityFormatter): string {
  const undiluted = show.quantity(fromCelsius(-13), '°C', 0);
  return `Glycol keeps water from making ice only while there is water to keep apart. Past about two thirds the glycol itself begins to freeze out, so undiluted it freezes at about ${undiluted}, warmer than a mixture of one third. Above 60 % by mass the published correlation ends and sources disagree: only a range is given.`;
}
