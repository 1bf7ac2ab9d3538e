/** The shelf that the bench makes: sound by our own check, the same each time, as large as it was asked for. */
import { expect, test } from 'vitest';
import { checkFiles } from '../../src/library/check-files.ts';
import { reportText } from '../../src/library/report/text.ts';
import { documentsOf } from '../bench/beside/shelf/document.ts';
import { shelfFiles } from '../bench/beside/shelf/files.ts';
import { markdownOf, plainPageOf } from '../bench/beside/shelf/markup.ts';
import { makeShelf } from '../bench/beside/shelf/shelf.ts';

const made = makeShelf(100, 7);
const files = shelfFiles(made);

test('the check finds nothing, and every record is read', () => {
  const encoder = new TextEncoder();
  const raw = [...files].map(([path, text]) => ({ path, bytes: encoder.encode(text) }));
  const { findings, count } = checkFiles('content', raw);
  expect(reportText(findings)).toBe('');
  // The workshop's own file is looked at too.
  expect(count).toBe(101);
});

test('the same seed makes the same files, another seed others', () => {
  expect(shelfFiles(makeShelf(100, 7))).toEqual(files);
  expect(shelfFiles(makeShelf(100, 8))).not.toEqual(files);
});

test('a larger shelf has as many records as asked for, and no two of one kind share an id or a title', () => {
  const large = makeShelf(1000, 7);
  expect(large).toHaveLength(1000);
  expect(new Set(large.map(({ kind, id }) => `${kind}/${id}`)).size).toBe(1000);
  expect(new Set(large.map(({ kind, title }) => `${kind}/${title}`)).size).toBe(1000);
});

test.each([0, 150, 20_000])('%i records cannot be made', (count) => {
  expect(() => makeShelf(count, 7)).toThrow(RangeError);
});

test('Markdown and plain HTML say what the record says, links by the title of the other record', () => {
  const tool = documentsOf(made).find(({ path }) => path.startsWith('tools/'));
  const record = made.find(({ title }) => title === tool?.title);
  if (!tool || !record) throw new Error('There is no tool on the shelf.');
  const markdown = markdownOf(tool, (path) => `/${path}/`, true);
  const page = plainPageOf(tool, (path) => `/${path}.html`);
  for (const text of [record.data.care, record.data.accuracy]) {
    expect(markdown).toContain(text);
    expect(page).toContain(text);
  }
  expect(markdown).toContain('- [Hot steam, left heater pipe](/cautions/scald/)');
  expect(page).toContain('<li><a href="/cautions/scald.html">Hot steam, left heater pipe</a></li>');
});
