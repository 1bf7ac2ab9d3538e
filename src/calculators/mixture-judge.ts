/** What a strength is worth, its freezing and boiling in words, and its place on the curve. Shared by all ways to know it. */
import { boilingPointUnderCap, boilingUncertainty } from '../physics/boiling.ts';
import { type FreezingRange, freezingRange, freezingRangeByVolume } from '../physics/freezing-range.ts';
import type { Glycol, Mixture } from '../physics/glycol.ts';
import { gaugePascal, kelvin, massFraction, toCelsius, volumeFraction } from '../physics/units.ts';
import { altitudeOf } from './coolant-inputs.ts';
import type { Answer, Picture, QuantityFormatter, Values } from './declaration.ts';

/** Band of strengths a workshop fills, by volume. Common practice, no source. */
const USUAL = { weak: 0.4, strong: 0.6, tooStrong: 0.7 } as const;
/** A strength goes through mass and back: its last bits are no reason to be over a limit. */
const LAST_BITS = 1e-9;

export type Basis = 'volume' | 'mass';

/** What a mixture of this strength is good for, in a sentence with its tone. @param volume share of glycol by volume, 0 to 1 @param freezes freezing point as shown */
export function judge(
  volume: number,
  range: FreezingRange,
  glycol: Glycol,
  freezes: string,
  show: QuantityFormatter,
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

/** What stands before the freezing point: a strong mixture sets without ice. */
export function freezingLabel({ basis }: FreezingRange): string {
  return basis === 'sets without ice' ? 'No ice; sets like glass at' : 'First crystals at';
}

/** Where the range of the freezing point is from. */
export function freezingNote({ basis }: FreezingRange): string {
  return {
    'handbooks differ': 'from one handbook to the other',
    'beyond the correlation': 'sources disagree this strong; a range, no figure',
    'sets without ice': 'producers’ tables, from memory',
  }[basis];
}

/** Boiling point under the cap, with what is left open of it. */
export function boilingFigure(mixed: Mixture, values: Values, show: QuantityFormatter): Answer['figures'] {
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

/** The middle of what sources give, °C. */
export function middleOf(range: FreezingRange): number {
  return (toCelsius(range.lowest) + toCelsius(range.highest)) / 2;
}

/** Freezing point against strength, the band between sources, and the reading on it. */
export function freezeCurve(
  glycol: Glycol,
  by: Basis,
  strength: number,
  celsius: number,
  label: string,
): Picture {
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
