/** What the form writes is what YAML reads: any text survives the way through the file. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Note } from '../../src/model/note.ts';
import { idFromTitle, notePath, noteText } from '../../src/model/note-file.ts';
import { ID_FORM } from '../../src/model/scalars.ts';

const NOTE: Note = {
  title: 'Second bleed screw behind the head',
  by: 'AW',
  date: '2026-11-25',
  vehicle: 'aldermoor-tarn-16',
  text: 'Look behind the coil pack.',
  status: 'proposed',
  sources: [{ measured: 'One car, November 2026' }],
  reviewed: '2026-11-25',
};

const anyText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string({ unit: 'grapheme' }),
  fc
    .array(
      fc.constantFrom(
        'yes',
        'no: #',
        '- ',
        '"',
        "'",
        '\\',
        '\n',
        '\n\n',
        ' ',
        '!!js',
        '&a',
        '*a',
        '%',
        '@',
        '{x}',
        '088',
        '1e3',
        '~',
        '...',
        '---',
        '\t',
        '> |',
        ': ',
        'word word',
        '\u2028',
        '\ufeff',
      ),
      { maxLength: 12 },
    )
    .map((parts) => parts.join('')),
  fc.lorem({ maxCount: 60 }),
  fc.array(fc.lorem({ maxCount: 20 })).map((lines) => lines.join('\n')),
  fc.array(fc.lorem({ maxCount: 20 })).map((lines) => lines.join('\n\n')),
);

test('any text comes back as it was', () => {
  fc.assert(
    fc.property(anyText, anyText, anyText, (title, text, measured) => {
      const note = { ...NOTE, title, text, sources: [{ measured }] };
      expect(parse(noteText(note))).toEqual(note);
    }),
    { numRuns: 500 },
  );
}, 60_000);

test('every field comes back', () => {
  const whole: Note = {
    ...NOTE,
    symptom: 'reads-low-at-cruise',
    cause: 'thermostat-stuck-open',
    procedure: 'thermostat-replace',
    corrects: { figure: 'thermostat.opens', is: '88 °C', source: 'Stamp: read twice' },
    status: 'accepted',
    'reviewed-by': 'KT',
    sources: ['common practice', { manual: 'Book, page 3' }],
  };
  expect(parse(noteText(whole))).toEqual(whole);
});

test('plain words stay plain, so that a reviewer reads a note and not its marks', () => {
  expect(noteText(NOTE)).toBe(`title: Second bleed screw behind the head
by: AW
date: 2026-11-25
vehicle: aldermoor-tarn-16
text: >-
  Look behind the coil pack.
status: proposed
sources:
  - measured: One car, November 2026
reviewed: 2026-11-25
`);
  expect(noteText({ ...NOTE, text: 'One.\n\nTwo: with a colon.\nThree.' })).toContain(
    'text: >-\n  One.\n\n\n  Two: with a colon.\n\n  Three.\n',
  );
});

test('a title becomes an id, or nothing', () => {
  expect(idFromTitle('Tarn 1.6: “vent” spigot – shuts, Größe Ø4')).toBe(
    'tarn-1-6-vent-spigot-shuts-grosse-o4',
  );
  expect(idFromTitle('../../etc/passwd')).toBe('etc-passwd');
  expect(idFromTitle('…')).toBe('');
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (title) => {
      const id = idFromTitle(title);
      expect(id === '' || (ID_FORM.test(id) && id.length <= 60)).toBe(true);
    }),
  );
  expect(notePath('a-b', { date: '2026-01-02' })).toBe('notes/2026/a-b.yaml');
});
