/** Notes handed in: under which name they come onto the shelf. */
import { expect, test } from 'vitest';
import { takeIn } from '../../src/library/take-in.ts';
import { noteText } from '../../src/model/note-file.ts';
import { SOUND_NOTE } from '../fuzz/sound-job.ts';
import { soundShelf } from './shelves.ts';

const handed = (name: string, title = SOUND_NOTE.title) => ({
  name,
  bytes: new TextEncoder().encode(noteText({ ...SOUND_NOTE, title })),
});
const take = (...files: ReturnType<typeof handed>[]) => takeIn('content', soundShelf(), files);

test.each([
  'second-screw.yaml',
  'second-screw (1).yaml',
  'second-screw(12).yaml',
  'Downloads/second-screw.yml',
])('%s is the note second-screw, however the browser has numbered it', (name) => {
  const { notes, refused } = take(handed(name));
  expect(refused).toEqual([]);
  expect(notes.map(({ path }) => path)).toEqual(['notes/2026/second-screw.yaml']);
});

test('two files handed in under one name are not taken one for the other', () => {
  const { refused } = take(handed('second-screw.yaml'), handed('second-screw (1).yaml', 'Another screw'));
  expect(refused.map(({ why }) => why)).toEqual([
    'Two of the files handed in are called "second-screw". Give one of them another name.',
  ]);
});
