/** Where the level belongs at the temperature it has now. */
import { expansion, levelAboveColdMark, roomWhenHot } from '../physics/expansion.ts';
import { freezingPoint } from '../physics/mixture-properties.ts';
import { cubicMetre, kelvin, squareMetre, ZERO_CELSIUS } from '../physics/units.ts';
import { CAPACITY, CORRELATED_STRENGTH, GLYCOL, mixtureOf, openingCaution } from './coolant-inputs.ts';
import type { Answer, Calculator, Refusal } from './declaration.ts';

/** So near to it the mark is right: it is drawn for a cold engine, not for one temperature, m. Common practice, no source. */
const AT_THE_MARK = 0.01;
/** Nearer than this a mark cannot be read, m. Common practice, no source. */
const READS_TO = 0.003;

export const level: Calculator = {
  id: 'level',
  title: 'Level against temperature',
  settles:
    'where the level belongs in the bottle at the temperature it has now, and whether the bottle has room',
  also: ['cold mark when hot', 'expansion', 'level rises when hot', 'bottle overflows'],
  inputs: [
    {
      kind: 'quantity',
      name: 'now',
      label: 'Coolant now',
      dimension: 'temperature',
      unit: '°C',
      default: '60 °C',
      limits: ['-40 °C', '100 °C'],
      reading: true,
    },
    CAPACITY,
    {
      kind: 'quantity',
      name: 'area',
      label: 'The bottle from above',
      hint: 'Length times width inside: 12 cm by 8 cm is 96 cm².',
      dimension: 'area',
      unit: 'cm²',
      default: '100 cm²',
      limits: ['10 cm²', '1500 cm²'],
    },
    {
      kind: 'quantity',
      name: 'room',
      label: 'Air above the cold mark',
      dimension: 'volume',
      unit: 'l',
      default: '0.6 l',
      limits: ['0.05 l', '10 l'],
      figure: { path: 'coolant.air-space', end: 'low' },
    },
    {
      kind: 'quantity',
      name: 'cold',
      label: 'The cold mark is meant for',
      dimension: 'temperature',
      unit: '°C',
      default: '20 °C',
      limits: ['-20 °C', '40 °C'],
    },
    CORRELATED_STRENGTH,
    GLYCOL,
  ],
  answer(values, show): Answer | Refusal {
    const mixture = mixtureOf(values);
    // The correlation's own water freezes a few hundredths below 0 °C, where the density of water is not tabulated.
    const freezes = mixture.fraction === 0 ? ZERO_CELSIUS : freezingPoint(mixture);
    for (const name of ['now', 'cold'])
      if (values.number(name) < freezes)
        return {
          refused: {
            name,
            message: `This mixture begins to freeze at ${show.quantity(freezes, '°C', 0)}. A level says nothing then; do not start the engine, thaw it first.`,
          },
        };
    const volume = cubicMetre(values.number('capacity'));
    const coldAt = kelvin(values.number('cold'));
    const now = kelvin(values.number('now'));
    const hottest = kelvin(373.15);
    const system = { mixture, volume, coldAt, bottleArea: squareMetre(values.number('area')) };
    const height = levelAboveColdMark(system, now);
    const gained = expansion(mixture, volume, coldAt, now);
    const room = roomWhenHot(system, cubicMetre(values.number('room')), hottest);
    const rise = show.quantity(Math.abs(height), 'mm', 0);
    const litres = show.quantity(Math.abs(gained), 'l', 2);
    const where =
      Math.abs(height) < AT_THE_MARK
        ? `At the cold mark is right now${Math.abs(height) < READS_TO ? '' : `; ${rise} ${height > 0 ? 'above' : 'below'} it is no fault`}.`
        : height > 0
          ? `The level belongs about ${rise} above the cold mark now. Filled only to the mark it would be ${litres} short when cold.`
          : `So cold, the level may stand about ${rise} below the cold mark, and that is no loss. Look again in the warm before topping up: at the mark now is ${litres} over it at ${show.quantity(coldAt, '°C', 0)}.`;
    const full =
      room < 0
        ? ` The bottle has no room for the rest: hot, ${show.quantity(-room, 'l', 2)} goes out by the cap. Check capacity and mark before calling it a leak.`
        : '';
    return {
      sentence: `${where}${full}`,
      tone: room < 0 ? 'look' : 'fine',
      figures: [
        { label: height < 0 ? 'Below the cold mark' : 'Above the cold mark', value: rise },
        { label: gained < 0 ? 'Coolant has shrunk by' : 'Coolant has grown by', value: litres },
        {
          label: `Grows from cold to ${show.quantity(hottest, '°C', 0)}`,
          value: show.quantity(expansion(mixture, volume, coldAt, hottest), 'l', 2),
        },
        {
          label: room < 0 ? 'Too little room by' : 'Air left at the hottest',
          value: show.quantity(Math.abs(room), 'l', 2),
        },
      ],
      notes: [
        'Look at the level through the bottle, with the cap shut, engine off and the car level.',
        ...(now > 313.15 ? [openingCaution(show)] : []),
        'Counts the whole filling at one temperature in a rigid engine and rigid hoses; they grow too and take about a tenth of it back. A warm engine is not warm throughout, so the true rise is smaller, not larger.',
      ],
    };
  },
  method: {
    formula: 'growth = capacity × (density cold / density now − 1); rise = growth / area of the bottle',
    sources: [
      'Melinder (2010), density of glycol mixtures',
      'Kell (1975), density of water',
      'ASHRAE Handbook – Fundamentals (2001), for comparison',
    ],
    valid: '0 to 57 % by volume, from its freezing point to 100 °C, the bottle straight-sided',
    error:
      'handbooks differ by up to 0.5 % of the volume over 70 K, a tenth of the growth; the area of the bottle decides the rest',
  },
};
