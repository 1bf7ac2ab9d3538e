/** When coolant is due next: years or kilometres from the last change, whichever comes first. */
import { writtenDay } from '../model/written-day.ts';
import { AT_THIS_VISIT, daysBetween, monthsAfter, nextChange, paceOf } from '../physics/coolant-change.ts';
import type {
  Answer,
  Calculator,
  QuantityFormatter,
  QuantityInput,
  Refusal,
  Values,
  WordInput,
} from './declaration.ts';
import { refuse } from './refuse.ts';

/** Before it no car on a lift was filled. */
const EARLIEST = '1980-01-01';
const MONTH = (365.25 / 12) * 86_400;
const SLACK = 1e-6;

function day(name: string, label: string, hint: string, example: string): WordInput {
  return {
    kind: 'word',
    name,
    label,
    hint,
    default: example,
    asMeant(typed) {
      const read = writtenDay(typed);
      return read && 'day' in read ? read.day : `${typed} `;
    },
    pattern: /^\d{4}-\d{2}-\d{2}$/,
    expected: 'a day of the calendar with the year first, such as 2026-11-30',
  };
}

function distance(name: string, label: string, hint: string, limits: [string, string]): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'length',
    unit: 'km',
    default: '',
    limits,
    optional: true,
    reading: true,
  };
}

export const coolantChange: Calculator = {
  id: 'coolant-change',
  title: 'Next coolant change',
  settles: 'the day or the kilometres at which coolant is due, and whether it is changed at this visit',
  also: [
    'coolant interval',
    'coolant service due',
    'when to change coolant',
    'antifreeze change date',
    'overdue coolant',
  ],
  inputs: [
    {
      ...day('last', 'Last changed on', 'On the tag, in the book or on the last card.', '2024-03-15'),
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'every',
      label: 'To be changed every',
      hint: 'The maker’s figure for this coolant. Without one about 2 years for silicate, 3 to 5 for hybrid, 5 for organic acid.',
      dimension: 'time',
      unit: 'years',
      default: '5 years',
      limits: ['1 month', '20 years'],
    },
    distance('every-distance', 'Or every', 'If the maker gives one: whichever comes first.', [
      '1000 km',
      '1000000 km',
    ]),
    distance('stood-then', 'It stood at then', '', ['0 km', '2000000 km']),
    distance('stands-now', 'It stands at now', '', ['0 km', '2000000 km']),
    distance('a-year', 'Driven in a year', 'Empty: from the two readings.', ['100 km', '400000 km']),
    { ...day('day', 'Day of this visit', 'Empty: only the date is worked out.', ''), today: true },
  ],
  answer(values, show): Answer | Refusal {
    const last = values.word('last');
    const today = values.word('day');
    const known = checked(values, last, today);
    if ('refused' in known) return known;
    const { driven } = known;
    const months = Math.floor(values.number('every') / MONTH + SLACK);
    if (months < 1) return refuse('every', 'Write a month at least, such as 2 years.');
    const every = values.optional('every-distance');
    const pace =
      values.optional('a-year') ??
      (driven === undefined || today === '' ? undefined : paceOf(last, today, driven));
    const next = nextChange({
      last,
      months,
      ...(every !== undefined && { distance: every }),
      ...(pace !== undefined && { pace }),
      ...(driven !== undefined && today !== '' && { seen: { day: today, driven } }),
    });
    const left = every === undefined || driven === undefined ? undefined : every - driven;
    const stood = values.optional('stood-then');
    const dueAt = every === undefined || stood === undefined ? undefined : stood + every;
    const kilometres = (si: number) => show.quantity(si, 'km', 0);
    return {
      ...verdictOf({ next: next.first, today, left, dueAt }, show),
      figures: [
        { label: 'Due by the calendar', value: next.byCalendar },
        ...(dueAt === undefined ? [] : [{ label: 'Due by distance at', value: kilometres(dueAt) }]),
        ...(next.byDistance === undefined || pace === undefined
          ? []
          : [
              {
                label: 'That distance is driven by about',
                value: next.byDistance,
                note: `at ${kilometres(pace)} a year`,
              },
            ]),
        ...(left === undefined || left < 0 ? [] : [{ label: 'Still to drive', value: kilometres(left) }]),
      ],
      notes: [
        'The maker’s interval stands above any other. A strength, a strip or a look that fails comes before the date: rust, sludge, oil in it, or the wrong kind topped up.',
        'Write day, kilometres and kind of coolant on a tag at the bottle; the next one asks for exactly these.',
      ],
    };
  },
  method: {
    formula:
      'day = last change + interval in months of the calendar; distance = odometer then + interval; its day = last change + interval / distance a year; the earlier one counts',
    sources: [
      'ISO 8601 calendar; a month on from the 31st ends on the last day of a shorter month',
      'interval: the maker’s; where there is none, the packs’ usual 2 to 5 years: common practice, no source',
      `changed at this visit within ${AT_THIS_VISIT.months} months or ${AT_THIS_VISIT.distance / 1e3} km of it: common practice, no source`,
    ],
    valid: 'changes from 1980 on, intervals of one month to twenty years',
    error:
      'the day by the calendar is exact; the day of the distance is as good as the pace: a tenth more driven a year is a tenth sooner',
  },
};

/** What was driven since, or what does not fit together. */
function checked(values: Values, last: string, today: string): { driven: number | undefined } | Refusal {
  if (last === '')
    return refuse(
      'last',
      'Write the day of the last change. If nobody knows it, the coolant counts as due: change it, and start from that day.',
    );
  if (last < EARLIEST) return refuse('last', `Write a day from ${EARLIEST} on.`);
  if (today !== '' && daysBetween(last, today) < 0)
    return refuse('last', 'The last change would be after this visit. Look at both days again.');
  const [then, now] = [values.optional('stood-then'), values.optional('stands-now')];
  if (now !== undefined && then === undefined && values.optional('every-distance') !== undefined)
    return refuse(
      'stood-then',
      'Without what it stood at then, the kilometres cannot be counted. Write it, or leave the kilometres out and go by the years.',
    );
  if (now === undefined || then === undefined) return { driven: undefined };
  return now < then
    ? refuse(
        'stands-now',
        'It stands at less now than it stood at then. Another cluster, or miles for kilometres?',
      )
    : { driven: now - then };
}

interface Due {
  next: string;
  today: string;
  /** Metres left to the interval. */
  left: number | undefined;
  dueAt: number | undefined;
}

function verdictOf(
  { next, today, left, dueAt }: Due,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const kilometres = (si: number) => show.quantity(si, 'km', 0);
  const at = dueAt === undefined ? '' : ` or at ${kilometres(dueAt)}, whichever comes first`;
  const over = left !== undefined && left < -SLACK ? `${kilometres(-left)} over` : undefined;
  const late = today !== '' && today > next;
  if (over !== undefined || late)
    return {
      sentence: `Overdue: ${[...(late ? [`due on ${next}`] : []), ...(over === undefined ? [] : [over])].join(', ')}. Change it now, and look at what comes out: colour, rust, sludge.`,
      tone: 'look',
    };
  if (today === next || (left !== undefined && left <= SLACK))
    return { sentence: 'Due now. Change it at this visit, and write the day on the tag.', tone: 'look' };
  const soon = today !== '' && monthsAfter(today, AT_THIS_VISIT.months) >= next;
  if (soon || (left !== undefined && left <= AT_THIS_VISIT.distance + SLACK))
    return {
      sentence: `Change it at this visit: due by ${next}${at}, and the car is hardly back before.`,
      tone: 'look',
    };
  return { sentence: `Next change by ${next}${at}.`, tone: 'fine' };
}
