/** Coolant to buy for a filling: concentrate and water, cans and price, cleaner, and what goes into the drum. */
import { type CanSize, cansFor, type Order, partsOf } from '../physics/coolant-order.ts';
import { cubicMetre, volumeFraction } from '../physics/units.ts';
import type {
  Answer,
  AnswerFigure,
  Calculator,
  QuantityFormatter,
  QuantityInput,
  Refusal,
  Values,
} from './declaration.ts';
import { refuse } from './refuse.ts';

/** Strengths a workshop fills, by volume. Common practice, no source; as the mixture judges. */
const USUAL = { weak: 0.4, strong: 0.6 } as const;
const LAST_BITS = 1e-9;

function canSize(name: string, label: string, value: string, optional: boolean): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    dimension: 'volume',
    unit: 'l',
    default: value,
    limits: ['0.1 l', '210 l'],
    ...(optional && { optional }),
  };
}

function canPrice(name: string, label: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    dimension: 'plain',
    unit: '',
    default: '',
    limits: ['0', '10000000'],
    optional: true,
  };
}

export const coolantOrder: Calculator = {
  id: 'coolant-order',
  title: 'Coolant to buy',
  settles:
    'how many litres of concentrate and water a filling takes, which cans that is, and what goes into the drum',
  also: [
    'how much antifreeze',
    'coolant order',
    'canisters',
    'price of coolant',
    'cleaner dose',
    'waste coolant',
  ],
  inputs: [
    {
      kind: 'quantity',
      name: 'filling',
      label: 'To be filled',
      hint: 'What came out, and half a litre over; the whole capacity after a flush.',
      dimension: 'volume',
      unit: 'l',
      default: '6.0 l',
      limits: ['0.2 l', '200 l'],
      figure: { path: 'coolant.capacity', end: 'middle' },
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'wanted',
      label: 'Strength wanted, by volume',
      dimension: 'share',
      unit: '%',
      default: '50 %',
      limits: ['10 %', '70 %'],
      figure: { path: 'coolant.mixture', end: 'middle' },
    },
    {
      kind: 'choice',
      name: 'kind',
      label: 'Bought as',
      default: 'concentrate',
      options: [
        { value: 'concentrate', label: 'concentrate' },
        { value: 'ready', label: 'ready mix' },
      ],
    },
    {
      kind: 'quantity',
      name: 'ready',
      label: 'Ready mix is',
      dimension: 'share',
      unit: '%',
      default: '50 %',
      limits: ['20 %', '70 %'],
      when: { kind: ['ready'] },
    },
    canSize('small', 'A can holds', '1.5 l', false),
    canPrice('small-price', 'and costs'),
    canSize('large', 'Or a larger one holds', '5 l', true),
    canPrice('large-price', 'and costs'),
    {
      kind: 'word',
      name: 'currency',
      label: 'Currency',
      default: '',
      asMeant: (typed) => typed.toUpperCase(),
      pattern: /^[A-Z]{3}$/,
      expected: 'three letters, such as EUR',
    },
    {
      kind: 'quantity',
      name: 'drained',
      label: 'Comes out at a draining',
      dimension: 'volume',
      unit: 'l',
      default: '',
      limits: ['0 l', '200 l'],
      figure: { path: 'coolant.drain', end: 'middle' },
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'rinses',
      label: 'Rinses with water',
      dimension: 'plain',
      unit: '',
      default: '0',
      limits: ['0', '8'],
    },
    {
      kind: 'quantity',
      name: 'cleaner',
      label: 'Cleaner for a litre of the system',
      hint: 'From its label: 300 ml for 8 l is 38 ml. Empty without cleaner.',
      dimension: 'volume',
      unit: 'ml',
      default: '',
      limits: ['1 ml', '300 ml'],
      optional: true,
    },
  ],
  answer(values, show): Answer | Refusal {
    const wanted = volumeFraction(values.number('wanted'));
    const isReady = values.choice('kind') === 'ready';
    const strength = volumeFraction(isReady ? values.number('ready') : 1);
    if (wanted > strength + LAST_BITS)
      return refuse(
        'wanted',
        `Out of ready mix of ${show.quantity(strength, '%', 0)} no ${show.quantity(wanted, '%', 0)} is made. Buy concentrate for it.`,
      );
    const filling = cubicMetre(values.number('filling'));
    const { coolant, water } = partsOf(filling, volumeFraction(Math.min(wanted, strength)), strength);
    const sizes = sizesOf(values);
    const order = cansFor(coolant, sizes);
    const cans = cansText(order, sizes, show);
    const currency = values.word('currency');
    const price = order.price === undefined ? '' : money(order.price, currency);
    const what = isReady ? 'ready mix' : 'concentrate';
    const made = `${litres(coolant, show)} of ${what}${water > 1e-6 ? ` and ${litres(water, show)} of water the maker allows` : ''}`;
    return {
      sentence: `Buy ${cans}${price === '' ? '' : `, ${price}`}: the filling takes ${made}.${strengthWord(wanted)}`,
      tone: wanted > USUAL.strong + LAST_BITS || wanted < USUAL.weak - LAST_BITS ? 'look' : 'fine',
      figures: [
        { label: isReady ? 'Ready mix' : 'Concentrate', value: litres(coolant, show) },
        ...(water > 1e-6
          ? [{ label: 'Water', value: litres(water, show), note: 'distilled or as the maker says' }]
          : []),
        { label: 'Cans', value: cans, note: `${litres(order.over, show)} left over` },
        ...(price === '' ? [] : [{ label: 'Price of the cans', value: price }]),
        ...cleanerFigure(values, filling, show),
        ...wasteFigure(values, show),
      ],
      notes: [
        'The family of coolant stands on the can and in the maker’s book; colour tells nothing. Two that are not alike are flushed, not mixed.',
        'Glycol is poison and tastes sweet: no open vessel, nothing into the drain, what came out goes to the licensed collector.',
      ],
    };
  },
  method: {
    formula:
      'from the can = filling × strength wanted / strength of the can; cans: the cheapest pair that suffices, without prices the one with least left over; waste = draining × (rinses + 1)',
    sources: [
      'conservation of volume, by volumes before mixing',
      'strengths of 40 to 60 %: common practice, no source',
    ],
    valid: 'fillings of 0.2 to 200 l, one or two sizes of can',
    error: 'a mixture takes up to 1 % less room than its parts; as good as the litres typed',
  },
};

function sizesOf(values: Values): CanSize[] {
  return ['small', 'large'].flatMap((name) => {
    const holds = values.optional(name);
    const price = values.optional(`${name}-price`);
    return holds === undefined ? [] : [{ holds: cubicMetre(holds), ...(price !== undefined && { price }) }];
  });
}

/** "1 of 1.5 l and 1 of 5 l" */
function cansText(order: Order, sizes: readonly CanSize[], show: QuantityFormatter): string {
  const bought = order.cans.flatMap((count, at) => {
    const size = sizes[at];
    return count === 0 || !size ? [] : [`${count} of ${litres(size.holds, show)}`];
  });
  return bought.length === 0 ? 'no can' : bought.join(' and ');
}

function strengthWord(wanted: number): string {
  if (wanted > USUAL.strong + LAST_BITS)
    return ' That strong it protects no further and carries less heat; ask the maker’s book.';
  if (wanted < USUAL.weak - LAST_BITS)
    return ' That thin it is short of inhibitor as well as of frost protection; ask the maker’s book.';
  return '';
}

function cleanerFigure(values: Values, filling: number, show: QuantityFormatter): AnswerFigure[] {
  const dose = values.optional('cleaner');
  return dose === undefined
    ? []
    : [
        {
          label: 'Cleaner',
          value: show.quantity(dose * filling * 1e3, 'ml', 0),
          note: 'for the litres filled, by its label',
        },
      ];
}

function wasteFigure(values: Values, show: QuantityFormatter): AnswerFigure[] {
  const drained = values.optional('drained');
  if (drained === undefined) return [];
  const all = drained * (Math.round(values.number('rinses')) + 1);
  return [{ label: 'Into the waste drum', value: litres(all, show), note: 'rinsing water holds glycol too' }];
}

function litres(si: number, show: QuantityFormatter): string {
  return show.quantity(si, 'l', 1);
}

function money(amount: number, currency: string): string {
  const text = amount.toFixed(Number.isInteger(amount) ? 0 : 2);
  return currency === '' ? text : `${text}\u00a0${currency}`;
}
