/** Where the level belongs at the temperature it has now. */
import { AT_THE_MARK, expansion } from '../physics/expansion.ts';
import { EVEN_WITHIN, NOT_STARTED_ABOVE_EVEN } from '../physics/fill-account.ts';
import { freezingPoint } from '../physics/mixture-properties.ts';
import { cubicMetre, type Kelvin, kelvin, ZERO_CELSIUS } from '../physics/units.ts';
import {
  BOTTLE_AREA,
  CAPACITY,
  CORRELATED_STRENGTH,
  GLYCOL,
  mixtureOf,
  openingCaution,
} from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, Refusal } from './declaration.ts';
import { refuse } from './refuse.ts';

/** Nearer than this a mark cannot be read, m. Common practice, no source. */
const READS_TO = 0.003;

export const level: Calculator = {
  id: 'level',
  title: 'Level against temperature',
  settles:
    'where the level belongs in the bottle at the temperature it has now, how much is short, and whether the bottle has room',
  also: ['cold mark when hot', 'expansion', 'level rises when hot', 'bottle overflows'],
  inputs: [
    {
      kind: 'quantity',
      name: 'now',
      label: 'Coolant now',
      dimension: 'temperature',
      unit: '°C',
      default: '60 °C',
      limits: ['-40 °C', '120 °C'],
      reading: true,
    },
    CAPACITY,
    { ...BOTTLE_AREA, hint: `${BOTTLE_AREA.hint} Empty: the answer comes in litres only.` },
    {
      kind: 'quantity',
      name: 'seen',
      label: 'The level seen, from the cold mark',
      hint: 'Above it plain, below it with a minus. Empty to be told where it belongs.',
      dimension: 'length',
      unit: 'mm',
      default: '',
      limits: ['-300 mm', '300 mm'],
      reading: true,
      optional: true,
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
      reading: true,
      optional: true,
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
        return refuse(
          name,
          `This mixture begins to freeze at ${show.quantity(freezes, '°C', 0)}. A level says nothing then; do not start the engine, thaw it first.`,
        );
    const volume = cubicMetre(values.number('capacity'));
    const coldAt = kelvin(values.number('cold'));
    const now = kelvin(values.number('now'));
    const hottest = kelvin(Math.max(373.15, now));
    const gained = expansion(mixture, volume, coldAt, now);
    const area = values.optional('area');
    const height = area === undefined ? undefined : gained / area;
    const air = values.optional('room');
    const room = air === undefined ? undefined : air - expansion(mixture, volume, coldAt, hottest);
    const full =
      room !== undefined && room < 0
        ? ` The bottle has no room for the rest: hot, ${show.quantity(-room, 'l', 2)} goes out by the cap. Check capacity and mark before calling it a leak.`
        : '';
    const seen = values.optional('seen');
    if (seen !== undefined && area === undefined)
      return refuse(
        'area',
        'A level seen is turned into litres by the size of the bottle. Measure it from above, such as 12 x 8 cm.',
      );
    const impossible =
      seen === undefined || area === undefined || height === undefined
        ? undefined
        : doubtOf({ seen, short: (height - seen) * area, area, capacity: volume, air }, show);
    if (impossible) return impossible;
    const said =
      seen !== undefined && area !== undefined && height !== undefined
        ? againstSeen(seen, height, area, notStarted(volume), show)
        : { sentence: belongs(gained, height, coldAt, show), tone: 'fine' as const };
    return {
      sentence: `${said.sentence}${full}`,
      tone: full === '' ? said.tone : 'look',
      figures: [
        ...(height === undefined
          ? []
          : [
              {
                label: height < 0 ? 'Belongs below the cold mark' : 'Belongs above the cold mark',
                value: show.quantity(Math.abs(height), 'mm', 0),
              },
            ]),
        {
          label: gained < 0 ? 'Coolant has shrunk by' : 'Coolant has grown by',
          value: show.quantity(Math.abs(gained), 'l', 2),
        },
        {
          label: `Grows from cold to ${show.quantity(hottest, '°C', 0)}`,
          value: show.quantity(expansion(mixture, volume, coldAt, hottest), 'l', 2),
        },
        ...(room === undefined
          ? []
          : [
              {
                label: room < 0 ? 'Too little room by' : 'Air left at the hottest',
                value: show.quantity(Math.abs(room), 'l', 2),
              },
            ]),
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
      'handbooks differ by up to 0.5 % of the volume over 70 K, which is 10 to 16 % of the growth; past 100 °C the density is carried on, 0.2 % of the volume more; the area of the bottle decides the rest',
  },
};

/** Where the level belongs; in litres alone where the bottle is not known. @param height above the cold mark, m */
function belongs(
  gained: number,
  height: number | undefined,
  coldAt: Kelvin,
  show: QuantityFormatter,
): string {
  const litres = show.quantity(Math.abs(gained), 'l', 2);
  if (height === undefined)
    return gained >= 0
      ? `The filling is ${litres} larger than cold now. Filled only to the cold mark it would be as much short next morning.`
      : `The filling is ${litres} smaller now than at ${show.quantity(coldAt, '°C', 0)}, and that is no loss.`;
  const rise = show.quantity(Math.abs(height), 'mm', 0);
  if (Math.abs(height) < AT_THE_MARK)
    return `At the cold mark is right now${Math.abs(height) < READS_TO ? '' : `; ${rise} ${height > 0 ? 'above' : 'below'} it is no fault`}.`;
  return height > 0
    ? `The level belongs about ${rise} above the cold mark now. Filled only to the mark it would be ${litres} short when cold.`
    : `So cold, the level may stand about ${rise} below the cold mark, and that is no loss. Look again in the warm before topping up: at the mark now is ${litres} over it at ${show.quantity(coldAt, '°C', 0)}.`;
}

/** From so much short on it is not started, m³: as after a refill. */
function notStarted(capacity: number): number {
  return (capacity > EVEN_WITHIN.largeAbove ? EVEN_WITHIN.large : EVEN_WITHIN.usual) + NOT_STARTED_ABOVE_EVEN;
}

/** A bottle measured to this share. Common practice, no source. */
const MEASURED_TO = 0.1;

interface LevelReading {
  /** Above the cold mark, m. */
  seen: number;
  /** m³. */
  short: number;
  area: number;
  capacity: number;
  /** Above the cold mark, m³. */
  air: number | undefined;
}

/** Asks back where the litres seen are more than the system, or the room in the bottle, has. */
function doubtOf(
  { seen, short, area, capacity, air }: LevelReading,
  show: QuantityFormatter,
): Refusal | undefined {
  if (short >= capacity)
    return refuse(
      'seen',
      `That would be ${show.quantity(short, 'l', 2)} short, and the whole system holds ${show.quantity(capacity, 'l', 1)}. Look at the size of the bottle and the capacity again; a bottle that is empty shows no level.`,
    );
  const above = seen * area;
  if (air !== undefined && above > air * (1 + MEASURED_TO))
    return refuse(
      'seen',
      `That is ${show.quantity(above, 'l', 2)} above the cold mark, where the bottle has room for ${show.quantity(air, 'l', 2)}. Measure the level, the bottle or the air above the mark again.`,
    );
  return undefined;
}

/** The level seen against where it belongs. @param seen above the cold mark, m @param area of the bottle, m² @param stopFrom m³ */
function againstSeen(
  seen: number,
  belongsAt: number,
  area: number,
  stopFrom: number,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const under = belongsAt - seen;
  const apart = show.quantity(Math.abs(under), 'mm', 0);
  const litres = show.quantity(Math.abs(under) * area, 'l', 2);
  if (Math.abs(under) <= AT_THE_MARK)
    return {
      sentence: `The level is where it belongs at this temperature${Math.abs(under) < READS_TO ? '' : `, ${apart} ${under > 0 ? 'under' : 'over'} it`}. Nothing is to be poured in.`,
      tone: 'fine',
    };
  if (under > AT_THE_MARK + READS_TO && under * area >= stopFrom - 1e-9)
    return {
      sentence: `${litres} short: the level stands ${apart} under where it belongs at this temperature. So much is air inside: do not drive it. Let it cool, fill to the cold mark, bleed it, and find where it went.`,
      tone: 'stop',
    };
  return {
    sentence:
      under > 0
        ? `${litres} short: the level stands ${apart} under where it belongs at this temperature. Let it cool, fill to the cold mark, and find where it went.`
        : `${litres} over: the level stands ${apart} above where it belongs at this temperature. Draw it off cold; the surplus goes out by the cap, and does not count as a leak.`,
    tone: 'look',
  };
}
