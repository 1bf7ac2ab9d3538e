/** The note that a card becomes: what was found goes onto the shelf, who came with the car does not. */
import { expect, test } from 'vitest';
import { dayText } from '../../../../src/model/day.ts';
import { mergedJobs } from '../../../../src/site/job/page/merge-jobs.ts';
import { noteFromJob } from '../../../../src/site/job/page/note-from-job.ts';
import { SOUND_JOB } from '../../../fuzz/sound-job.ts';

test('a note has what was found, done, read and poured, and nothing of the customer', () => {
  const note = noteFromJob(SOUND_JOB);
  expect(note).toMatchObject({
    title: 'Aldermoor Tarn 1.6: Thermostat stuck open',
    vehicle: 'aldermoor-tarn-16',
    symptom: 'reads-low-at-cruise',
    cause: 'thermostat-stuck-open',
    known: 'measured',
    source: `One car, ${dayText(SOUND_JOB.opened)}`,
  });
  expect(note.text.split('\n\n')).toEqual([
    'The thermostat stood open.',
    'Replaced it.',
    'Hose clip rusty.',
    'Bottom hose: 41 °C',
    'Drained 3.4 l, filled 3.2 l: 0.2 l less than came out.',
  ]);
  for (const { plate, name, said, distance } of [SOUND_JOB])
    for (const own of [plate, name, said, distance]) expect(JSON.stringify(note)).not.toContain(own);
});

test('its title is no longer than a title may be', () => {
  const vehicle = { id: 'tarn', title: 'T'.repeat(130) };
  expect(noteFromJob({ ...SOUND_JOB, vehicle }).title).toHaveLength(140);
});

test('what two devices wrote against each other stays on the card: a plate or a name may be in it', () => {
  const other = {
    ...SOUND_JOB,
    plate: 'OTHER-PLATE',
    customer: 'Other Name',
    telephone: '0155 99',
    said: 'Other words',
  };
  const both = mergedJobs({ ...SOUND_JOB, customer: 'Own Name', telephone: '0155 11' }, other);
  expect(both.remarks.map(({ text }) => text).join('\n')).toContain('OTHER-PLATE');
  const note = JSON.stringify(noteFromJob(both));
  for (const theirs of ['OTHER-PLATE', 'Other Name', '0155 99', 'Other words', 'Own Name'])
    expect(note).not.toContain(theirs);
});
