/** From a way inside a record to a line and column. Positions come from the yaml package, never from counting. */
import {
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  type Pair,
  parseDocument,
} from 'yaml';
import type { FaultPlace, Path, Place } from './finding.ts';
import type { SourceFile } from './source-file.ts';

const BYTE_ORDER_MARK = '\uFEFF';

/** Start and end offset in a file's text. */
export interface Span {
  start: number;
  end: number;
}

/** Looks places up; files are parsed again for it, once each, so that a clean shelf pays nothing. */
export class Places {
  private readonly files: ReadonlyMap<string, SourceFile>;
  private readonly contents = new Map<string, unknown>();
  private readonly lines = new Map<string, LineCounter>();

  constructor(files: ReadonlyMap<string, SourceFile>) {
    this.files = files;
  }

  /** Where a spot begins and ends in its file's text. */
  spanOf(spot: FaultPlace): Span {
    if ('start' in spot) return { start: spot.start, end: spot.end };
    const text = this.files.get(spot.file)?.text ?? '';
    const { start, end } = spanOfPath(this.contentsOf(spot.file), spot.path, spot.on ?? 'value');
    if (spot.within !== undefined) {
      const inside = text.slice(start, end).indexOf(spot.within);
      if (inside >= 0) return { start: start + inside, end: start + inside + spot.within.length };
    }
    // A map or list ends for yaml where the next thing begins.
    return { start, end: start + text.slice(start, end).trimEnd().length };
  }

  /** Whether the field a spot names stands beside one that already has another name. */
  hasBeside(spot: FaultPlace, name: string): boolean {
    if ('start' in spot || spot.on !== 'key') return false;
    let node = this.contentsOf(spot.file);
    for (const part of spot.path.slice(0, -1)) {
      if (!isCollection(node)) return false;
      node = node.get(part, true);
    }
    return isMap(node) && node.has(name);
  }

  placeOf(spot: FaultPlace): Place {
    const text = this.files.get(spot.file)?.text ?? '';
    const span = this.spanOf(spot);
    const { line, col } = this.linesOf(spot.file).linePos(Math.min(span.start, text.length));
    const marked = line === 1 && text.startsWith(BYTE_ORDER_MARK);
    const column = Math.max(col - (marked ? 1 : 0), 1);
    const source = text.split('\n', line)[line - 1]?.replace(/\r$/, '').replace(BYTE_ORDER_MARK, '');
    const rest = (source?.length ?? 0) - column + 1;
    const length = Math.max(0, Math.min(span.end - span.start, rest));
    return {
      file: spot.file,
      line,
      column,
      length,
      ...(source !== undefined && source !== '' && { source }),
    };
  }

  private contentsOf(file: string): unknown {
    if (!this.contents.has(file)) {
      const text = this.files.get(file)?.text ?? '';
      this.contents.set(file, parseDocument(text, { logLevel: 'silent' }).contents);
    }
    return this.contents.get(file);
  }

  /** Without parsing: a file may be refused because parsing it would take all the memory there is. */
  private linesOf(file: string): LineCounter {
    const known = this.lines.get(file);
    if (known) return known;
    const lines = new LineCounter();
    const text = this.files.get(file)?.text ?? '';
    for (let start = 0; start >= 0; ) {
      lines.addNewLine(start);
      const end = text.indexOf('\n', start);
      start = end < 0 ? -1 : end + 1;
    }
    this.lines.set(file, lines);
    return lines;
  }
}

/** Span of the value or field name at a path; of the nearest part around it that exists, if it does not. */
function spanOfPath(contents: unknown, path: Path, on: 'key' | 'value'): Span {
  let node: unknown = contents;
  let nearest: Span = { start: 0, end: 0 };
  let lastKey: Span | undefined;
  for (const [depth, part] of path.entries()) {
    if (isMap(node)) {
      const pair = node.items.find((each) => isPair(each) && keyOf(each) === String(part));
      if (!pair) return nearest;
      lastKey = spanOfNode(pair.key) ?? nearest;
      nearest = lastKey;
      node = pair.value;
    } else if (isSeq(node) && typeof part === 'number') {
      const item = node.items[part];
      if (item === undefined) return nearest;
      lastKey = undefined;
      nearest = spanOfNode(item) ?? nearest;
      node = item;
    } else {
      return nearest;
    }
    if (depth === path.length - 1) {
      if (on === 'key' && lastKey) return lastKey;
      // A map or list is pointed at by its name: its own span would be many lines.
      if (isScalar(node) && node.value !== null) return spanOfNode(node) ?? nearest;
      return nearest;
    }
  }
  return nearest;
}

function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : String(pair.key);
}

function spanOfNode(node: unknown): Span | undefined {
  if (!isNode(node) || !node.range) return undefined;
  return { start: node.range[0], end: node.range[1] };
}
