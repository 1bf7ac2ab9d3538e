/**
 * The shelf's way of writing YAML: two spaces a level, entries of a list one level in, no spaces at a line's end, one empty
 * line at most, one line end at the end. Line breaks, quotes, order and comments are the author's.
 *
 * It changes spaces and nothing else, and holds the result against what was there: where the meaning, a comment or an
 * anchor would come out otherwise, the text stays as it is.
 */
import { isDeepStrictEqual } from 'node:util';
import {
  type Document,
  isCollection,
  isMap,
  isPair,
  isScalar,
  LineCounter,
  parseDocument,
  visit,
} from 'yaml';

export interface FormatResult {
  text: string;
  /** False when the text cannot be read, or could not be formatted without changing its meaning; it is then as it was. */
  ok: boolean;
}

/**
 * A record’s text with its spaces in order. Where that would change what it says, or it cannot be read, it comes
 * back as it was, and `ok` tells which.
 */
export function formatYaml(text: string): FormatResult {
  const before = parse(text);
  if (before.document.errors.length > 0) return { text, ok: false };
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  // Already as it should be: most files, most of the time.
  const first = tidied(reindented(plain));
  if (first === text) return { text, ok: true };
  for (const formatted of [first, tidied(plain)]) {
    if (means(before.document, formatted)) return { text: formatted, ok: true };
  }
  return { text, ok: false };
}

function parse(text: string): { document: Document.Parsed; lines: LineCounter } {
  const lines = new LineCounter();
  return { document: parseDocument(text, { lineCounter: lines, keepSourceTokens: false }), lines };
}

/** Whether a text still says what a document said, comments included. */
function means(document: Document, text: string): boolean {
  const { document: after } = parse(text);
  return (
    after.errors.length === 0 &&
    isDeepStrictEqual(document.toJS(), after.toJS()) &&
    isDeepStrictEqual(commentsOf(document), commentsOf(after))
  );
}

function commentsOf(document: Document): string[] {
  const found: string[] = [];
  const take = (node: { comment?: string | null; commentBefore?: string | null }) => {
    if (node.commentBefore) found.push(node.commentBefore);
    if (node.comment) found.push(node.comment);
  };
  visit(document, { Node: (_, node) => take(node) });
  take(document);
  return found.map((each) => each.replace(/[ \t]+$/gm, ''));
}

/** Lines whose spaces belong to a text: the inside of block scalars. Any other text over several lines is folded by YAML. */
function linesOfTexts(text: string): Set<number> {
  const { document, lines } = parse(text);
  const taken = new Set<number>();
  visit(document, {
    Scalar: (_, { range, type }) => {
      if (!range) return;
      if (type !== 'BLOCK_LITERAL' && type !== 'BLOCK_FOLDED') return;
      const from = lines.linePos(range[0]).line;
      const to = lines.linePos(Math.max(range[0], range[1] - 1)).line;
      for (let line = from + 1; line <= to; line++) taken.add(line);
    },
  });
  return taken;
}

/** Spaces at ends of lines and empty lines too many. */
function tidied(text: string): string {
  const kept = linesOfTexts(text);
  const rows: string[] = [];
  for (const [at, row] of text.split('\n').entries()) {
    const line = kept.has(at + 1) ? row : row.trimEnd();
    if (line === '' && !kept.has(at + 1) && (rows.length === 0 || rows.at(-1) === '')) continue;
    rows.push(line);
  }
  while (rows.at(-1) === '') rows.pop();
  return rows.length === 0 ? '' : `${rows.join('\n')}\n`;
}

/** Every line moved to where its level belongs; lines of a text move with the line that opens it. */
function reindented(text: string): string {
  const { document, lines } = parse(text);
  const rows = text.split('\n');
  /** How far each line has to move, by number. */
  const moves = new Map<number, number>();
  const columnOf = (offset: number) => lines.linePos(offset).col - 1;
  const lineOf = (offset: number) => lines.linePos(offset).line;

  const move = (from: number, to: number, by: number) => {
    for (let line = from; line <= to; line++) moves.set(line, by);
  };
  /** @param wanted column where the entries of a collection belong */
  const walk = (node: unknown, wanted: number) => {
    if (!isCollection(node) || node.flow || !node.range) return;
    for (const item of node.items) {
      const key = isPair(item) ? item.key : item;
      const value = isPair(item) ? item.value : item;
      const start = isMap(node) ? startOf(key) : dashBefore(text, startOf(item) ?? -1);
      if (start === undefined || start < 0) return;
      const end = Math.max(endOf(value) ?? start, start);
      const line = lineOf(start);
      const first = columnOf(start);
      const leads = (rows[line - 1] ?? '').slice(0, first).trim() === '';
      // An entry that shares its line with the dash above it has been moved with that dash.
      const by = leads ? wanted - first : (moves.get(line) ?? 0);
      move(line, lineOf(Math.max(start, end - 1)), by);
      // What stands behind a dash on its line keeps its distance; the lines below line up with it.
      const behind = isMap(node) ? undefined : startOf(value);
      const shares = behind !== undefined && lineOf(behind) === line;
      walk(value, shares ? wanted + columnOf(behind) - first : wanted + 2);
    }
  };
  walk(document.contents, 0);
  return rows
    .map((row, at) => {
      const by = moves.get(at + 1) ?? 0;
      if (by === 0 || row.trim() === '') return row;
      const spaces = row.length - row.trimStart().length;
      return ' '.repeat(Math.max(0, spaces + by)) + row.trimStart();
    })
    .join('\n');
}

function startOf(node: unknown): number | undefined {
  return rangeOf(node)?.[0];
}

function endOf(node: unknown): number | undefined {
  return rangeOf(node)?.[1];
}

function rangeOf(node: unknown): readonly [number, number, number] | undefined {
  if (isPair(node)) return rangeOf(node.key);
  if (isScalar(node) || isCollection(node)) return node.range ?? undefined;
  return undefined;
}

/** Offset of the dash that opens the list entry at an offset. */
function dashBefore(text: string, offset: number): number {
  return text.lastIndexOf('-', offset - 1);
}
