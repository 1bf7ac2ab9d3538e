/** Two devices, one card: every entry of both, nothing written over, and the same however often it is merged. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Job, jobSchema } from '../../../../src/model/job.ts';
import { mergedJobs } from '../../../../src/site/job/page/merge-jobs.ts';
import { newJob } from '../../../../src/site/job/page/new-job.ts';

const AT = '2026-11-25T10:00:00.000Z';
const id = fc.stringMatching(/^[a-z]{1,4}$/).map((name) => `x-${name}`);
const word = fc.constantFrom('', 'one', 'two', 'three');
const at = fc.constantFrom(AT, '2026-11-25T11:00:00.000Z', '2026-11-25T12:00:00.000Z');

/** An entry says the same wherever its id stands: ids are made once, on one device. */
const unique = <T extends { id: string }>(made: fc.Arbitrary<T>) =>
  fc.uniqueArray(made, { selector: (each) => each.id, maxLength: 6 });
const readings = unique(id.map((each) => ({ id: each, at: AT, what: each, value: `${each.length} °C` })));
const litres = unique(id.map((each) => ({ id: each, at: AT, way: 'filled' as const, litres: each.length })));
const answers = fc.uniqueArray(
  fc.record({
    key: fc.constantFrom('a', 'b', 'c'),
    asked: fc.constant('What?'),
    answer: fc.constantFrom('yes', 'no'),
  }),
  { selector: ({ key }) => key },
);

const job: fc.Arbitrary<Job> = fc
  .record({
    plate: word,
    said: word,
    customer: word,
    did: word,
    readings,
    litres,
    answers,
    told: answers,
    opened: at,
  })
  .map((fields) => ({ ...newJob(), id: 'job-a', changed: AT, ...fields }));

const idsOf = (entries: readonly { id: string }[] = []) => new Set(entries.map((each) => each.id));

test('every entry of both is there, once', () => {
  fc.assert(
    fc.property(job, job, (here, other) => {
      const both = mergedJobs(here, other);
      expect(jobSchema.safeParse(both).success).toBe(true);
      for (const list of ['readings', 'litres'] as const) {
        expect(idsOf(both[list])).toEqual(new Set([...idsOf(here[list]), ...idsOf(other[list])]));
        expect(both[list]).toHaveLength(idsOf(both[list]).size);
      }
      // Words and answers of the other device that could not stay in their place stand in a remark.
      const kept = JSON.stringify(both);
      for (const text of [other.plate, other.said, other.did]) expect(kept).toContain(text);
      for (const { key, answer } of other.answers) {
        const mine = both.answers.find((each) => each.key === key)?.answer;
        expect(mine === answer || both.remarks.some(({ text }) => text.endsWith(`: ${answer}`))).toBe(true);
      }
      // What is here is written over by nothing.
      expect(both).toMatchObject({ plate: here.plate || other.plate, said: here.said || other.said });
    }),
  );
});

test('merged with itself, or a second time, a card stays as it is', () => {
  fc.assert(
    fc.property(job, job, (here, other) => {
      const once = mergedJobs(here, other);
      expect(mergedJobs(once, once)).toEqual(once);
      expect({ ...mergedJobs(once, other), remarks: [] }).toEqual({ ...once, remarks: [] });
      expect(mergedJobs(once, other).remarks).toHaveLength(once.remarks.length);
    }),
  );
});
