/** How far a running system is from boiling, and what opening the cap would do. */
import { type BoilMargin, boilingPointUnderCap, boilingUncertainty, boilMargin } from '../physics/boiling.ts';
import { freezingRange } from '../physics/freezing-range.ts';
import type { Mixture } from '../physics/glycol.ts';
import {
  type GaugePascal,
  gaugePascal,
  type Kelvin,
  kelvin,
  type Metre,
  toCelsius,
} from '../physics/units.ts';
import {
  ALTITUDE,
  ANY_STRENGTH,
  altitudeOf,
  CAP,
  doubtfulCap,
  doubtfulStrength,
  GLYCOL,
  mixtureOf,
  openingCaution,
} from './coolant-inputs.ts';
import type { Answer, Calculator, Picture, QuantityFormatter, Refusal } from './declaration.ts';
import { refuse } from './refuse.ts';

/** Nearer than this to boiling the hottest spot in the head boils already, K. Common practice, no source. */
const CLOSE = 10;
/** Hotter than this and this far over boiling a reading is no coolant's, K: 150 °C. Common practice, no source. */
const NO_LIQUID = 423.15;
const IS_OVER = 10;
/** From here on an engine is looked at whatever its boiling point, K: 115 °C. Common practice, no source. */
const TOO_HOT = 388.15;
/** Past this it is switched off, however far from boiling, K: 120 °C. Common practice, no source. */
const SWITCH_OFF = 393.15;
/** So strong it carries less heat, and its boiling point is no reserve. Common practice, no source. */
const TOO_STRONG = 0.7;
/** Above this coolant burns skin within minutes, K: Moritz and Henriques, 1947. */
const SCALDS = 321.15;

export const boilMarginCalculator: Calculator = {
  id: 'boil-margin',
  title: 'Boil margin',
  settles:
    'how far the coolant is from boiling under its cap, and whether it would flash if the cap came off',
  also: ['boiling point under pressure', 'overheat margin', 'cap pressure', 'flash to steam'],
  inputs: [
    {
      kind: 'quantity',
      name: 'now',
      label: 'Coolant now',
      hint: 'Scan tool. A hose shows 10 to 20 K less than what is in it: not the outside, for this.',
      dimension: 'temperature',
      unit: '°C',
      default: '105 °C',
      limits: ['-40 °C', '215 °C'],
      reading: true,
    },
    CAP,
    ANY_STRENGTH,
    GLYCOL,
    ALTITUDE,
  ],
  answer(values, show): Answer | Refusal {
    const doubt = doubtfulCap(values, show) ?? doubtfulStrength(values, 'strength', show);
    if (doubt) return doubt;
    const mixture = mixtureOf(values);
    const now = kelvin(values.number('now'));
    const cap = gaugePascal(values.number('cap'));
    const altitude = altitudeOf(values);
    const found = boilMargin(now, mixture, cap, altitude);
    const refused = noLiquid(now, mixture, found, show);
    if (refused) return refused;
    const { model, realCoolant } = boilingUncertainty(mixture);
    const boils = show.quantity(found.boilsAt, '°C', 0);
    const flashes = show.quantity(found.flashesAt, '°C', 0);
    const { sentence, tone } = verdictOf(now, found, realCoolant, values.number('strength'), show);
    return {
      sentence,
      tone,
      figures: [
        {
          label: 'Boils under the cap at',
          value: boils,
          note: `± ${show.difference(realCoolant)} for coolant as bought`,
        },
        {
          label: found.margin >= 0 ? 'Margin to boiling' : 'Over boiling by',
          value: show.difference(Math.abs(found.margin)),
        },
        { label: 'Flashes when opened above', value: flashes },
      ],
      notes: [
        openingCaution(show),
        mixture.glycol === 'ethylene'
          ? `The formula meets measured boiling points of neat glycol within ${show.difference(model, 1)}.`
          : `No measured boiling point of propylene glycol mixtures was at hand; a handbook’s rows, from memory, are met within ${show.difference(model, 1)} at usual strengths.`,
        'A cap that leaks early lowers the limit to what it really holds: test the cap.',
      ],
      pictures: [ladder(now, found), boilCurve(mixture, cap, altitude, `boils at ${boils}`)],
    };
  },
  method: {
    formula:
      'boils where vapour pressure = air pressure + cap; vapour pressure = x·γ·p(water) + (1−x)·γ·p(glycol), x by moles, γ by Margules',
    sources: [
      'IAPWS-IF97 region 4, water',
      'Perry’s Chemical Engineers’ Handbook, 8th ed., table 2-8, glycol',
      'Kamihama et al., J. Chem. Eng. Data 57 (2012) 339, measured ethylene glycol mixtures',
      'ISO 2533:1975 standard atmosphere',
    ],
    valid: '0 to 100 % glycol, caps to 3 bar, −400 to 5,500 m',
    error:
      'ethylene glycol within 0.35 K of the measured points; coolant as bought within 1 K (2 K above 60 %, 6 K at 90 %: the water in a concentrate weighs more there); propylene within 2 K (4 K above 60 %), no measured point at hand',
  },
};

/** Refused: ice, and a figure that no liquid reaches. */
function noLiquid(
  now: Kelvin,
  mixture: Mixture,
  { margin }: BoilMargin,
  show: QuantityFormatter,
): Refusal | undefined {
  const freezes = freezingRange(mixture).highest;
  if (now < freezes)
    return refuse(
      'now',
      `Ice: this mixture begins to freeze at ${show.quantity(freezes, '°C', 0)}. Do not start the engine: thaw it first, then correct the mixture.`,
    );
  if (now > NO_LIQUID && margin < -IS_OVER)
    return refuse(
      'now',
      `${show.quantity(now, '°C', 0)} is ${show.difference(-margin)} over boiling, and no coolant gets so far: it turns to steam first. Look at the unit beside it (°C or °F); on the scan tool it is the end of the scale, a shorted sensor or wire.`,
    );
  return undefined;
}

/**
 * The gravest thing that can be said of it.
 * @param realCoolant what coolant as bought boils beside the formula, K
 * @param strength share of glycol
 */
function verdictOf(
  now: Kelvin,
  found: BoilMargin,
  realCoolant: number,
  strength: number,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const reads = show.quantity(now, '°C', 0);
  const boils = show.quantity(found.boilsAt, '°C', 0);
  const margin = show.difference(Math.abs(found.margin));
  const flashesOpen = found.aboveFlash > -realCoolant;
  const opening = openingWords(now, found, flashesOpen, show);
  const tooStrong = strength > TOO_STRONG ? ' Thin it: so strong it carries less heat.' : '';
  if (found.margin <= realCoolant)
    return {
      sentence: `It boils, or is about to: ${boils} is the limit with this cap. Stop the engine, let it stand, keep the cap on.`,
      tone: 'stop',
    };
  if (now > SWITCH_OFF)
    return {
      sentence: `Too hot for any engine of a car, boiling or not: ${reads}, and ${margin} to boiling at ${boils} while the cap holds. Engine off, let it stand, find out why.${tooStrong} ${opening}`,
      tone: 'stop',
    };
  if (found.margin <= CLOSE)
    return {
      sentence: `Only ${margin} to boiling at ${boils}, and hot spots in the head boil first. Take the load off, let it cool, find out why. ${opening}`,
      tone: 'look',
    };
  const noLicence =
    now >= TOO_HOT
      ? ` That reserve is no licence: ${reads} is too hot for any engine of a car, so find out why.`
      : '';
  return {
    sentence: `${margin} to boiling, which comes at ${boils} while the cap holds.${noLicence}${tooStrong} ${opening}`,
    tone: flashesOpen || now >= TOO_HOT ? 'look' : 'fine',
  };
}

function openingWords(
  now: Kelvin,
  { flashesAt }: BoilMargin,
  flashesOpen: boolean,
  show: QuantityFormatter,
): string {
  if (flashesOpen)
    return `Leave the cap on: opened now it would flash into steam, since it boils at ${show.quantity(flashesAt, '°C', 0)} in the open.`;
  if (now > SCALDS)
    return 'Leave the cap on until it has cooled: it would not flash into steam now, but not flashing is not safe to open.';
  return 'Cool enough not to flash or scald at once; still open it slowly, as the maker describes.';
}

function ladder(now: Kelvin, { flashesAt, boilsAt }: BoilMargin): Picture {
  return {
    kind: 'ladder',
    title: 'Coolant now, flashing and boiling',
    rungs: [
      { id: 'flash', label: 'Flashes if the cap is opened', celsius: toCelsius(flashesAt) },
      { id: 'boil', label: 'Boils under the cap', celsius: toCelsius(boilsAt) },
    ],
    reading: {
      celsius: toCelsius(now),
      label: 'Coolant now',
      to: 'boil',
      below: 'to boiling',
      above: 'over boiling',
    },
  };
}

/** Boiling point against cap pressure, as wide as a coolant bought may be off, with this cap on it. */
function boilCurve(mixture: Mixture, cap: GaugePascal, altitude: Metre, label: string): Picture {
  const highest = cap > 2e5 ? 3e5 : 2e5;
  const { realCoolant } = boilingUncertainty(mixture);
  const line = (shift: number) =>
    Array.from({ length: 25 }, (_, i) => (i / 24) * highest).map((pressure) => {
      const boils = boilingPointUnderCap(mixture, gaugePascal(pressure), altitude);
      return [pressure / 1e5, toCelsius(boils) + shift] as const;
    });
  const points = line(-realCoolant);
  const upper = line(realCoolant);
  const ends = [points[0]?.[1] ?? 0, upper.at(-1)?.[1] ?? 200];
  return {
    kind: 'curve',
    title: 'Boiling point against cap pressure',
    x: { label: 'cap opens at', unit: 'bar', low: 0, high: highest / 1e5 },
    y: {
      label: 'boils at',
      unit: '°C',
      low: Math.floor((ends[0] ?? 0) / 10) * 10,
      high: Math.ceil((ends[1] ?? 200) / 10) * 10,
    },
    curves: [{ points, upper }],
    points: [{ x: cap / 1e5, y: toCelsius(boilingPointUnderCap(mixture, cap, altitude)), label }],
  };
}
