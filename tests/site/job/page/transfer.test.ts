/** Cards as a file, and back: nothing twice, nothing lost, and no note that was handed over already. */
import { expect, test } from 'vitest';
import { exported, imported } from '../../../../src/site/job/page/transfer.ts';
import { SOUND_DRAFT, SOUND_JOB } from '../../../fuzz/sound-job.ts';

const NOTE = { ...SOUND_DRAFT, figure: '', is: '', 'is-from': '' };

test('a card goes into a file and comes back the same', () => {
  expect(imported(exported([SOUND_JOB], []))).toEqual({ ok: true, jobs: [SOUND_JOB], pictures: [] });
  const picture = { id: 'picture-a', jpeg: '/9j/4AAQ' };
  expect(imported(exported([SOUND_JOB], [], [picture]))).toMatchObject({ pictures: [picture] });
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
