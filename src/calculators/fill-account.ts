/** Litres still missing after a refill, and where they are. */
import { accountForFill } from '../physics/fill-account.ts';
import { cubicMetre } from '../physics/units.ts';
import { CAPACITY } from './coolant-inputs.ts';
import type { Answer, Calculator, Refusal } from './declaration.ts';

export const fillAccount: Calculator = {
  id: 'fill-account',
  title: 'Fill account',
  settles: 'how many litres are still missing after a refill, and whether they are air',
  also: ['litres missing', 'air trapped', 'took less than drained', 'refill volume'],
  inputs: [
    { ...CAPACITY, default: '4.6 l' },
    {
      kind: 'quantity',
      name: 'drained',
      label: 'Came out, measured',
      hint: 'In a jug, not by eye: a drain pan hides a litre.',
      dimension: 'volume',
      unit: 'l',
      default: '4.0 l',
      limits: ['0 l', '60 l'],
      figure: { path: 'coolant.drain', end: 'middle' },
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
    if (values.number('refilled') === 0)
      return {
        refused: {
          name: 'refilled',
          message:
            values.number('drained') === 0
              ? 'Nothing came out and nothing went in: there is nothing to compare. Write what the jug says.'
              : 'Nothing has gone back in yet. Fill it, then write what went in.',
        },
      };
    const account = accountForFill({
      capacity: cubicMetre(values.number('capacity')),
      drained: cubicMetre(values.number('drained')),
      refilled: cubicMetre(values.number('refilled')),
      takesNoMore: values.choice('level') === 'stands',
    });
    const missing = show.quantity(account.missing, 'l', 1);
    const over = show.quantity(-account.missing, 'l', 1);
    const { sentence, tone } = {
      'air inside': {
        sentence: `About ${missing} of air is still inside. Look at the vent path first: bleed screws open, vent line clear, heater on hot, front of the car up. Do not start it for a drive like this.`,
        tone: 'stop' as const,
      },
      'keep filling': {
        sentence: `About ${missing} has still to go in. Pour slowly and keep the bleed points open.`,
        tone: 'look' as const,
      },
      full: {
        sentence:
          values.number('drained') === 0
            ? 'Topped up by no more than a level may be out. Look at it again cold, after a drive.'
            : 'What came out is back in. Bleed it, run it up and look at the level again cold.',
        tone: 'fine' as const,
      },
      'took more than drained': {
        sentence: `It took ${over} more than came out. It was low before, so look for the loss; or it is running out below, so look under it now.`,
        tone: 'look' as const,
      },
      'drained more than it holds': {
        sentence:
          'More came out than the whole system holds. One of the two figures is wrong: measure the drained coolant again and check the capacity for this engine.',
        tone: 'stop' as const,
      },
      'took more than it holds': {
        sentence:
          'More went in than the whole system holds. It runs out somewhere, or the capacity is for another engine. Look under the car and into the oil before pouring on.',
        tone: 'stop' as const,
      },
    }[account.verdict];
    return {
      sentence,
      tone,
      figures: [
        { label: 'Drained less refilled', value: missing },
        { label: 'Inside now, if it was full before', value: show.quantity(account.inside, 'l', 1) },
        {
          label: 'Counts as even within',
          value: show.quantity(account.allowance, 'l', 2),
          note: 'jugs, wet walls, a drop beside the funnel',
        },
      ],
      notes: [
        'Drained and refilled coolant measured at about the same temperature. Hot coolant fills about a twentieth more room than cold.',
      ],
    };
  },
  method: {
    formula: 'missing = drained − refilled; inside = capacity − missing',
    sources: [
      'conservation of volume',
      'allowance of a twentieth of the capacity: common practice, no source',
    ],
    valid: 'systems of 1 to 60 l, full before they were drained',
    error: 'as good as the jug; about 0.1 l with a marked one',
  },
};
