/** What the customer reads: values, of each kind the last, before and after side by side, and a price that says what is in it. */
import { expect, test } from 'vitest';
import { estimate } from '../../../../src/calculators/estimate.ts';
import { workOut } from '../../../../src/calculators/work-out.ts';
import {
  beforeAndAfter,
  didDraft,
  isForCustomer,
  priceLines,
  readingsForCustomer,
} from '../../../../src/site/job/page/for-customer.ts';
import { newJob } from '../../../../src/site/job/page/new-job.ts';
import { earlierJobs, isCalled } from '../../../../src/site/job/page/same-car.ts';
import { withHandedOver } from '../../../../src/site/job/page/with-handed-over.ts';

const AT = '2026-11-25T10:00:00.000Z';
const reading = (what: string, value: string, customer?: boolean) => ({
  id: `r-${what}-${value}`.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-'),
  at: AT,
  what,
  value,
  ...(customer !== undefined && { customer }),
});

test.each([
  ['88 °C', true],
  ['1.4 bar over 10 min', true],
  ['About 1.4 l of air is still inside. Do not start it for a drive like this.', false],
  ['Book 6 h 30 min. Tell the customer 291 EUR, up to 442 EUR if it hides.', false],
  ['Bleed it.', false],
])('unasked, “%s” is for the customer: %s', (value, is) => {
  expect(isForCustomer(reading('X', value))).toBe(is);
  expect(isForCustomer(reading('X', value, !is))).toBe(!is);
});

test('of each kind the last', () => {
  const all = [
    reading('Freeze point', '−22 °C'),
    reading('Fan in at', '97 °C'),
    reading('freeze point ', '−37 °C'),
  ];
  expect(readingsForCustomer(all).map(({ value }) => value)).toEqual(['−37 °C', '97 °C']);
});

test('the last run before and the last after stand side by side', () => {
  const run = (when: 'before' | 'after', value: string, what = 'Holds') => ({
    ...{ id: `p-${value}`, at: AT, when, says: '' },
    rows: [{ what, value, wanted: '84 to 96 °C', passed: 'pass' as const }],
  });
  expect(beforeAndAfter(undefined)).toBeUndefined();
  expect(
    beforeAndAfter([
      run('before', '60'),
      run('before', '61'),
      run('after', '88'),
      run('after', '2', 'Leaks'),
    ]),
  ).toEqual([
    { what: 'Holds', wanted: '84 to 96 °C', before: '61', after: '' },
    { what: 'Leaks', wanted: '84 to 96 °C', before: '', after: '2' },
  ]);
});

test('an estimate is without parts until they are typed, and has the tax that is typed; what was agreed stands above it', () => {
  const told = (fields: Record<string, string>) => {
    const out = workOut(estimate, {
      find: '40',
      'find-nine': '75',
      repair: '60',
      extra: '20',
      rate: '60',
      currency: 'EUR',
      ...fields,
    });
    if (!out.ok) throw new Error(JSON.stringify(out.faults));
    return out.answer;
  };
  // 120 min and 155 min at 60 an hour, booked up to the next quarter of an hour: by hand.
  expect(told({ parts: '' }).sentence).toBe(
    'Book 2\u00a0h\u00a045\u00a0min. Tell the customer 120\u00a0EUR, up to 155\u00a0EUR if it hides, without parts.',
  );
  // (120 + 80) and (155 + 80), with a fifth on top.
  const whole = told({ parts: '80', tax: '20' });
  expect(whole.sentence).toContain('Tell the customer 240\u00a0EUR, up to 282\u00a0EUR if it hides.');
  const job = withHandedOver(newJob(), whole.onCard ?? {}, undefined);
  expect(priceLines(job)).toEqual([
    'Estimate: 240\u00a0EUR, at most 282\u00a0EUR, parts 80\u00a0EUR included, tax of 20 % included.',
  ]);
  const bare = withHandedOver(newJob(), told({ parts: '' }).onCard ?? {}, undefined);
  expect(priceLines(bare)).toEqual(['Estimate: 120\u00a0EUR, at most 155\u00a0EUR, without parts.']);
  expect(priceLines({ ...bare, agreed: '290 EUR', limit: '350 EUR' })).toEqual([
    'Agreed: 290 EUR.',
    'Without a call no more than 350 EUR.',
  ]);
});

test('the fill account and the card keep one account of litres', () => {
  const account = (job = newJob(), drained = 3.6, filled = 2.2) =>
    withHandedOver(job, { litres: { drained, filled } }, undefined);
  const sums = ({ litres }: ReturnType<typeof newJob>) =>
    litres.map(({ way, litres: each }) => `${way} ${each}`);
  const first = account();
  expect(sums(first)).toEqual(['drained 3.6', 'filled 2.2']);
  // More went in: the rest is an entry of its own, and the level of the next morning is open.
  const second = account(first, 3.6, 3.5);
  expect(sums(second)).toEqual(['drained 3.6', 'filled 2.2', 'filled 1.3']);
  expect(second.open).toHaveLength(1);
  expect(sums(account(second, 3.6, 3.5))).toEqual(sums(second));
  // Less than stood there was a wrong entry: what it was is kept in a remark.
  const mended = account(second, 3.4, 3.5);
  expect(sums(mended)).toEqual(['drained 3.4', 'filled 3.5']);
  expect(mended.remarks[0]?.text).toContain('Drained 3.6 l, filled 3.5 l');
});

test('what was done is drafted from ticked work and tightened joints', () => {
  const job = {
    ...newJob(),
    steps: {
      'thermostat-replace': { title: 'Replace the thermostat', done: [{ step: 1, at: AT, what: 'Drain' }] },
    },
    torques: { 'thermostat-housing': { at: AT, what: 'Thermostat housing', figure: '10 N·m' } },
  };
  expect(didDraft(job)).toBe('Replace the thermostat.\nTightened to the figure: thermostat housing 10 N·m.');
  expect(didDraft(newJob())).toBe('');
});

test('a car is found again by its plate however it is written', () => {
  const card = (id: string, plate: string, opened = AT) => ({ ...newJob(), id, plate, opened });
  const now = card('job-now', 'SL 44 KTR');
  const all = [
    now,
    card('job-a', 'sl44ktr', '2026-10-01T08:00:00.000Z'),
    card('job-b', 'SL-44-KTR', '2026-09-01T08:00:00.000Z'),
    card('job-c', 'SL 44 KTS'),
    card('job-d', ''),
  ];
  expect(earlierJobs(now, all).map(({ id }) => id)).toEqual(['job-a', 'job-b']);
  expect(earlierJobs(card('job-e', ' '), all)).toEqual([]);
  expect(isCalled(now, '44ktr')).toBe(true);
  expect(isCalled({ ...now, customer: 'Rowan Ashby' }, 'ashby sl')).toBe(true);
  expect(isCalled(now, 'ashby')).toBe(false);
});
