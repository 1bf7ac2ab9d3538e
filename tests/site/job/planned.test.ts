import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/model/job.ts';
import { jobSchema } from '../../../src/model/job.ts';
import { planOf } from '../../../src/site/job/build/make-job-plan.ts';
import type { JobPlan, PlannedWork } from '../../../src/site/job/job-plan.ts';
import { closeItem, stillOpen, withFollowUp, withOpenItem } from '../../../src/site/job/page/follow-up.ts';
import { isJob } from '../../../src/site/job/page/job-store.ts';
import { jobTitle, newJob } from '../../../src/site/job/page/new-job.ts';
import { tickStep } from '../../../src/site/job/page/steps.ts';
import {
  cautionsOf,
  coolantLine,
  coolantOf,
  estimateAddress,
  jointsOf,
  minutesOf,
  partsFor,
  workFor,
} from '../../../src/site/job/planned.ts';
import { entriesOf } from '../../../src/site/shelf/record-pages.ts';

function work(id: string, given: Partial<PlannedWork>): PlannedWork {
  return {
    id,
    title: id,
    minutes: 10,
    parts: [],
    consumables: [],
    cautions: [],
    joints: [],
    stage: 'repair',
    followedBy: [],
    ...given,
  };
}

const PUMP: JobPlan = {
  id: 'pump-worn',
  title: 'Pump worn',
  mechanism: '',
  comesBack: '',
  parts: ['Pump with gasket'],
  consumables: ['Rags'],
  coolant: { amount: 'what is lost' },
  general: {},
  work: [
    work('choose', { minutes: 20, parts: ['Pump'], followedBy: ['by-belt', 'by-timing-belt'] }),
    work('by-belt', {
      minutes: 120,
      layout: { pump: ['accessory belt'] },
      followedBy: ['fill'],
      joints: [{ joint: 'water-pump' }, { joint: 'fan-clutch', layout: { fan: ['viscous clutch'] } }],
    }),
    work('by-timing-belt', {
      minutes: 240,
      layout: { pump: ['timing belt'] },
      followedBy: ['belt-only', 'fill'],
    }),
    work('belt-only', { minutes: 5 }),
    work('fill', {
      minutes: 50,
      stage: 'fill',
      consumables: ['rags', 'Seal'],
      followedBy: ['hand-back'],
      cautions: [
        { id: 'scald', title: 'scald' },
        { id: 'high-voltage', title: 'high voltage', layout: { power: ['hybrid', 'battery electric'] } },
      ],
    }),
    work('hand-back', { minutes: 15, cautions: [{ id: 'scald', title: 'scald' }] }),
  ],
};
const BELT = { pump: 'accessory belt', fan: 'electric, one stage', power: 'combustion' };

describe('a plan for one vehicle', () => {
  const own = workFor(PUMP, BELT);
  test('goes the way of its layout; what only the other way is followed by falls away', () => {
    expect(own.map(({ id }) => id)).toEqual(['choose', 'by-belt', 'fill', 'hand-back']);
    expect(workFor(PUMP, {}).map(({ id }) => id)).toEqual(PUMP.work.map(({ id }) => id));
  });
  test('the repair ends where filling begins', () => {
    expect(minutesOf(own)).toEqual({ repair: 140, extra: 65 });
    expect(minutesOf([])).toEqual({ repair: 0, extra: 0 });
  });
  test('its joints and its cautions, each once', () => {
    expect(jointsOf(own, BELT)).toEqual(['water-pump']);
    expect(jointsOf(own, { ...BELT, fan: 'viscous clutch' })).toEqual(['water-pump', 'fan-clutch']);
    expect(cautionsOf(own, BELT).map(({ id }) => id)).toEqual(['scald']);
    expect(cautionsOf(own, {}).map(({ id }) => id)).toEqual(['scald', 'high-voltage']);
  });
  test('one parts list: the cause’s parts for the repair’s, nothing twice, coolant in litres only', () => {
    expect(partsFor(PUMP, own)).toEqual([
      { title: 'choose', parts: ['Pump with gasket'], consumables: ['Rags'] },
      { title: 'fill', parts: [], consumables: ['Seal'] },
    ]);
    expect(partsFor({ ...PUMP, parts: [] }, own)[0]?.parts).toEqual(['Pump']);
  });
  describe('the coolant of all its works is one line', () => {
    const named = (coolant: JobPlan['coolant'], stage: PlannedWork['stage']) => {
      const fill = work('fill', {
        stage,
        coolant: { amount: 'what is lost', note: 'concentrate or premix of the right family' },
      });
      const plan = { ...PUMP, coolant, work: [work('choose', {}), fill] };
      return { coolant: coolantOf(plan, plan.work), parts: partsFor(plan, plan.work) };
    };
    test('where it is filled the litres tell of it, and nothing that was said is lost', () => {
      const { coolant, parts } = named({ amount: 'what is lost', note: 'for the hose emptied' }, 'fill');
      expect(coolant).toEqual({
        whole: false,
        notes: ['for the hose emptied', 'concentrate or premix of the right family'],
      });
      expect(coolant && coolantLine('Coolant, 4 l', coolant)).toBe(
        'Coolant, 4 l: for the hose emptied; concentrate or premix of the right family',
      );
      expect(parts).toEqual([{ title: 'choose', parts: ['Pump with gasket'], consumables: ['Rags'] }]);
    });
    test('the whole system counts when one work asks for it', () => {
      expect(named({ amount: 'the whole system' }, 'fill').coolant?.whole).toBe(true);
    });
    test('where none is filled it stands with the repair', () => {
      expect(named({ amount: 'what is lost' }, 'repair').parts[0]?.consumables).toEqual([
        'Coolant: concentrate or premix of the right family',
        'Rags',
      ]);
    });
    test('a repair without coolant names none', () => {
      const plan = { ...PUMP, coolant: undefined, work: [work('choose', {})] };
      expect(coolantOf(plan, plan.work)).toBeUndefined();
    });
  });
  test('a repair that fills by itself is the repair, and what follows it is not', () => {
    const flush = work('flush', { minutes: 40, stage: 'fill' });
    const prove = work('prove', { minutes: 25, stage: 'proof' });
    expect(minutesOf([flush, prove])).toEqual({ repair: 40, extra: 25 });
    expect(minutesOf([flush])).toEqual({ repair: 40, extra: 0 });
  });
  test('the estimate is asked with its minutes', () => {
    const [, state] = estimateAddress({ repair: 140, extra: 65 }, { expected: 36.6, nineInTen: 86 }).split(
      '#',
    );
    expect(Object.fromEntries(new URLSearchParams(state))).toEqual({
      find: '37',
      'find-nine': '86',
      repair: '140',
      extra: '65',
      // What they cost nobody has typed yet.
      parts: '',
    });
  });
});

describe('what is kept on a card', () => {
  const filled: Job = {
    ...newJob(),
    litres: [{ id: 'litres-a', at: '2026-11-25T10:00:00.000Z', way: 'filled', litres: 3.2 }],
  };
  test('filling leaves the level of the next morning open, once, until it is read', () => {
    const open = withFollowUp(filled);
    expect(stillOpen(open)).toEqual(['Level after the night, engine cold, against the mark']);
    expect(withFollowUp(open)).toBe(open);
    const closed = closeItem(open, open.open?.[0]?.id ?? '', 'at the mark');
    expect(stillOpen(closed)).toEqual([]);
    expect(closed.open?.[0]?.done?.value).toBe('at the mark');
    expect(withFollowUp(closed)).toBe(closed);
    expect(
      withFollowUp({
        ...newJob(),
        litres: filled.litres.map((each) => ({ ...each, way: 'drained' as const })),
      }).open,
    ).toBeUndefined();
  });
  test('of two open items the one that is read is done, and the other stays open', () => {
    const two = withOpenItem(withOpenItem(newJob(), 'Ring the customer'), 'Fan belt after a week');
    expect(stillOpen(closeItem(two, two.open?.[0]?.id ?? '', 'rung'))).toEqual(['Fan belt after a week']);
  });
  test('steps ticked in any order stand in theirs, and a tick can be taken away', () => {
    const procedure = { id: 'fill', title: 'Fill' };
    const two = tickStep(tickStep(filled, procedure, 3, 'Three'), procedure, 1, 'One');
    expect(two.steps?.fill?.done.map(({ step, what }) => [step, what])).toEqual([
      [1, 'One'],
      [3, 'Three'],
    ]);
    const none = tickStep(tickStep(two, procedure, 1, undefined), procedure, 3, undefined);
    expect(none.steps).toEqual({});
    const long = tickStep(filled, procedure, 1, 'x'.repeat(2000));
    expect(jobSchema.safeParse(long).success).toBe(true);
  });
  test('a card from before has none of it and is a card; damaged fields are not shown', () => {
    const old = newJob();
    expect(Object.keys(old)).not.toContain('steps');
    expect([isJob(old), jobSchema.safeParse(old).success]).toEqual([true, true]);
    const whole = tickStep(withFollowUp(filled), { id: 'fill', title: 'Fill' }, 1, 'One');
    expect([isJob(whole), jobSchema.safeParse(whole).success]).toEqual([true, true]);
    expect(isJob({ ...old, steps: { fill: { done: [] } } })).toBe(false);
    expect(isJob({ ...old, open: [{ id: 'a' }] })).toBe(false);
  });
  test.each([
    ['the card itself', (job: Job) => ({ ...job, changed: 'yesterday' })],
    ['a reading', (job: Job) => ({ ...job, readings: [{ id: 'a', what: 'Hose', value: '41 °C', at: '' }] })],
    ['what was poured', (job: Job) => ({ ...job, litres: [{ ...filled.litres[0], at: undefined }] })],
    ['a torque', (job: Job) => ({ ...job, torques: { 'water-pump': { what: 'Pump', figure: '10 N·m' } } })],
  ])('a card is not shown where the moment of %s cannot be', (_, damaged) => {
    expect(isJob(damaged(newJob()))).toBe(false);
  });
  test('a card is called by its name, then by its plate, then by its vehicle', () => {
    const card: Job = {
      ...newJob(),
      opened: '2026-11-25T10:00:00',
      vehicle: { id: 'tarn', title: 'Tarn 1.6' },
    };
    const called = (more: Partial<Job>) => jobTitle({ ...card, ...more }).split(', ');
    expect(called({ name: 'Job 12', plate: 'X 1' })).toEqual(['Job 12', '2026-11-25 10:00']);
    expect(called({ plate: 'X 1' })[0]).toBe('X 1');
    expect(called({})[0]).toBe('Tarn 1.6');
    expect(jobTitle(newJob())).toMatch(/^Card without a name, /);
  });
});

test('coolant stands in its field, in no list of consumables, and every fill has it', () => {
  const records = [...entriesOf('cause'), ...entriesOf('procedure')];
  expect(records.length).toBeGreaterThan(100);
  const named = records.flatMap(({ id, data }) =>
    data.consumables.filter((line) => /^coolant\b(?! or)/i.test(line)).map((line) => `${id}: ${line}`),
  );
  expect(named).toEqual([]);
  const fills = entriesOf('procedure').filter(({ data }) => data.stage === 'fill');
  expect(fills.length).toBeGreaterThan(1);
  expect(fills.filter(({ data }) => !data.coolant).map(({ id }) => id)).toEqual([]);
});

test('every caution that stands at a step of a procedure or above it stands in the plans it is part of', () => {
  const procedures = new Map(entriesOf('procedure').map(({ id, data }) => [id, data]));
  let seen = 0;
  for (const { id } of entriesOf('cause'))
    for (const { id: procedure, cautions } of planOf(id).work) {
      const data = procedures.get(procedure);
      const stands = [
        ...(data?.cautions ?? []),
        ...(data?.steps ?? []).flatMap(({ caution }) => caution ?? []),
      ];
      const told = cautions.map((each) => each.id);
      expect(new Set(told), `${id}: ${procedure}`).toEqual(new Set(stands));
      expect(told.length).toBe(new Set(told).size);
      seen += told.length;
    }
  expect(seen).toBeGreaterThan(100);
});

test('high voltage is warned of on a drive that has it, and on no other', () => {
  const plans = entriesOf('cause').map(({ id }) => planOf(id).work);
  const warned = (power: string) =>
    plans.some((work) => cautionsOf(work, { power }).some(({ id }) => id === 'high-voltage'));
  expect([warned('hybrid'), warned('battery electric'), warned('combustion')]).toEqual([true, true, false]);
});
