/** Time to book and price, from minutes of finding and mending. */
import type { Answer, Calculator, QuantityInput, Refusal } from './declaration.ts';
import { refuse } from './refuse.ts';

/** Bookings are made in quarters of an hour. Common practice, no source. */
const QUARTER = 900;

function minutes(name: string, label: string, value: string, hint: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'time',
    unit: 'min',
    default: value,
    limits: ['0 min', '100 h'],
    reading: true,
  };
}

export const estimate: Calculator = {
  id: 'estimate',
  title: 'Estimate',
  settles: 'how long to book and what to tell the customer it will cost',
  also: ['quote', 'price', 'labour time', 'actual time', 'booking', 'how long to book', 'hourly rate'],
  inputs: [
    minutes('find', 'Finding it, on average', '40 min', 'At the counter’s side of the symptom.'),
    minutes('find-nine', 'Finding it, nine in ten within', '75 min', 'From the same place.'),
    minutes('repair', 'The repair', '60 min', 'From the procedure.'),
    minutes('extra', 'Proof run, filling, washing up', '30 min', 'Warm-up and road test take their time.'),
    {
      kind: 'quantity',
      name: 'parts',
      label: 'Parts and coolant, in all',
      dimension: 'plain',
      unit: '',
      default: '45',
      limits: ['0', '100000000'],
      reading: true,
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'tax',
      label: 'Tax on top, per cent',
      hint: 'Empty where prices are told without it.',
      dimension: 'plain',
      unit: '',
      default: '',
      limits: ['0', '100'],
      optional: true,
    },
    {
      kind: 'quantity',
      name: 'rate',
      label: 'Rate for an hour',
      hint: 'Leave it empty for the time alone.',
      dimension: 'plain',
      unit: '',
      default: '',
      limits: ['0', '1000000'],
      optional: true,
    },
    {
      ...minutes('took', 'It took, afterwards', '', 'Empty while the work is not done.'),
      optional: true,
    },
    {
      kind: 'word',
      name: 'currency',
      label: 'Currency',
      default: '',
      asMeant: currencyMeant,
      pattern: /^[A-Z]{3}$/,
      expected: 'three letters, such as EUR',
    },
  ],
  answer(values): Answer | Refusal {
    const find = values.number('find');
    const findNine = values.number('find-nine');
    if (findNine < find)
      return refuse('find-nine', 'Nine in ten cannot be shorter than the average. Change one of the two.');
    const work = values.number('repair') + values.number('extra');
    const [expected, nine] = [find + work, findNine + work];
    if (nine === 0)
      return refuse('repair', 'All minutes are nought. Write how long at least one of them takes.');
    const booked = Math.ceil(nine / QUARTER - 1e-9) * QUARTER;
    const rate = values.optional('rate');
    const parts = values.optional('parts');
    const currency = values.word('currency');
    const percent = values.optional('tax');
    const priced = (seconds: number) =>
      money(((parts ?? 0) + ((rate ?? 0) * seconds) / 3600) * (1 + (percent ?? 0) / 100), currency);
    const missing = parts === undefined ? ' without parts' : '';
    const price =
      rate === undefined
        ? ''
        : priced(expected) === priced(nine)
          ? ` Tell the customer ${priced(expected)}${missing}.`
          : ` Tell the customer ${priced(expected)}, up to ${priced(nine)} if it hides${missing && `,${missing}`}.`;
    const took = values.optional('took');
    const over = took === undefined ? 0 : took - nine;
    return {
      sentence: took === undefined ? `Book ${clock(booked)}.${price}` : takenText(took, over, expected),
      // A second is no minute.
      tone: over > 1 || (took !== undefined && took < FAR_UNDER * expected) ? 'look' : 'fine',
      figures: [
        ...(took === undefined || rate === undefined
          ? []
          : [
              {
                label: 'Price by the time it took',
                value: priced(took),
                note: 'what was told holds unless the customer agreed',
              },
            ]),
        { label: 'On average it takes', value: clock(expected) },
        { label: 'Nine in ten take no more than', value: clock(nine) },
        ...(rate === undefined
          ? []
          : [
              { label: 'Price on average', value: priced(expected) },
              { label: 'Price, nine in ten at most', value: priced(nine) },
              {
                label: 'Of that parts',
                value: parts === undefined ? 'not counted yet' : money(parts, currency),
              },
            ]),
      ],
      onCard: {
        estimate: {
          book: clock(booked),
          price: rate === undefined ? '' : priced(expected),
          most: rate === undefined ? '' : priced(nine),
          ...(parts !== undefined && { parts: money(parts, currency) }),
          ...(percent !== undefined && { tax: `${percent} %` }),
        },
      },
      notes: [
        'An estimate for the cause expected, not a promise: if finding shows another, ring before going on. Taxes as your shop states them.',
      ],
    };
  },
  method: {
    formula:
      'time = finding + repair + extra; booked = nine-in-ten time, up to the next quarter of an hour; price = (time × rate + parts) × (1 + tax)',
    sources: [
      'minutes of finding: computed from the symptom’s tree and the shares of its causes',
      'minutes of the repair: the procedure on this shelf; common practice, no source',
    ],
    valid: 'one fault at a time, a trained technician, tools at hand',
    error: 'as good as the minutes; nine in ten is for the finding only, a seized bolt is not in it',
  },
};

/** Done in less than this share of the average, either the entry is short or the estimate was. Common practice, no source. */
const FAR_UNDER = 0.5;

/** The time it took beside what was told. */
function takenText(took: number, over: number, expected: number): string {
  if (took < FAR_UNDER * expected)
    return `It took ${clock(took)}, less than half of the ${clock(expected)} told. Is all of it written down? If so, the customer pays for what was done, and why it went so fast stands on the card for the next one.`;
  return over > 1
    ? `It took ${clock(took)}, ${clock(over)} over the time that nine in ten stay within. Write why on the card, and ring before the price moves.`
    : `It took ${clock(took)}, within what was told. The card keeps it for the next one.`;
}

/** Signs that one currency has to itself; a dollar or a crown could be any of several. */
const SIGNS: Readonly<Record<string, string>> = {
  '€': 'EUR',
  '£': 'GBP',
  '₹': 'INR',
  '₺': 'TRY',
  '₴': 'UAH',
};

function currencyMeant(typed: string): string {
  return SIGNS[typed] ?? typed.toUpperCase();
}

/** "2 h 15 min" */
function clock(seconds: number): string {
  const all = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(all / 60), all % 60];
  const parts = [hours > 0 ? `${hours}\u00a0h` : '', rest > 0 || hours === 0 ? `${rest}\u00a0min` : ''];
  return parts.filter((part) => part !== '').join('\u00a0');
}

function money(amount: number, currency: string): string {
  const text = String(Math.round(amount));
  return currency === '' ? text : `${text}\u00a0${currency}`;
}
