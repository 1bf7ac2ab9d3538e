/** The last figures in RESULTS.md, between two marks. */
import { readFile, writeFile } from 'node:fs/promises';

const BEGIN = '<!-- beside: made by npm run bench -- --write-results -->';
const END = '<!-- beside end -->';

/** @throws Error when the marks are not there: the text would land anywhere */
export async function writeResults(file: string, text: string): Promise<void> {
  const before = await readFile(file, 'utf8');
  const [begin, end] = [before.indexOf(BEGIN), before.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`${file} has no place for the figures: ${BEGIN} … ${END}`);
  await writeFile(file, `${before.slice(0, begin + BEGIN.length)}\n\n${text}\n\n${before.slice(end)}`);
}
