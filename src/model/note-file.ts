/** A note as the file it becomes: the same on the form, on the job card and in npm run take-in. */
import type { Note } from './note.ts';

/** An id from a title: lower-case words joined by hyphens, at most 60 characters; '' when no letter is left. */
export function idFromTitle(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/ß/g, 'ss')
    .replace(/æ/gi, 'ae')
    .replace(/ø/gi, 'o')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return plain.length <= 60 ? plain : plain.slice(0, 60).replace(/-[^-]*$/, '');
}

/** Where a note lies on the shelf, from the shelf's folder. */
export function notePath(id: string, note: Pick<Note, 'date'>): string {
  return `notes/${note.date.slice(0, 4)}/${id}.yaml`;
}

/**
 * The text of a note's file.
 *
 * Written without a YAML library, so that the form stays light: a text that is plain words is written as it is, every other
 * one in double quotes, where YAML reads JSON's escapes. Held against the library that reads it back by a property test.
 */
export function noteText(note: Note): string {
  const lines: string[] = [];
  const field = (name: string, value: string | undefined, indent = '') => {
    if (value !== undefined) lines.push(`${indent}${name}: ${scalar(value)}`);
  };
  field('title', note.title);
  field('by', note.by);
  field('date', note.date);
  field('vehicle', note.vehicle);
  field('symptom', note.symptom);
  field('cause', note.cause);
  field('procedure', note.procedure);
  lines.push(...longText('text', note.text));
  if (note.corrects) {
    lines.push('corrects:');
    field('figure', note.corrects.figure, '  ');
    field('is', note.corrects.is, '  ');
    field('source', note.corrects.source, '  ');
  }
  field('status', note.status);
  field('reviewed-by', note['reviewed-by']);
  lines.push('sources:');
  for (const source of note.sources) {
    if (typeof source === 'string') lines.push(`  - ${scalar(source)}`);
    else
      for (const [name, value] of Object.entries(source)) lines.push(`  - ${name}: ${scalar(String(value))}`);
  }
  field('reviewed', note.reviewed);
  return `${lines.join('\n')}\n`;
}

/** Words that YAML reads as themselves: letter first, nothing that could be taken for a mark, a number, or yes and no. */
const PLAIN = /^\p{L}[\p{L}\p{N} .,()/°%·–’-]*[\p{L}\p{N}.)%]$/u;
const NOT_TEXT = /^(?:true|false|yes|no|on|off|null|y|n|nan|inf)$/i;
/** A day, which this project reads as text. */
const DAY = /^\d{4}-\d{2}-\d{2}$/;

function scalar(text: string): string {
  if ((PLAIN.test(text) && !NOT_TEXT.test(text)) || DAY.test(text)) return text;
  return quoted(text);
}

/** Characters that an editor does not show, or that a YAML reader may take for something else. */
const UNSEEN = /[\p{Cc}\p{Cs}\p{Cf}\p{Zl}\p{Zp}\u{fff0}-\u{ffff}]/gu;

/** In double quotes, with everything unseen escaped. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(UNSEEN, (character) =>
    character
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}

const WIDTH = 110;

/** A long text as a literal block where its lines can stand as they are. */
function longText(name: string, text: string): string[] {
  const lines = text.split('\n');
  const bare = text.replaceAll('\n', ' ');
  const canBlock =
    /^\S(?:.*\S)?$/s.test(text) &&
    lines.every((line) => line === '' || /^\S(?:.*\S)?$/.test(line)) &&
    bare.search(UNSEEN) < 0;
  if (!canBlock) return [`${name}: ${quoted(text)}`];
  // Folded: each line of the text is a paragraph of lines that the reader puts together again.
  const folded = lines.map((line) => (line === '' ? [''] : foldedLine(line)));
  const body: string[] = [];
  for (const [at, part] of folded.entries()) {
    // A line end of the text is written as an empty line more than it has.
    if (at > 0 && lines[at - 1] !== '') body.push('');
    body.push(...part.map((line) => (line === '' ? '' : `  ${line}`)));
  }
  return [`${name}: >-`, ...body];
}

function foldedLine(line: string): string[] {
  const rows: string[] = [];
  let row = '';
  for (const word of line.split(/(?<=\S) (?=\S)/)) {
    if (row !== '' && row.length + word.length + 1 > WIDTH) {
      rows.push(row);
      row = word;
    } else row = row === '' ? word : `${row} ${word}`;
  }
  return [...rows, row];
}
