/** A fill by vacuum: what the vacuum draws in here, what air stays, and whether it held. */
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { EVEN_WITHIN, NEVER_NOTHING, NOT_STARTED_ABOVE_EVEN } from '../physics/fill-account.ts';
import { HOLDS_WITHIN, LEAKS_FROM } from '../physics/pressure-decay.ts';
import { toMassFraction } from '../physics/strength.ts';
import { cubicMetre, gaugePascal, kelvin, metre, volumeFraction } from '../physics/units.ts';
import { type VacuumDraw, vacuumDraw } from '../physics/vacuum-fill.ts';
import { ALTITUDE, altitudeOf } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

/** Its vapour and weight decide little: half and half stands for any coolant. */
const COOLANT = { glycol: 'ethylene', fraction: toMassFraction('ethylene', volumeFraction(0.5)) } as const;
/** A gauge on a filler is read to this, Pa. Common practice, no source. */
const GAUGE = 2e3;
/** Less than this share of the air outside is no vacuum to fill by. Common practice, no source. */
const SHALLOW = 0.6;
/** So near to boiling a needle creeps by itself, Pa. Common practice, no source. */
const NEAR_BOILING = 5e3;
/** A bit of a decimal is no tenth of a bar, Pa. */
const SLACK = 1;

function gauge(name: string, label: string, hint: string, value: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'pressure',
    unit: 'bar',
    default: value,
    limits: ['-1.1 bar', '1.1 bar'],
    reading: true,
    ...(value === '' && { optional: true }),
  };
}

export const vacuumFill: Calculator = {
  id: 'vacuum-fill',
  title: 'Vacuum fill',
  settles: 'what a vacuum draws in at this altitude, what air stays inside, and whether it held',
  also: [
    'vacuum filler',
    'evacuate and fill',
    'how deep a vacuum',
    'vacuum at altitude',
    'inHg',
    'air left after filling',
  ],
  inputs: [
    gauge('vacuum', 'Drawn down by', 'Below the air outside; with or without a minus.', '0.85 bar'),
    gauge('after', 'After five minutes, valve shut', 'Empty while it has not stood.', ''),
    {
      kind: 'quantity',
      name: 'out',
      label: 'Came out of it, measured',
      dimension: 'volume',
      unit: 'l',
      default: '4.0 l',
      limits: ['0.3 l', '60 l'],
      card: 'drained',
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'air',
      label: 'Air above the cold mark',
      hint: 'It belongs there, and is drawn down with the rest.',
      dimension: 'volume',
      unit: 'l',
      default: '0.6 l',
      limits: ['0.05 l', '10 l'],
      figure: { path: 'coolant.air-space', end: 'middle' },
    },
    {
      kind: 'quantity',
      name: 'drew',
      label: 'Drew in by itself',
      hint: 'Off the container, before anything is poured. Empty while it has not.',
      dimension: 'volume',
      unit: 'l',
      default: '',
      limits: ['0 l', '60 l'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'temperature',
      label: 'Engine and coolant',
      dimension: 'temperature',
      unit: '°C',
      default: '20 °C',
      limits: ['-10 °C', '80 °C'],
    },
    {
      kind: 'quantity',
      name: 'lift',
      label: 'Container below the neck by',
      dimension: 'length',
      unit: 'm',
      default: '0.50 m',
      limits: ['0 m', '3 m'],
    },
    ALTITUDE,
  ],
  answer(values, show): Answer | Refusal {
    const outside = atmosphericPressure(altitudeOf(values));
    const air = values.number('air');
    const fill = {
      empty: cubicMetre(values.number('out') + air),
      outside,
      temperature: kelvin(values.number('temperature')),
      mixture: COOLANT,
      lift: metre(values.number('lift')),
    };
    const depth = Math.abs(values.number('vacuum'));
    const { deepest } = vacuumDraw({ ...fill, vacuum: gaugePascal(0) });
    for (const name of ['vacuum', 'after'])
      if (Math.abs(values.optional(name) ?? 0) > -deepest)
        return refuse(
          name,
          `No gauge can show so much here: the air outside is ${bar(outside, show)}, and from ${bar(-deepest, show)} on the coolant left inside boils. Look at the altitude, the temperature and where the needle rests.`,
        );
    const draw = vacuumDraw({ ...fill, vacuum: gaugePascal(-depth) });
    const excess = Math.max(0, draw.airLeft - air);
    const said = judge(
      values,
      { draw, depth, outside, excess, gaugeLitres: (fill.empty * GAUGE) / outside },
      show,
    );
    if ('refused' in said) return said;
    return {
      ...said,
      figures: [
        {
          label: 'Draws in by itself',
          value: litres(draw.draws, show),
          note: `± ${litres((fill.empty * GAUGE) / outside, show)}, the needle read to ${bar(GAUGE, show)}`,
        },
        {
          label: 'Air that stays',
          value: litres(draw.airLeft, show),
          note: `${litres(Math.min(air, draw.airLeft), show)} of it belongs above the mark`,
        },
        { label: 'To top up and bleed', value: litres(excess, show) },
        {
          label: 'Deepest possible here',
          value: bar(-deepest, show),
          note: 'there the coolant left inside boils',
        },
      ],
      notes: [
        'Engine cold. Goggles on, the ejector’s air regulated, hands off hoses that flatten; follow the filler’s own procedure, and on a car with high voltage the maker’s.',
        'A held vacuum does not replace the pressure test: a seal that leaks outwards may be sucked tight.',
        'Air that stays rises in the first warm-up. The level falls once by as much; fill it cold again.',
      ],
    };
  },
  method: {
    formula:
      'air that stays = empty room × (air outside − vacuum − vapour) / (air outside − vapour); draws in = empty room less the same at the pressure that the lift leaves',
    sources: [
      'Boyle’s law',
      'ISO 2533:1975 standard atmosphere',
      'vapour pressure as in the boil margin: IAPWS-IF97, Perry 8th ed.',
      `holds within ${HOLDS_WITHIN / 1e5} bar in five minutes, leaks from ${LEAKS_FROM / 1e5}; up to ${EVEN_WITHIN.usual * 1e3} l of air, or a tenth of what came out, counts as a good fill: common practice, no source`,
    ],
    valid: 'drained and cold engines, −10 to 80 °C, half and half coolant, hoses back in shape at the end',
    error:
      'the gauge decides: 0.02 bar is a fiftieth of the empty room; weather moves the air outside by 3 %, and the air that stays with it',
  },
};

interface MeasuredDraw {
  draw: VacuumDraw;
  /** Below the air outside, Pa. */
  depth: number;
  outside: number;
  /** Air that stays beyond what belongs above the mark, m³. */
  excess: number;
  /** What a gauge read wrong by its error makes, m³. */
  gaugeLitres: number;
}

function judge(
  values: Values,
  drawn: MeasuredDraw,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> | Refusal {
  const { draw, depth, outside, excess, gaugeLitres } = drawn;
  const after = values.optional('after');
  const fall = after === undefined ? 0 : depth - Math.abs(after);
  if (after !== undefined && fall < -LEAKS_FROM)
    return refuse(
      'after',
      'The vacuum has grown while the valve was shut, which cannot be. Were the two figures mixed up?',
    );
  if (fall >= LEAKS_FROM - SLACK)
    return {
      sentence: `It lets air in: ${bar(fall, show)} lost in five minutes. Do not fill yet. Adapter and its cone first, then go along the joints with an ear; a wet finger on the place stops the hiss.`,
      tone: 'stop',
    };
  const drew = values.optional('drew');
  const short = drew === undefined ? 0 : draw.draws - drew;
  if (short > EVEN_WITHIN.usual + NOT_STARTED_ABOVE_EVEN + 2 * gaugeLitres)
    return {
      sentence: `${litres(short, show)} less went in than this vacuum draws: so much air came in by the pick-up hose or the adapter. Do not start it; top up, and draw it down once more.`,
      tone: 'stop',
    };
  if (fall > HOLDS_WITHIN + SLACK)
    return {
      sentence: `It lost ${bar(fall, show)} in five minutes, more than a needle is read to and less than a leak is called from. Coolant left inside boils off and does that: draw down again, and let it stand again.`,
      tone: 'look',
    };
  if (short > EVEN_WITHIN.usual + gaugeLitres)
    return {
      sentence: `${litres(short, show)} less went in than this vacuum draws. Some air came in with it: top up, bleed it, and draw it down once more if the filler can.`,
      tone: 'look',
    };
  if (drew !== undefined && -short > EVEN_WITHIN.usual + gaugeLitres)
    return {
      sentence: `${litres(-short, show)} more went in than was empty by the count. It had been low before, or the container was read wrong; look for the loss.`,
      tone: 'look',
    };
  if (depth < SHALLOW * outside)
    return {
      sentence: `Too shallow: it would draw in ${litres(draw.draws, show)} and leave ${litres(draw.airLeft, show)} of air. The ejector wants more air, or something is open; here ${bar(0.9 * outside, show)} can be reached.`,
      tone: 'look',
    };
  if (-draw.deepest - depth < NEAR_BOILING)
    return {
      sentence:
        'So deep, what coolant is left inside boils and the needle creeps. Let it in to a little less before judging whether it holds.',
      tone: 'look',
    };
  if (excess > Math.max(EVEN_WITHIN.usual, NEVER_NOTHING * values.number('out')))
    return {
      sentence: `It draws in ${litres(draw.draws, show)}, and ${litres(draw.airLeft, show)} of air stays, ${litres(excess, show)} more than belongs above the mark. Draw deeper if the ejector can; else draw down a second time after the fill, and bleed it.`,
      tone: 'look',
    };
  return {
    sentence: `${after === undefined ? 'Deep enough' : 'It holds and is deep enough'}: it draws in ${litres(draw.draws, show)}, and ${litres(draw.airLeft, show)} of air stays, hardly more than belongs above the mark.${after === undefined ? ' Shut the valve and let it stand five minutes before filling.' : ''}`,
    tone: 'fine',
  };
}

function litres(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'l', 1);
}

function bar(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'bar', 2);
}
