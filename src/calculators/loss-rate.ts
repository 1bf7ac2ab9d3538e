/** Coolant lost from two looks at the level or from what was topped up: how fast, and how long it lasts. */
import {
  type AgainstTester,
  judgeLoss,
  LOSS_FROM,
  type LossVerdict,
  NO_LOSS_BELOW,
  SETTLES_BY,
  TESTER_FACTOR,
  WATCHED,
} from '../physics/loss-rate.ts';
import { cubicMetre, cubicMetreDifference, metre, second } from '../physics/units.ts';
import { BOTTLE_AREA, CAPACITY, CORRELATED_STRENGTH, GLYCOL } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal } from './declaration.ts';
import { DAY, lastsOf, lossOf, testerOf } from './loss-litres.ts';
import { refuse } from './refuse.ts';

const THOUSAND_KILOMETRES = 1e6;

const FALLEN = { how: ['fallen'] };

function temperature(name: string, label: string, hint: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'temperature',
    unit: '°C',
    default: '',
    limits: ['-30 °C', '100 °C'],
    optional: true,
    reading: true,
    when: FALLEN,
  };
}

export const lossRate: Calculator = {
  id: 'loss-rate',
  title: 'Coolant loss',
  settles:
    'how fast a system loses coolant, how long it lasts to the low mark, and whether the leak found is all of it',
  also: [
    'coolant consumption',
    'uses coolant',
    'topping up',
    'loss per 1000 km',
    'how long until empty',
    'level falls',
    'settles after bleeding',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'how',
      label: 'You know',
      default: 'topped',
      options: [
        { value: 'topped', label: 'what brought it back to the mark' },
        { value: 'fallen', label: 'how far the level fell' },
      ],
    },
    {
      kind: 'quantity',
      name: 'topped',
      label: 'Topped up',
      hint: 'Cold, back to the line it stood at, out of a jug with marks.',
      dimension: 'volume',
      unit: 'l',
      default: '0.40 l',
      limits: ['0 l', '20 l'],
      reading: true,
      when: { how: ['topped'] },
    },
    {
      kind: 'quantity',
      name: 'down',
      label: 'The level fell by',
      hint: 'Cold both times, on the same spot. With a minus when it rose.',
      dimension: 'length',
      unit: 'mm',
      default: '40 mm',
      limits: ['-200 mm', '400 mm'],
      reading: true,
      when: FALLEN,
    },
    BOTTLE_AREA,
    temperature(
      'before',
      'Coolant at the first look',
      'Both, or neither for two cold looks at about one temperature.',
    ),
    temperature(
      'now',
      'Coolant at the second look',
      'Ten kelvin colder lowers it by some millimetres, and nothing is lost.',
    ),
    {
      kind: 'quantity',
      name: 'days',
      label: 'Time between',
      dimension: 'time',
      unit: 'days',
      default: '14 days',
      limits: ['1 h', '730 days'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'distance',
      label: 'Driven between',
      dimension: 'length',
      unit: 'km',
      default: '800 km',
      limits: ['1 km', '100000 km'],
      reading: true,
      optional: true,
    },
    {
      kind: 'choice',
      name: 'after',
      label: 'Before that it was',
      default: 'driven',
      options: [
        { value: 'driven', label: 'in use for some time' },
        { value: 'filled', label: 'just filled and bled' },
      ],
    },
    {
      kind: 'quantity',
      name: 'left',
      label: 'From the level now down to the low mark',
      dimension: 'length',
      unit: 'mm',
      default: '',
      limits: ['0 mm', '400 mm'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'tester',
      label: 'Leak on the pressure tester',
      hint: 'By the calculator of the pressure test, if one was found.',
      dimension: 'flow',
      unit: 'ml/min',
      default: '',
      limits: ['0 ml/min', '500 ml/min'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'hours',
      label: 'Of that at the wheel',
      hint: 'Empty: 40 km in an hour.',
      dimension: 'time',
      unit: 'h',
      default: '',
      limits: ['0.1 h', '5000 h'],
      reading: true,
      optional: true,
    },
    { ...CAPACITY, when: FALLEN },
    { ...CORRELATED_STRENGTH, when: FALLEN },
    { ...GLYCOL, when: FALLEN },
  ],
  answer(values, show): Answer | Refusal {
    const time = values.optional('days');
    const distance = values.optional('distance');
    if (time === undefined && distance === undefined)
      return refuse(
        'days',
        'A loss needs a stretch: write the days between the two looks, the kilometres, or both.',
      );
    const gone = lossOf(values, show);
    if ('refused' in gone) return gone;
    const { lost, error } = gone;
    const rate = judgeLoss({
      lost: cubicMetreDifference(lost),
      error: cubicMetre(error),
      ...(time !== undefined && { time: second(time) }),
      ...(distance !== undefined && { distance: metre(distance) }),
      justFilled: values.choice('after') === 'filled',
    });
    const lasts = lastsOf(values, lost, error, show);
    if ('refused' in lasts) return lasts;
    const tester = testerOf(values, lost);
    if (tester !== undefined && 'refused' in tester) return tester;
    const isLoss = rate.verdict === 'loses' || rate.verdict === 'loses fast';
    const pace = [
      ...(rate.byTime === undefined ? [] : [`${small(rate.byTime * DAY, show)} a day`]),
      ...(rate.byDistance === undefined
        ? []
        : [
            `${litres(rate.byDistance * THOUSAND_KILOMETRES, show)} in ${show.quantity(THOUSAND_KILOMETRES, 'km', 0)}`,
          ]),
    ].join(', ');
    return {
      sentence: [
        saying(rate.verdict, lost, pace, show),
        ...(isLoss && lasts.said !== '' ? [lasts.said] : []),
        ...(isLoss && tester !== undefined ? [TESTER_SAYS[tester.accounts]] : []),
      ].join(' '),
      tone: rate.verdict === 'nothing lost' ? 'fine' : rate.verdict === 'loses fast' ? 'stop' : 'look',
      figures: [
        {
          label: lost < 0 ? 'Gained' : 'Lost',
          value: litres(Math.abs(lost), show),
          note: `± ${litres(error, show)}`,
        },
        ...(rate.byTime === undefined || lost < 0
          ? []
          : [{ label: 'A day', value: small(rate.byTime * DAY, show) }]),
        ...(rate.byDistance === undefined || lost < 0
          ? []
          : [
              {
                label: `In ${show.quantity(THOUSAND_KILOMETRES, 'km', 0)}`,
                value: litres(rate.byDistance * THOUSAND_KILOMETRES, show),
              },
            ]),
        ...lasts.figures,
        ...(tester === undefined
          ? []
          : [
              {
                label: 'The leak on the tester would lose',
                value: litres(tester.expected, show),
                note: `good to a factor of ${TESTER_FACTOR}: air inside, hours warm, pressure of the road`,
              },
            ]),
      ],
      notes: [
        'Only a cold system is opened. Ease the cap to its first stop, let it go quiet, and follow the maker’s procedure.',
        'Coolant is not used up. Filled over the mark it is pushed out hot and looks like a loss each time; start from the cold mark.',
        ...(isLoss
          ? [
              'Lost and nowhere wet: into a cylinder, the gearbox, the carpet or the exhaust. Look there before the next long drive.',
            ]
          : []),
      ],
    };
  },
  method: {
    formula:
      'lost = topped up, or fall of the level × area + what warming hides (capacity × (density then / density now − 1)); rate = lost / days and lost / distance; lasts = left above the low mark / rate',
    sources: [
      'conservation of volume',
      'Melinder (2010), density of glycol mixtures; Kell (1975), water',
      `no loss below ${NO_LOSS_BELOW * 1e3} l, a loss from ${LOSS_FROM * 1e3} l; a level settles by up to ${SETTLES_BY * 1e3} l once after a fill; not driven from 1 l in 1,000 km or a third of a litre a day: common practice, no source`,
    ],
    valid: 'bottles with straight sides; looks an hour to two years apart, 1 km and more',
    error:
      'a level is read to 3 mm, which is 0.03 l in a bottle of 100 cm²; a jug to 0.03 l; two cold looks without temperatures to 5 K. Days and kilometres left are given from the quickest to the slowest that these allow',
  },
};

const TESTER_SAYS: Readonly<Record<AgainstTester['accounts'], string>> = {
  'for it': 'The leak on the tester accounts for it: mend that, and watch the line again.',
  'for less than is lost':
    'That is more than the leak on the tester would lose: look for another way out, inwards too.',
  'for more than is lost':
    'The leak on the tester would have lost far more: it opens cold or only at full pressure. Look along the joints again with the engine cold.',
};

function litres(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'l', 2);
}

/** Small amounts a day are read in millilitres. */
function small(si: number, show: QuantityFormatter): string {
  return Math.abs(si) < 0.1e-3 ? show.quantity(si, 'ml', Math.abs(si) < 10e-6 ? 1 : 0) : litres(si, show);
}

function saying(verdict: LossVerdict, lost: number, pace: string, show: QuantityFormatter): string {
  const gone = litres(Math.abs(lost), show);
  const [time, distance] = [show.quantity(WATCHED.time, 'days', 0), show.quantity(WATCHED.distance, 'km', 0)];
  return {
    'nothing lost': `Nothing is lost: ${gone} is no more than any tank breathes over such a stretch.`,
    'too short': `Nothing is missing yet, and the stretch is short. Look again cold after ${distance} or ${time}.`,
    'cannot tell': `A loss cannot be told from the eye here: the bottle is so wide that ${gone} hides in reading it. Fill to the line out of a jug instead, and count that.`,
    rose: `The level rose by ${gone}. Somebody topped it up, it was warmer, or something gets in: gas that pushes it up, oil, or water from a heat exchanger. Look at it cold, and at its colour.`,
    undecided: `${gone} is missing, more than a tank breathes and less than a leak is called from. Fill to the line and drive the same again: a leak goes on at the same pace.`,
    settles: `${gone} is missing after the fill. Air that comes out does that once; fill to the line and watch it again. The second time it is a loss.`,
    loses: `It loses ${pace}. Find where it goes before more is poured in.`,
    'loses fast': `It loses ${pace}. So fast the car is not sent on the road: it runs hot before the driver sees it. Find it now.`,
  }[verdict];
}
