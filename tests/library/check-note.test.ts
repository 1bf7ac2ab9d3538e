/** The form's check says what the shelf's check says. */
import { expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import { checkNote } from '../../src/library/check-note.ts';
import type { Note } from '../../src/model/note.ts';
import { noteText } from '../../src/model/note-file.ts';
import { SOUND_NOTE } from '../fuzz/sound-job.ts';
import { soundShelf } from './shelves.ts';

function shelfSays(note: Note): string[] {
  const path = 'notes/2026/new-note.yaml';
  const raw = { path, bytes: new TextEncoder().encode(noteText(note)) };
  return checkFiles('content', [...soundShelf(), raw])
    .findings.filter(({ place, level }) => place.file === `content/${path}` && level === 'error')
    .map(({ found }) => found);
}

test('a right note has no fault', () => {
  expect(checkNote('new-note', SOUND_NOTE)).toEqual([]);
  expect(shelfSays(SOUND_NOTE)).toEqual([]);
});

const broken: Record<string, Partial<Record<keyof Note, unknown>>> = {
  'no title': { title: '' },
  'small initials': { by: 'aw' },
  'no such day': { date: '2026-06-31', reviewed: '2026-06-31' },
  'hangs on nothing': { vehicle: undefined },
  HTML: { text: '<script>alert(1)</script>' },
  'an image from elsewhere': { text: '![x](https://example.org/x.png)' },
  'a figure no vehicle has': { text: 'Opens at {thermostat.openz}.' },
  'an id with a path in it': { vehicle: '../../tarn' },
  'a figure without a unit': { corrects: { figure: 'thermostat.opens', is: '88', source: 'stamp' } },
  'a figure that cannot be meant': {
    corrects: { figure: 'thermostat.opens', is: '188 °C', source: 'stamp' },
  },
};

test.each(Object.entries(broken))('%s: the same words in the form and on the shelf', (_name, part) => {
  const note = Object.fromEntries(
    Object.entries({ ...SOUND_NOTE, ...part }).filter(([, value]) => value !== undefined),
  ) as Note;
  const form = checkNote('new-note', note).map(({ says }) => says);
  const shelf = shelfSays(note);
  expect(form.length).toBeGreaterThan(0);
  for (const found of shelf.filter((each) => !each.startsWith('No vehicle has the id')))
    expect(form.join('\n')).toContain(found);
  expect(shelf.length).toBeGreaterThan(0);
});

test('a field that is not there is marked so, at its own place, and no other fault is', () => {
  const { title: _, ...without } = SOUND_NOTE;
  expect(checkNote('new-note', { ...without, by: 'aw' })).toEqual([
    { path: ['title'], says: 'The field "title" is missing.', isMissing: true },
    { path: ['by'], says: expect.stringContaining('initials'), isMissing: false },
  ]);
});
