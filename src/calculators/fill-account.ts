/** Litres still missing after a refill, and where they are. */
import { accountForFill, EVEN_WITHIN, type FillVerdict } from '../physics/fill-account.ts';
import { cubicMetre } from '../physics/units.ts';
import { CAPACITY } from './coolant-inputs.ts';
import type { Answer, Calculator, Refusal, Values } from './declaration.ts';
import { refuse } from './refuse.ts';

export const fillAccount: Calculator = {
  id: 'fill-account',
  title: 'Fill account',
  settles: 'how many litres are still missing after a refill, and whether they are air',
  also: ['litres missing', 'air trapped', 'took less than drained', 'refill volume', 'low before draining'],
  inputs: [
    {
      ...CAPACITY,
      default: '4.6 l',
      hint: 'Empty where nobody knows: then nothing is held against the whole.',
      reading: true,
      optional: true,
    },
    {
      kind: 'choice',
      name: 'before',
      label: 'The level before draining',
      default: 'unknown',
      options: [
        { value: 'unknown', label: 'nobody looked' },
        { value: 'mark', label: 'stood at the mark' },
        { value: 'low', label: 'was low, or coolant was lost since' },
      ],
    },
    {
      kind: 'quantity',
      name: 'short',
      label: 'Short before, and lost since',
      hint: 'What would have brought it to the mark, and what was spilled. Empty if it cannot be told.',
      dimension: 'volume',
      unit: 'l',
      default: '',
      limits: ['0 l', '60 l'],
      reading: true,
      optional: true,
      when: { before: ['low'] },
    },
    {
      kind: 'quantity',
      name: 'drained',
      label: 'Came out, measured',
      hint: 'In a jug, not by eye: a drain pan hides a litre.',
      dimension: 'volume',
      unit: 'l',
      default: '4.0 l',
      limits: ['0 l', '60 l'],
      // What usually comes out is no measurement: the vehicle's figure may not stand here.
      card: 'drained',
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'refilled',
      label: 'Went back in so far',
      dimension: 'volume',
      unit: 'l',
      default: '2.3 l',
      limits: ['0 l', '60 l'],
      card: 'filled',
      reading: true,
    },
    {
      kind: 'choice',
      name: 'level',
      label: 'The level now',
      default: 'stands',
      options: [
        { value: 'stands', label: 'stands at the mark and takes no more' },
        { value: 'takes', label: 'still goes down' },
      ],
    },
  ],
  answer(values, show): Answer | Refusal {
    const drained = values.number('drained');
    if (values.number('refilled') === 0)
      return refuse(
        'refilled',
        drained === 0
          ? 'Nothing came out and nothing went in: there is nothing to compare. Write what the jug says.'
          : 'Nothing has gone back in yet. Fill it, then write what went in.',
      );
    const capacity = values.optional('capacity');
    const short = shortBefore(values);
    const account = accountForFill({
      ...(capacity !== undefined && { capacity: cubicMetre(capacity) }),
      ...(short !== undefined && { shortBefore: cubicMetre(short) }),
      drained: cubicMetre(drained),
      refilled: cubicMetre(values.number('refilled')),
      takesNoMore: values.choice('level') === 'stands',
    });
    const litres = (si: number) => show.quantity(si, 'l', 1);
    const sayings = sayingsOf({
      missing: litres(account.missing),
      over: litres(-account.missing),
      limit: litres(account.notStarted),
      atLeast: short === undefined && account.missing > 0 && values.choice('before') !== 'mark',
      toppedUp: drained === 0,
      wasLow: values.choice('before') === 'low',
    });
    const { sentence, tone } = sayings[account.verdict];
    const over = Math.max(drained, values.number('refilled')) - (capacity ?? Number.POSITIVE_INFINITY);
    return {
      sentence,
      // A jug may be out by as much as would change the verdict.
      tone:
        over > 0 &&
        over <= account.notStarted &&
        tone === 'stop' &&
        account.missing < account.notStarted - 1e-9
          ? 'look'
          : tone,
      figures: [
        {
          label: short === undefined || short === 0 ? 'Drained less refilled' : 'Belongs in, less refilled',
          value: litres(account.missing),
        },
        ...(account.inside === undefined
          ? []
          : [
              {
                label: short === undefined ? 'Inside now at most' : 'Inside now',
                value: litres(account.inside),
                ...(short === undefined && { note: 'if it was full before' }),
              },
            ]),
        {
          label: 'Counts as even within',
          value: litres(account.allowance),
          note: 'jugs, wet walls, a drop beside the funnel; a tenth of the filling never does',
        },
      ],
      onCard: { litres: { drained: drained * 1e3, filled: values.number('refilled') * 1e3 } },
      notes: [
        'Drained and refilled coolant measured at about the same temperature. Hot coolant fills about a twentieth more room than cold.',
      ],
    };
  },
  method: {
    formula: 'missing = drained + short before − refilled; inside = capacity − missing',
    sources: [
      'conservation of volume',
      `even within ${EVEN_WITHIN.usual * 1e3} l (${EVEN_WITHIN.large * 1e3} l in systems above ${EVEN_WITHIN.largeAbove * 1e3} l), not started from 0.2 l more: common practice, no source`,
    ],
    valid: 'systems of 1 to 60 l',
    error: 'as good as the jug; about 0.1 l with a marked one',
  },
};

/** What was missing before, m³; undefined when nobody knows. */
function shortBefore(values: Values): number | undefined {
  const before = values.choice('before');
  return before === 'mark' ? 0 : before === 'low' ? values.optional('short') : undefined;
}

interface FillWords {
  missing: string;
  over: string;
  /** From here on it is not started. */
  limit: string;
  /** More may be missing than was counted. */
  atLeast: boolean;
  toppedUp: boolean;
  wasLow: boolean;
}

function sayingsOf({
  missing,
  over,
  limit,
  atLeast,
  toppedUp,
  wasLow,
}: FillWords): Record<FillVerdict, Pick<Answer, 'sentence' | 'tone'>> {
  const more = atLeast ? ', more if it was low before' : '';
  return {
    'air inside': {
      sentence: `About ${missing} of air is still inside${more}. Look at the vent path first: bleed screws open, vent line clear, heater on hot, front of the car up. Do not start it for a drive like this.`,
      tone: 'stop',
    },
    'a little short': {
      sentence: `About ${missing} is still missing${more}, more than a jug is out. Go over the bleed points once more and squeeze the hoses; from ${limit} on it is not started.`,
      tone: 'look',
    },
    'keep filling': {
      sentence: `About ${missing} has still to go in${more}. Pour slowly and keep the bleed points open.`,
      tone: 'look',
    },
    'still sinking': {
      sentence:
        'All that is known of is back in, and it still goes down: it was lower before than thought, or it runs out. Look under the car first, then go on filling slowly and count what it takes.',
      tone: 'look',
    },
    full: {
      sentence: toppedUp
        ? 'Topped up by no more than a level may be out. Look at it again cold, after a drive.'
        : wasLow
          ? 'What came out and what was short are back in. Bleed it, run it up and look at the level again cold; find where it went.'
          : 'What came out is back in. Bleed it, run it up and look at the level again cold.',
      tone: 'fine',
    },
    'even, if it was full before': {
      sentence: toppedUp
        ? 'Topped up by no more than a level may be out. Look at it again cold, after a drive.'
        : wasLow
          ? 'As much went in as came out, and it was low before: what was short then is still missing, and is air now. Bleed it until it takes that too.'
          : 'As much went in as came out. Where did the level stand before draining? Was it low, the same is missing still.',
      tone: toppedUp ? 'fine' : 'look',
    },
    'took more than drained': {
      sentence: `It took ${over} more than ${wasLow ? 'came out and was short' : 'came out'}. It was ${wasLow ? 'lower' : 'low'} before, so look for the loss; or it is running out below, so look under it now.`,
      tone: 'look',
    },
    'drained more than it holds': {
      sentence:
        'More came out than the whole system holds. One of the two figures is wrong: measure the drained coolant again and check the capacity for this engine.',
      tone: 'stop',
    },
    'took more than it holds': {
      sentence:
        'More went in than the whole system holds. It runs out somewhere, or the capacity is for another engine. Look under the car and into the oil before pouring on.',
      tone: 'stop',
    },
  };
}
