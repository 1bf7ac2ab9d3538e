/** The note that a draft makes of what was typed. */
import { expect, test } from 'vitest';
import { newDraft, noteOf } from '../../../../src/site/note/page/note-drafts.ts';

test('initials are written in capitals, however they were typed', () => {
  expect(noteOf({ ...newDraft(), by: ' kb ' }).by).toBe('KB');
});

test('line ends are the same from every system, and none stand at the ends', () => {
  expect(noteOf({ ...newDraft(), text: 'First line.\r\nSecond line.\r\n\r\nThird.\r\n' }).text).toBe(
    'First line.\nSecond line.\n\nThird.',
  );
});

test('what was measured, or read in a book, stands with it; the trade’s word and a memory stand alone', () => {
  const sources = (known: string) => noteOf({ ...newDraft(), known, source: ' Two cars ' }).sources;
  expect(sources('measured')).toEqual([{ measured: 'Two cars' }]);
  expect(sources('manual')).toEqual([{ manual: 'Two cars' }]);
  expect(sources('common practice')).toEqual(['common practice']);
  expect(sources('from memory')).toEqual(['from memory']);
});

test('a figure that is chosen and not yet given is still to be given; without one there is no correction', () => {
  expect(noteOf({ ...newDraft(), figure: 'fan.on' }).corrects).toEqual({
    figure: 'fan.on',
    is: '',
    source: '',
  });
  expect(noteOf({ ...newDraft(), is: '98 °C' })).not.toHaveProperty('corrects');
});
