/** How far a running system is from boiling, and what opening the cap would do. */
import { boilingUncertainty, boilMargin } from '../physics/boiling.ts';
import { gaugePascal, kelvin, toCelsius } from '../physics/units.ts';
import {
  ALTITUDE,
  ANY_STRENGTH,
  altitudeOf,
  CAP,
  GLYCOL,
  mixtureOf,
  openingCaution,
} from './coolant-inputs.ts';
import type { Answer, Calculator } from './declaration.ts';

/** Nearer than this to boiling the hottest spot in the head boils already, K. Common practice, no source. */
const CLOSE = 10;

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
      hint: 'Scan tool, or infrared on a matt hose.',
      dimension: 'temperature',
      unit: '°C',
      default: '105 °C',
      limits: ['-40 °C', '215 °C'],
    },
    CAP,
    ANY_STRENGTH,
    GLYCOL,
    ALTITUDE,
  ],
  answer(values, show): Answer {
    const mixture = mixtureOf(values);
    const now = kelvin(values.number('now'));
    const found = boilMargin(now, mixture, gaugePascal(values.number('cap')), altitudeOf(values));
    const { model, realCoolant } = boilingUncertainty(mixture);
    const boils = show.quantity(found.boilsAt, '°C', 0);
    const flashes = show.quantity(found.flashesAt, '°C', 0);
    const margin = show.difference(Math.abs(found.margin));
    const opening =
      found.aboveFlash > -realCoolant
        ? `Opened now it would flash into steam, since it boils at ${flashes} in the open. Leave the cap on.`
        : 'Opened now it would not flash into steam, and it can still scald: not flashing is not safe to open.';
    const { sentence, tone } =
      found.margin <= realCoolant
        ? {
            sentence: `It boils, or is about to: ${boils} is the limit with this cap. Stop the engine, let it stand, keep the cap on.`,
            tone: 'stop' as const,
          }
        : found.margin <= CLOSE
          ? {
              sentence: `Only ${margin} to boiling at ${boils}, and hot spots in the head boil first. Take the load off, let it cool, find out why. ${opening}`,
              tone: 'look' as const,
            }
          : {
              sentence: `${margin} to boiling, which comes at ${boils} while the cap holds. ${opening}`,
              tone: found.aboveFlash > -realCoolant ? ('look' as const) : ('fine' as const),
            };
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
          value: margin,
        },
        { label: 'Flashes when opened above', value: flashes },
      ],
      notes: [
        openingCaution(show),
        `The formula holds the published boiling points of neat glycol within ${show.difference(model, 1)}. A cap that leaks early lowers the limit to what it really holds: test the cap.`,
      ],
      pictures: [
        {
          kind: 'ladder',
          title: 'Coolant now, flashing and boiling',
          rungs: [
            { id: 'flash', label: 'Flashes if the cap is opened', celsius: toCelsius(found.flashesAt) },
            { id: 'boil', label: 'Boils under the cap', celsius: toCelsius(found.boilsAt) },
          ],
          reading: {
            celsius: toCelsius(now),
            label: 'Coolant now',
            to: 'boil',
            below: 'to boiling',
            above: 'over boiling',
          },
        },
      ],
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
      'ethylene glycol within 0.35 °C of the measured points; coolant as bought within 1 °C (2 °C above 60 %); propylene within 2 °C (4 °C above 60 %), no measured point at hand',
  },
};
