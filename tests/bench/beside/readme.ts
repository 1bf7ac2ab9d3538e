/** The last figures in the README, between two marks. */
import { readFile, writeFile } from 'node:fs/promises';

const BEGIN = '<!-- beside: made by npm run bench -- --write-readme -->';
const END = '<!-- beside end -->';

/** @throws Error when the marks are not there: the text would land anywhere */
export async function writeReadme(file: string, text: string): Promise<void> {
  const readme = await readFile(file, 'utf8');
  const [begin, end] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`${file} has no place for the figures: ${BEGIN} … ${END}`);
  await writeFile(file, `${readme.slice(0, begin + BEGIN.length)}\n\n${text}\n\n${readme.slice(end)}`);
}
