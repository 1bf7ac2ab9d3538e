/** The card after a walk is handed to it: nothing of an earlier complaint is lost, and nothing ruled out stays. */
import { describe, expect, test } from 'vitest';
import { type Job, jobSchema } from '../../../../src/model/job.ts';
import { withKnownDraft } from '../../../../src/site/job/page/draft.ts';
import { newJob } from '../../../../src/site/job/page/new-job.ts';
import { withHandedOver } from '../../../../src/site/job/page/with-handed-over.ts';

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

describe('a card from before the drafted words were kept on it', () => {
  const { 'drafted-words': _, ...before } = proven();
  const IN_US = { found: DRAFT.found, watch: 'A dirty system jams the new one at 190 °F.' };
  const answers = [proof(STAT, 'Not this')];
  const afterwards = (job: Job) => withHandedOver(job, { complaint: LOW, answers }, undefined);

  test('what stands as the record would have it drafted goes with its cause, in whichever units', () => {
    expect(afterwards(before)).toMatchObject(DRAFT);
    for (const draft of [DRAFT, IN_US]) {
      const known = withKnownDraft({ ...before, ...draft }, [DRAFT, IN_US]);
      expect(jobSchema.safeParse(known).success).toBe(true);
      expect(afterwards(known)).toMatchObject({ found: '', watch: '' });
    }
  });

  test('what stands otherwise stays: it may be somebody’s own', () => {
    const own = 'Seat jammed by scale, shown to the customer.';
    const known = withKnownDraft({ ...before, found: own }, [DRAFT, IN_US]);
    expect(afterwards(known)).toMatchObject({ found: own, watch: '' });
    const neither = { ...before, found: own, watch: own };
    expect(withKnownDraft(neither, [DRAFT, IN_US])).toBe(neither);
  });

  test('a card that keeps its drafted words is left alone, whatever the record says since', () => {
    const kept = proven();
    expect(withKnownDraft(kept, [{ found: 'Otherwise.', watch: 'Otherwise.' }])).toBe(kept);
    expect(afterwards(kept)).toMatchObject({ found: '', watch: '' });
  });
});

test('the same reading handed over twice stands once; a second reading of the same thing stands beside the first', () => {
  const hose = (value: string) => ({ reading: { what: 'Bottom hose', value } });
  const read = (job: Job, value: string) => withHandedOver(job, hose(value), undefined);
  const job = read(read(read(newJob(), '41 °C'), '41 °C'), '58 °C');
  expect(job.readings.map(({ value }) => value)).toEqual(['41 °C', '58 °C']);
});

test('the vehicle it was worked out for goes onto the card with it', () => {
  const tarn = { id: 'tarn', title: 'Tarn 1.6' };
  expect(withHandedOver(newJob(), {}, tarn).vehicle).toEqual(tarn);
  expect(withHandedOver({ ...newJob(), vehicle: tarn }, {}, undefined).vehicle).toEqual(tarn);
});
