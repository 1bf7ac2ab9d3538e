/** Cards as a file, and back: nothing twice, nothing lost, and no note that was handed over already. */
import { expect, test } from 'vitest';
import { jobSchema } from '../../../../src/model/job.ts';
import { exported, imported } from '../../../../src/site/job/page/transfer.ts';
import { SOUND_DRAFT, SOUND_JOB } from '../../../fuzz/sound-job.ts';

const NOTE = { ...SOUND_DRAFT, figure: '', is: '', 'is-from': '' };

test('a card that is here already is not taken in again; one that differs comes in beside it', () => {
  const file = exported([SOUND_JOB], []);
  expect(imported(file, () => undefined)).toEqual({ ok: true, jobs: [SOUND_JOB] });
  const later = '2026-11-26T08:00:00.000Z';
  expect(imported(file, () => ({ ...SOUND_JOB, changed: later }))).toEqual({ ok: true, jobs: [] });
  const other = imported(file, () => ({ ...SOUND_JOB, found: 'Nothing yet.' }));
  expect(other).toMatchObject({
    ok: true,
    jobs: [{ found: SOUND_JOB.found, name: `${SOUND_JOB.name} (imported)` }],
  });
  expect(other.ok && other.jobs[0]?.id).not.toBe(SOUND_JOB.id);
});

test('of the notes those go along that are not handed over, each title once', () => {
  const drafts = [
    NOTE,
    { ...NOTE, id: 'note-b', text: 'The same title again.' },
    { ...NOTE, id: 'note-c', title: 'Handed over', sent: '2026-11-25T15:00:00.000Z' },
  ];
  const { notes } = JSON.parse(exported([], drafts));
  expect(notes.map(({ id, note }: { id: string; note: { text: string } }) => [id, note.text])).toEqual([
    ['second-bleed-screw', NOTE.text],
  ]);
});

test('a card whose name is as long as a name may be comes in beside its like, and can be exported again', () => {
  const long = { ...SOUND_JOB, name: 'x'.repeat(120) };
  const read = imported(exported([long], []), () => ({ ...long, found: 'Nothing yet.' }));
  const [job] = read.ok ? read.jobs : [];
  expect(job?.name).toMatch(/^x+ \(imported\)$/);
  expect(jobSchema.safeParse(job).success).toBe(true);
});
