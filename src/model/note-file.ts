/** A note as the file it becomes: the same on the form, on the job card and in npm run take-in. */
import type { Note } from './note.ts';
import { UNSEEN, yamlQuoted, yamlScalar } from './yaml-text.ts';

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
    if (value !== undefined) lines.push(`${indent}${name}: ${yamlScalar(value)}`);
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
    if (typeof source === 'string') lines.push(`  - ${yamlScalar(source)}`);
    else
      for (const [name, value] of Object.entries(source))
        lines.push(`  - ${name}: ${yamlScalar(String(value))}`);
  }
  field('reviewed', note.reviewed);
  return `${lines.join('\n')}\n`;
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
  if (!canBlock) return [`${name}: ${yamlQuoted(text)}`];
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
