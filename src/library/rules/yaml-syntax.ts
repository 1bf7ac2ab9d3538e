import { isCollection, isScalar, visit, type YAMLError } from 'yaml';
import type { ReadText } from '../read-text.ts';
import type { TextRule } from '../rule.ts';

/** What YAML could not read, in words for people who do not know YAML. */
export const yamlSyntax: TextRule = {
  id: 'yaml-syntax',
  level: 'error',
  on: 'text',
  ends: true,
  check: ({ source, document, errors }) => {
    // What follows the first error is mostly its echo.
    const [first] = errors.filter((error) => !OTHER_RULES.has(error.code));
    if (!first) return [];
    const { file, text } = source;
    const opening = openingOf(document, text, first);
    const [start, end] = opening === undefined ? first.pos : [opening, opening + 1];
    const { found, expected } =
      opening === undefined
        ? explain(first, text)
        : { found: `The ${text.slice(start, end)} that begins here is not closed.`, expected: CLOSE };
    return [
      { at: { file, start, end: Math.max(end, start + 1) }, found, expected, byHand: 'change the line' },
    ];
  },
};

const CLOSE = 'Quotes, brackets and braces come in pairs; a text with one of them in it goes in quotes.';

/** Where the quote or bracket begins that the error misses the end of. */
function openingOf(document: ReadText['document'], text: string, error: YAMLError): number | undefined {
  if (error.code !== 'MISSING_CHAR' && error.code !== 'BAD_INDENT') return undefined;
  let opening: number | undefined;
  visit(document, {
    Node: (_key, node) => {
      if (!node.range) return;
      const [start, end] = node.range;
      const close = CLOSING[text.charAt(start)];
      const isOpen = isCollection(node) ? node.flow : isScalar(node) && node.type?.startsWith('QUOTE');
      const covers = start < error.pos[0] && error.pos[0] <= Math.max(end, text.length);
      if (isOpen && close !== undefined && covers && (end - start < 2 || text.charAt(end - 1) !== close))
        opening ??= start;
    },
  });
  return opening;
}

const CLOSING: Record<string, string> = { '"': '"', "'": "'", '[': ']', '{': '}' };

const OTHER_RULES = new Set<YAMLError['code']>([
  'DUPLICATE_KEY',
  'TAB_AS_INDENT',
  'BAD_ALIAS',
  'ALIAS_PROPS',
]);

const QUOTES = 'a text with ": ", " #", quotes, brackets or braces in it goes in quotes';

const INDENT = {
  found: 'This line is indented differently from those it belongs to.',
  expected: 'Two spaces for each step inwards; lines of one list or group begin in the same column.',
};

const ELSEWHERE = {
  found: 'This is not where YAML takes it.',
  expected: `A line is "name: value" or "- value"; ${QUOTES}.`,
};

function explain(error: YAMLError, text: string): { found: string; expected: string } {
  const [start, end] = error.pos;
  const lineStart = text.lastIndexOf('\n', start - 1) + 1;
  const before = text.slice(lineStart, start);
  const begins = /(?:^|: +|- +)(["'[{])/.exec(before)?.[1];
  switch (error.code) {
    case 'UNEXPECTED_TOKEN':
      if (begins === undefined) return ELSEWHERE;
      return {
        found: `A text that begins with ${begins} ends for YAML where its partner stands.`,
        expected: 'Put the whole text in quotes, with other quotes inside.',
      };
    case 'BLOCK_AS_IMPLICIT_KEY':
      return {
        found: 'A text with ": " in it is read as a field inside a field.',
        expected: 'Put the whole text in quotes.',
      };
    case 'BAD_SCALAR_START':
      return {
        found: `A text cannot begin with ${JSON.stringify(text.slice(start, end).slice(0, 1))} as it stands.`,
        expected: 'Put the whole text in quotes.',
      };
    case 'BAD_INDENT':
      return INDENT;
    case 'MULTILINE_IMPLICIT_KEY':
    case 'MISSING_CHAR':
      if (/^ *- *$/.test(before)) return INDENT;
      return {
        found:
          'Something is missing here: a colon with a space after a field, a comma, a closing quote or bracket.',
        expected: `A line is "name: value" or "- value"; ${QUOTES}.`,
      };
    case 'BAD_DQ_ESCAPE':
      return {
        found: 'A backslash in double quotes has a meaning of its own.',
        expected: "Use single quotes ('…'), or write it twice.",
      };
    case 'MULTIPLE_DOCS':
      return {
        found: 'A line "---" starts a second record in this file.',
        expected: 'One file is one record.',
      };
    case 'BLOCK_IN_FLOW':
      return {
        found: 'Inside brackets everything is separated by commas.',
        expected: 'Close the bracket, or write the list as lines with "- ".',
      };
    case 'TAG_RESOLVE_FAILED':
    case 'MULTIPLE_TAGS':
      return {
        found: 'A word that begins with "!" is an instruction in YAML.',
        expected: 'Put the whole text in quotes.',
      };
    case 'KEY_OVER_1024_CHARS':
      return { found: 'The name of this field is far too long.', expected: 'Put the whole text in quotes.' };
    default:
      return ELSEWHERE;
  }
}
