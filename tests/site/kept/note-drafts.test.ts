/** The note that a draft makes of what was typed. */
import { expect, test } from 'vitest';
import { newDraft, noteOf } from '../../../src/site/kept/note-drafts.ts';

test('initials are written in capitals, however they were typed', () => {
  expect(noteOf({ ...newDraft(), by: ' kb ' }).by).toBe('KB');
});

test('line ends are the same from every system, and none stand at the ends', () => {
  expect(noteOf({ ...newDraft(), text: 'First line.\r\nSecond line.\r\n\r\nThird.\r\n' }).text).toBe(
    'First line.\nSecond line.\n\nThird.',
  );
});
