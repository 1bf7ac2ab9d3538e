import { type Document, parseDocument, type YAMLError } from 'yaml';
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
