/** A strength from what an instrument shows: a freezing point, a density, degrees Brix. */
import {
  freezingRange,
  freezingRangeByVolume,
  strengthForFreezing,
  strengthRangeForFreezing,
} from '../physics/freezing-range.ts';
import { CORRELATION_ENDS, type Glycol } from '../physics/glycol.ts';
import { strengthForDensity } from '../physics/hydrometer.ts';
import { freezingPoint } from '../physics/mixture-properties.ts';
import {
  indexOfBrix,
  refractiveIndex,
  strengthForIndex,
  strengthForIndexAt,
  strengthReadOnScaleOf,
  type ZeroSetting,
} from '../physics/refractive-index.ts';
import { toMassFraction, toVolumeFraction } from '../physics/strength.ts';
import {
  fromCelsius,
  type Kelvin,
  kelvin,
  type MassFraction,
  massFraction,
  toCelsius,
  volumeFraction,
} from '../physics/units.ts';
import { glycolOf } from './coolant-inputs.ts';
import type { Answer, QuantityFormatter, Refusal, Values } from './declaration.ts';
import { boilingFigure, freezeCurve, freezingLabel, freezingNote, judge, middleOf } from './mixture-judge.ts';
import { refuse } from './refuse.ts';

/** Less is water: bits of the arithmetic, by mass. */
const TRACE = 1e-3;
/** A sugar scale read to half a degree, and what inhibitors bend, by volume. Common practice, no source. */
const BRIX_TELLS = 0.02;

const NO_GLYCOL = massFraction(0);

function indexAt(glycol: Glycol, fraction: MassFraction): number {
  return refractiveIndex({ glycol, fraction });
}

function sameStrength(strength: MassFraction) {
  return { lowest: strength, highest: strength };
}

/** What a refractometer shows, on which scale, of which glycol. */
interface ReadFreezing {
  glycol: Glycol;
  /** The glycol whose scale was read. */
  scale: Glycol;
  read: Kelvin;
  /** As the same sample would show it at 20 °C. */
  shown: Kelvin;
}

/** Strength from a freezing point as a refractometer shows it; refused where its scale ends. */
export function fromFreezing(values: Values, show: QuantityFormatter): Answer | Refusal {
  const glycol = glycolOf(values);
  const scale: Glycol = values.choice('scale') === 'propylene' ? 'propylene' : 'ethylene';
  const read = kelvin(values.number('freezes'));
  const warmestEnd = freezingRange({ glycol: scale, fraction: CORRELATION_ENDS }).highest;
  if (read < warmestEnd)
    return refuse(
      'freezes',
      `Below ${show.quantity(warmestEnd, '°C', 0)} a freezing point cannot be turned into a strength: the same reading belongs to two strengths, and sources disagree. Draw a little, thin it with as much water, and measure that.`,
    );
  const shown = at20(values, scale, read);
  if (shown < warmestEnd)
    return refuse(
      'freezes',
      `Corrected for its temperature it is stronger than ${show.quantity(warmestEnd, '°C', 0)} stands for, and no strength is told from that. Draw a little, thin it with as much water, and measure that.`,
    );
  const index = refractiveIndex({ glycol: scale, fraction: strengthForFreezing(scale, shown) });
  if (index > indexAt(glycol, CORRELATION_ENDS))
    return refuse(
      'scale',
      `No ${glycol} glycol up to 60 % by mass bends light like that. Read again on its own scale, or look at the canister.`,
    );
  return strengthAnswer({ glycol, scale, read, shown }, index, values, show);
}

function strengthAnswer(
  freezing: ReadFreezing,
  index: number,
  values: Values,
  show: QuantityFormatter,
): Answer {
  const { glycol, scale, shown } = freezing;
  const strengths =
    scale === glycol
      ? strengthRangeForFreezing(glycol, shown)
      : sameStrength(
          // Water on either scale is water, though the two correlations differ in its last digit.
          index <= indexAt(glycol, NO_GLYCOL) ? NO_GLYCOL : strengthReadOnScaleOf(scale, glycol, shown),
        );
  const middle = scale === glycol ? strengthForFreezing(glycol, shown) : strengths.lowest;
  const ends = [strengths.lowest, strengths.highest];
  const volumes = ends.map((each) => toVolumeFraction(glycol, each));
  const percent = show.range(Math.min(...volumes), Math.max(...volumes), '%', 0);
  const volume = toVolumeFraction(glycol, middle);
  const range = freezingRangeByVolume(glycol, volume);
  const freezes = show.range(range.lowest, range.highest, '°C', 0);
  const { sentence, tone } = judge(volume, range, glycol, freezes, show, {
    protects: scale === glycol ? shown : range.highest,
    // A strength is read to a whole percent.
    strongest: Math.round(100 * Math.max(...volumes)) / 100,
  });
  return {
    sentence: `${sentence} That is about ${percent} concentrate by volume.`,
    tone,
    figures: [
      { label: 'Concentrate by volume', value: percent, note: 'from one handbook to the other' },
      {
        label: 'Concentrate by mass',
        value: show.range(Math.min(...ends), Math.max(...ends), '%', 0),
      },
      ...boilingFigure({ glycol, fraction: middle }, values, show),
    ],
    notes: freezingNotes(freezing, freezes, values, show),
    pictures: [
      freezeCurve(glycol, 'volume', volume, toCelsius(shown), `reads ${show.quantity(shown, '°C', 0)}`),
    ],
  };
}

function freezingNotes(
  { glycol, scale, read, shown }: ReadFreezing,
  freezes: string,
  values: Values,
  show: QuantityFormatter,
): string[] {
  return [
    ...(Math.abs(shown - read) < 0.5
      ? []
      : [
          `Read ${show.quantity(read, '°C', 0)} on a sample of ${show.quantity(values.number('read-at'), '°C', 0)}; at ${show.quantity(fromCelsius(20), '°C', 0)} it would read ${show.quantity(shown, '°C', 0)}.`,
        ]),
    ...(scale === glycol
      ? []
      : [
          `Read on the wrong scale: it bends light like ${scale} glycol that freezes at ${show.quantity(shown, '°C', 0)}; as ${glycol} glycol it freezes at ${freezes}.`,
        ]),
    'Coolant that was never diluted can give the same reading from the other side of the curve. If in doubt thin a sample with as much water: a sound one then reads warmer, an undiluted one colder.',
  ];
}

/** A freezing point as the same sample would show it at 20 °C. */
function at20(values: Values, scale: Glycol, read: Kelvin): Kelvin {
  const zeroed = zeroedOf(values);
  if (zeroed === undefined) return read;
  const index = refractiveIndex({ glycol: scale, fraction: strengthForFreezing(scale, read) });
  const fraction = strengthForIndexAt(scale, index, kelvin(values.number('read-at')), zeroed);
  return fraction < TRACE ? fromCelsius(0) : freezingPoint({ glycol: scale, fraction });
}

/** How the refractometer was zeroed; undefined when it corrects for temperature itself. */
function zeroedOf(values: Values): ZeroSetting | undefined {
  const corrects = values.choice('corrects');
  if (corrects === 'itself') return undefined;
  return corrects === 'warm' ? 'with water at the sample’s temperature' : 'at 20 °C';
}

/** What a refractometer marked in degrees Brix shows, as a strength. */
export function fromBrix(values: Values, show: QuantityFormatter): Answer | Refusal {
  const glycol = glycolOf(values);
  const index = indexOfBrix(values.number('brix'));
  const strongest = indexAt(glycol, CORRELATION_ENDS);
  if (index > strongest)
    return refuse(
      'brix',
      `So many degrees Brix no ${glycol} glycol up to 60 % by mass has. Thin the sample with as much water, measure that, and double the strength.`,
    );
  const zeroed = zeroedOf(values);
  const found =
    zeroed !== undefined
      ? strengthForIndexAt(glycol, index, kelvin(values.number('read-at')), zeroed)
      : index <= indexAt(glycol, NO_GLYCOL)
        ? NO_GLYCOL
        : strengthForIndex(glycol, index);
  const middle = found < TRACE ? NO_GLYCOL : found;
  const volume = toVolumeFraction(glycol, middle);
  const [weak, strong] = [Math.max(0, volume - BRIX_TELLS), Math.min(1, volume + BRIX_TELLS)];
  const range = freezingRangeByVolume(glycol, volume);
  const freezes = show.range(range.lowest, range.highest, '°C', 0);
  const percent = show.range(weak, strong, '%', 0);
  const { sentence, tone } = judge(volume, range, glycol, freezes, show, {
    protects: freezingRangeByVolume(glycol, volumeFraction(weak)).highest,
    strongest: Math.round(100 * strong) / 100,
  });
  return {
    sentence: `${sentence} That is about ${percent} concentrate by volume.`,
    tone,
    figures: [
      {
        label: 'Concentrate by volume',
        value: percent,
        note: 'a scale of sugar, and inhibitor in the coolant',
      },
      { label: freezingLabel(range), value: freezes, note: freezingNote(range) },
      ...boilingFigure({ glycol, fraction: middle }, values, show),
    ],
    notes: [
      'A scale of degrees Brix is made for sugar; it stands for the same bending of light. A scale in freezing points of the right glycol is the better one.',
    ],
    pictures: [freezeCurve(glycol, 'volume', volume, middleOf(range), freezes)],
  };
}

/** What a hydrometer shows, as the strengths that may lie behind it. */
export function fromDensity(values: Values, show: QuantityFormatter): Answer {
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
    pictures: [freezeCurve(glycol, 'volume', volume, middleOf(range), freezes)],
  };
}
