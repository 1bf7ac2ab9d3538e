/** The card after a walk is handed to it: nothing of an earlier complaint is lost, and nothing ruled out stays. */
import { describe, expect, test } from 'vitest';
import { type Job, jobSchema } from '../../../src/model/job.ts';
import { newJob } from '../../../src/site/job/new-job.ts';
import { withHandedOver } from '../../../src/site/job/with-handed-over.ts';

const LOW = { id: 'reads-low-at-cruise', title: 'Reads low at steady cruise' };
const NO_HEAT = { id: 'no-cabin-heat', title: 'No cabin heat at all' };
const STAT = { id: 'thermostat-stuck-open', title: 'Thermostat stuck open' };
const SENSOR = { id: 'sensor-reads-low', title: 'Coolant sensor reads low' };
const DRAFT = {
  found: 'Thermostat stuck open. It no longer shuts.',
  watch: 'A dirty system jams the new one.',
};

function proof(cause: { id: string; title: string }, answer: string) {
  return { key: `prove.${cause.id}`, asked: `Is it this: ${cause.title}?`, answer };
}

/** A card on which the thermostat is proven and the words for the customer are drafted. */
function proven(more: Partial<Job> = {}): Job {
  return {
    ...newJob(),
    complaint: LOW,
    proven: STAT,
    answers: [proof(STAT, 'Proven')],
    drafted: STAT.id,
    'drafted-words': DRAFT,
    ...DRAFT,
    ...more,
  };
}

describe('a second walk on the same card', () => {
  test('of another complaint leaves the first in a remark, once, with what it proved', () => {
    const first = withHandedOver(proven(), { complaint: NO_HEAT, answers: [] }, undefined);
    expect(first.complaint).toEqual(NO_HEAT);
    expect(first.proven).toEqual(STAT);
    const again = withHandedOver(first, { complaint: NO_HEAT, answers: [] }, undefined);
    expect(again.remarks.map(({ text }) => text)).toEqual([
      'Looked into as well: Reads low at steady cruise. Proven: Thermostat stuck open.',
    ]);
    expect(jobSchema.safeParse(again).success).toBe(true);
  });

  test('that rules the proven cause out takes cause and drafted words off the card', () => {
    const after = withHandedOver(proven(), { complaint: LOW, answers: [proof(STAT, 'Not this')] }, undefined);
    expect(after.proven).toBeUndefined();
    expect([after.found, after.watch, after.drafted]).toEqual(['', '', undefined]);
    expect(after.answers).toEqual([proof(STAT, 'Not this')]);
  });

  test('that proves another cause takes the words drafted for the first, but none that somebody wrote', () => {
    const own = 'Seat jammed by scale, shown to the customer.';
    const answers = [proof(STAT, 'Not this'), proof(SENSOR, 'Proven')];
    const after = withHandedOver(
      proven({ found: own }),
      { complaint: LOW, answers, proven: SENSOR },
      undefined,
    );
    expect(after.proven).toEqual(SENSOR);
    expect([after.found, after.watch]).toEqual([own, '']);
  });

  test('that has not come to a proof yet leaves what was proven', () => {
    const level = { key: 'level-cold', asked: 'Where does the coolant stand?', answer: 'At the mark' };
    const after = withHandedOver(proven(), { complaint: LOW, answers: [level] }, undefined);
    expect(after).toMatchObject({ proven: STAT, ...DRAFT });
    expect(after.answers).toHaveLength(2);
  });
});
