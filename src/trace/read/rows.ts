/** Text to rows of cells by a delimiter, a block of lines at a time so that nobody waits for a long log. */
import Papa from 'papaparse';

/** `spaces` is any run of blanks. */
export type Delimiter = ',' | ';' | '\t' | '|' | 'spaces';
/** In order of trust when several cut the file evenly. */
const DELIMITERS: readonly Delimiter[] = ['\t', ';', '|', ',', 'spaces'];

export const DELIMITER_WORDS: Record<Delimiter, string> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'upright stroke',
  spaces: 'blanks',
};

/** Characters a block has at least; it ends at the end of a line. */
const BLOCK = 1 << 16;
/** A "line" longer than this is cut: nothing a log tool writes. */
const LONGEST_LINE = 1 << 18;

/** Blocks of whole lines. */
export function* blocks(text: string): Generator<string> {
  let from = 0;
  while (from < text.length) {
    const wanted = Math.min(text.length, from + BLOCK);
    let to = text.indexOf('\n', wanted);
    if (to === -1) to = text.indexOf('\r', wanted);
    to = to === -1 || to > wanted + LONGEST_LINE ? Math.min(text.length, wanted + LONGEST_LINE) : to + 1;
    yield text.slice(from, to);
    from = to;
  }
}

/** Rows of a block; blank lines are rows with one empty cell. */
export function rowsOf(block: string, delimiter: Delimiter): string[][] {
  const even = block.replace(/\0/g, '').replace(/\r\n?/g, '\n');
  const text = delimiter === 'spaces' ? even.replace(/^[ \t]+/gm, '').replace(/[ \t]+/g, '\t') : even;
  const mark = delimiter === 'spaces' ? '\t' : delimiter;
  const parsed = parse(text, mark);
  // A quotation mark that is never closed swallows the lines after it: read each line for itself.
  if (parsed.errors.some(({ type }) => type === 'Quotes'))
    return text.split('\n').map((line) => parse(line, mark).data[0] ?? ['']);
  return parsed.data;
}

function parse(text: string, delimiter: string): Papa.ParseResult<string[]> {
  return Papa.parse<string[]>(text, { delimiter, newline: '\n', quoteChar: '"' });
}

/** The delimiter that cuts most lines into the same number of cells, two or more. */
export function delimiterOf(sample: string): Delimiter | undefined {
  let best: { delimiter: Delimiter; share: number } | undefined;
  for (const delimiter of DELIMITERS) {
    const rows = rowsOf(sample, delimiter).filter((row) => row.some((cell) => cell.trim() !== ''));
    const { width, share } = usualWidth(rows);
    if (width < 2) continue;
    if (!best || share > best.share + 0.1) best = { delimiter, share };
  }
  return best?.delimiter;
}

/** How many cells most rows have, and the share of rows that have so many. */
export function usualWidth(rows: readonly string[][]): { width: number; share: number } {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  let [width, most] = [0, 0];
  for (const [each, count] of counts) if (count > most) [width, most] = [each, count];
  return { width, share: rows.length === 0 ? 0 : most / rows.length };
}
