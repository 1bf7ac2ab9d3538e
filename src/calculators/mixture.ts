/** What a strength protects against, and what strength a measured freezing point means. */
import { boilingPointUnderCap, boilingUncertainty } from '../physics/boiling.ts';
import {
  type FreezingRange,
  freezingRange,
  freezingRangeByVolume,
  strengthForFreezing,
  strengthRangeForFreezing,
} from '../physics/freezing-range.ts';
import { CORRELATION_ENDS, type Glycol, type Mixture } from '../physics/glycol.ts';
import { strengthForDensity } from '../physics/hydrometer.ts';
import { refractiveIndex, strengthReadOnScaleOf } from '../physics/refractive-index.ts';
import { toMassFraction, toVolumeFraction } from '../physics/strength.ts';
import {
  fromCelsius,
  gaugePascal,
  kelvin,
  type MassFraction,
  massFraction,
  toCelsius,
  volumeFraction,
} from '../physics/units.ts';
import {
  ALTITUDE,
  altitudeOf,
  CAP,
  doubtfulCap,
  doubtfulStrength,
  GLYCOL,
  glycolOf,
} from './coolant-inputs.ts';
import type { Answer, Calculator, Picture, Refusal, Shower, Values } from './declaration.ts';

/** Band of strengths a workshop fills, by volume. Common practice, no source. */
const USUAL = { weak: 0.4, strong: 0.6, tooStrong: 0.7 } as const;
/** A strength goes through mass and back: its last bits are no reason to be over a limit. */
const LAST_BITS = 1e-9;

type Basis = 'volume' | 'mass';

export const mixture: Calculator = {
  id: 'mixture',
  title: 'Mixture',
  settles: 'what a mixture protects against, or what strength a measured freezing point means',
  also: [
    'freeze point',
    'freezing point',
    'antifreeze percent',
    'refractometer',
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
      hint: 'Refractometer, corrected for temperature.',
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
      'Kamihama et al., J. Chem. Eng. Data 57 (2012) 339; IAPWS-IF97; Perry, 8th ed.: boiling',
    ],
    valid:
      'neat glycol and water, 0 to 100 %; a strength from a freezing point only down to that of 60 % by mass; volumes before mixing at 20 °C',
    error:
      'a hydrometer tells 3 to 5 points; handbooks differ by up to 3 K in the freezing point up to 60 % by mass, and by more above; boiling within 1 K (ethylene) or 2 K (propylene) for coolant as bought. Concentrate as bought holds 3 to 7 % water and inhibitors, which moves the freezing point by 1 to 2 K.',
  },
};

function fromStrength(values: Values, show: Shower): Answer {
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
    pictures: [
      freezeCurve(glycol, by, typed, (toCelsius(range.lowest) + toCelsius(range.highest)) / 2, freezes),
    ],
  };
}

function whyStrongIsWorse(show: Shower): string {
  const undiluted = show.quantity(fromCelsius(-13), '°C', 0);
  return `Glycol keeps water from making ice only while there is water to keep apart. Past about two thirds the glycol itself begins to freeze out, so undiluted it freezes at about ${undiluted}, warmer than a mixture of one third. Above 60 % by mass the published correlation ends and sources disagree: only a range is given.`;
}

function judge(
  volume: number,
  range: FreezingRange,
  glycol: Glycol,
  freezes: string,
  show: Shower,
  read?: { protects: number; strongest: number },
): Pick<Answer, 'sentence' | 'tone'> {
  const third = freezingRangeByVolume(glycol, volumeFraction(1 / 3));
  const asThird = show.range(third.lowest, third.highest, '°C', 0);
  // What was read is the protection itself; of a strength the warmer end of the handbooks is the one to count on.
  const surely = show.quantity(read?.protects ?? range.highest, '°C', 0);
  const coldest = show.quantity(range.lowest, '°C', 0);
  // Less than a degree is no second opinion, and the same to a reader of either scale.
  const differ = read === undefined && range.highest - range.lowest >= 1;
  const sets = range.basis === 'sets without ice';
  if (volume > USUAL.tooStrong + LAST_BITS && range.highest > third.lowest)
    return {
      sentence: `Far too strong: at ${freezes} it freezes warmer than a mixture of one third (${asThird}), and it carries less heat. Thin it with water the maker allows; never fill it undiluted.`,
      tone: 'stop',
    };
  if (volume > USUAL.tooStrong + LAST_BITS)
    return {
      sentence: `Too strong: ${sets ? 'it thickens instead of freezing, and' : `sources put its freezing point anywhere from ${freezes}, and stronger is warmer again;`} it carries less heat than half and half. Thin it.`,
      tone: 'look',
    };
  if (volume > USUAL.strong + LAST_BITS)
    return {
      sentence: `Strong: protected down to ${surely}, which is as far as it goes. More concentrate would not help; it costs cooling.`,
      tone: 'look',
    };
  if (volume < 0.05)
    return {
      sentence:
        'This is water: no protection from frost, rust or early boiling. Find out why, and fill the mixture the maker asks for.',
      tone: 'stop',
    };
  // Handbooks give a reading several strengths: it is weak only by all of them.
  if ((read?.strongest ?? volume) < USUAL.weak - LAST_BITS)
    return {
      sentence: `Weak: protected only down to ${surely}, and thin on inhibitor. Strengthen it to what the maker asks for, usually half and half.`,
      tone: 'look',
    };
  return {
    sentence: `Protected down to ${surely}${differ ? `, by other sources to ${coldest}` : ''}. That suits most climates; leave the strength as it is unless the maker says otherwise.`,
    tone: 'fine',
  };
}

function freezingLabel({ basis }: FreezingRange): string {
  return basis === 'sets without ice' ? 'No ice; sets like glass at' : 'First crystals at';
}

function freezingNote({ basis }: FreezingRange): string {
  return {
    'handbooks differ': 'from one handbook to the other',
    'beyond the correlation': 'sources disagree this strong; a range, no figure',
    'sets without ice': 'producers’ tables, from memory',
  }[basis];
}

function boilingFigure(mixed: Mixture, values: Values, show: Shower): Answer['figures'] {
  const boils = boilingPointUnderCap(mixed, gaugePascal(values.number('cap')), altitudeOf(values));
  const { realCoolant } = boilingUncertainty(mixed);
  return [
    {
      label: 'Boils under the cap at',
      value: show.quantity(boils, '°C', 0),
      note: `± ${show.difference(realCoolant)}, while the cap holds`,
    },
  ];
}

function fromFreezing(values: Values, show: Shower): Answer | Refusal {
  const glycol = glycolOf(values);
  const scale: Glycol = values.choice('scale') === 'propylene' ? 'propylene' : 'ethylene';
  const shown = kelvin(values.number('freezes'));
  const warmestEnd = freezingRange({ glycol: scale, fraction: CORRELATION_ENDS }).highest;
  if (shown < warmestEnd)
    return {
      refused: {
        name: 'freezes',
        message: `Below ${show.quantity(warmestEnd, '°C', 0)} a freezing point cannot be turned into a strength: the same reading belongs to two strengths, and sources disagree. Draw a little, thin it with as much water, and measure that.`,
      },
    };
  const index = refractiveIndex({ glycol: scale, fraction: strengthForFreezing(scale, shown) });
  if (index > indexAt(glycol, CORRELATION_ENDS))
    return {
      refused: {
        name: 'scale',
        message: `No ${glycol} glycol up to 60 % by mass bends light like that. Read again on its own scale, or look at the canister.`,
      },
    };
  const strengths =
    scale === glycol
      ? strengthRangeForFreezing(glycol, shown)
      : sameStrength(
          // Water on either scale is water, though the two correlations differ in its last digit.
          index <= indexAt(glycol, NO_GLYCOL) ? NO_GLYCOL : strengthReadOnScaleOf(scale, glycol, shown),
        );
  const middle = scale === glycol ? strengthForFreezing(glycol, shown) : strengths.lowest;
  const [low, high] = [strengths.lowest, strengths.highest].map((each) => toVolumeFraction(glycol, each));
  const volume = toVolumeFraction(glycol, middle);
  const percent = show.range(
    Math.min(low ?? volume, high ?? volume),
    Math.max(low ?? volume, high ?? volume),
    '%',
    0,
  );
  const range = freezingRangeByVolume(glycol, volume);
  const freezes = show.range(range.lowest, range.highest, '°C', 0);
  const { sentence, tone } = judge(volume, range, glycol, freezes, show, {
    protects: scale === glycol ? shown : range.highest,
    // A strength is read to a whole percent.
    strongest: Math.round(100 * Math.max(low ?? volume, high ?? volume)) / 100,
  });
  return {
    sentence: `${sentence} That is about ${percent} concentrate by volume.`,
    tone,
    figures: [
      { label: 'Concentrate by volume', value: percent, note: 'from one handbook to the other' },
      {
        label: 'Concentrate by mass',
        value: show.range(
          Math.min(strengths.lowest, strengths.highest),
          Math.max(strengths.lowest, strengths.highest),
          '%',
          0,
        ),
      },
      ...boilingFigure({ glycol, fraction: middle }, values, show),
    ],
    notes: [
      ...(scale === glycol
        ? []
        : [
            `Read on the wrong scale: it bends light like ${scale} glycol that freezes at ${show.quantity(shown, '°C', 0)}; as ${glycol} glycol it freezes at ${freezes}.`,
          ]),
      'Coolant that was never diluted can give the same reading from the other side of the curve. If in doubt thin a sample with as much water: a sound one then reads warmer, an undiluted one colder.',
    ],
    pictures: [
      freezeCurve(glycol, 'volume', volume, toCelsius(shown), `reads ${show.quantity(shown, '°C', 0)}`),
    ],
  };
}

/** What a hydrometer shows, as the strengths that may lie behind it. */
function fromDensity(values: Values, show: Shower): Answer {
  const glycol = glycolOf(values);
  const sample = kelvin(values.number('sample'));
  const found = strengthForDensity(glycol, values.number('density') * 1e3, sample);
  const [low, high] = [found.lowest, found.highest].map((each) => toVolumeFraction(glycol, each));
  const [weakest, strongest] = [low ?? volumeFraction(0), high ?? volumeFraction(0)];
  const volume = volumeFraction((weakest + strongest) / 2);
  const range = freezingRangeByVolume(glycol, volume);
  const freezes = show.range(range.lowest, range.highest, '°C', 0);
  const percent = show.range(weakest, strongest, '%', 0);
  const { sentence, tone } = judge(volume, range, glycol, freezes, show, {
    protects: freezingRangeByVolume(glycol, weakest).highest,
    strongest: Math.round(100 * strongest) / 100,
  });
  return {
    sentence: `${sentence} That is about ${percent} concentrate by volume.`,
    tone,
    figures: [
      { label: 'Concentrate by volume', value: percent, note: 'inhibited coolant to neat glycol' },
      { label: freezingLabel(range), value: freezes, note: freezingNote(range) },
      ...boilingFigure({ glycol, fraction: toMassFraction(glycol, volume) }, values, show),
    ],
    notes: [
      `Worked out for a sample of ${show.quantity(sample, '°C', 0)}: warm coolant is lighter and looks too weak. A refractometer tells it closer.`,
      'A hydrometer made for one glycol is wrong in the other, and this is a figure for the glycol chosen.',
    ],
    pictures: [
      freezeCurve(
        glycol,
        'volume',
        volume,
        (toCelsius(range.lowest) + toCelsius(range.highest)) / 2,
        freezes,
      ),
    ],
  };
}

const NO_GLYCOL = massFraction(0);

function indexAt(glycol: Glycol, fraction: MassFraction): number {
  return refractiveIndex({ glycol, fraction });
}

function sameStrength(strength: MassFraction) {
  return { lowest: strength, highest: strength };
}

/** Freezing point against strength, the band between sources, and the reading on it. */
function freezeCurve(glycol: Glycol, by: Basis, strength: number, celsius: number, label: string): Picture {
  const steps = Array.from({ length: 51 }, (_, i) => i / 50);
  const ranges = steps.map((x) =>
    by === 'mass'
      ? freezingRange({ glycol, fraction: massFraction(x) })
      : freezingRangeByVolume(glycol, volumeFraction(x)),
  );
  const line = (end: 'lowest' | 'highest') =>
    steps.map((x, i) => [x * 100, toCelsius(ranges[i]?.[end] ?? kelvin(273.15))] as const);
  return {
    kind: 'curve',
    title: 'Freezing point against strength, and the band between sources',
    x: { label: `concentrate by ${by}`, unit: '%', low: 0, high: 100 },
    y: { label: 'freezes at', unit: '°C', low: -65, high: 0 },
    curves: [{ points: line('lowest'), upper: line('highest') }],
    points: [{ x: strength * 100, y: celsius, label }],
  };
}
