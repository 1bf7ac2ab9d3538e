import { type Document, isScalar, parseDocument, type YAMLError } from 'yaml';
import type { Path } from './finding.ts';
import type { SourceFile } from './source-file.ts';

/** A file as YAML sees it. */
export interface ReadText {
  source: SourceFile;
  document: Document.Parsed;
  /** Warnings included: what YAML only warns of is read otherwise than it was meant. */
  errors: readonly YAMLError[];
}

/** What YAML makes of a file; errors and warnings are handed on, never thrown. */
export function readText(source: SourceFile): ReadText {
  // prettyErrors would look up a line for each error: that is done once, in the end. Not logLevel "silent", which
  // would leave out the error of a second document.
  const document = parseDocument(source.text, { prettyErrors: false, logLevel: 'error' });
  return { source, document, errors: [...document.errors, ...document.warnings] };
}

/** Looks up how a value stands in a file; the file is read for it at the first question. */
export function scalarsOf(source: SourceFile): (path: Path) => string | undefined {
  let document: Document.Parsed | undefined;
  return (path) => {
    document ??= readText(source).document;
    const node: unknown = document.getIn(path, true);
    if (!isScalar(node)) return undefined;
    return typeof node.value === 'string' ? node.value : node.source;
  };
}
