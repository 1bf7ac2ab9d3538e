import type { YAMLError } from 'yaml';
import type { TextRule } from '../rule.ts';

/** What YAML could not read, in words for people who do not know YAML. */
export const yamlSyntax: TextRule = {
  id: 'yaml-syntax',
  level: 'error',
  on: 'text',
  ends: true,
  check: ({ source, errors }) => {
    // What follows the first error is mostly its echo.
    const [first] = errors.filter((error) => !OTHER_RULES.has(error.code));
    if (!first) return [];
    const [start, end] = first.pos;
    const { found, expected } = explain(first, source.text.slice(start, end));
    return [
      {
        at: { file: source.file, start, end: Math.max(end, start + 1) },
        found,
        expected,
        byHand: 'mend the line',
      },
    ];
  },
};

const OTHER_RULES = new Set<YAMLError['code']>([
  'DUPLICATE_KEY',
  'TAB_AS_INDENT',
  'BAD_ALIAS',
  'ALIAS_PROPS',
]);

function explain(error: YAMLError, piece: string): { found: string; expected: string } {
  switch (error.code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return {
        found: 'A text with ": " in it is read as a field inside a field.',
        expected: 'Put the whole text in quotes.',
      };
    case 'BAD_SCALAR_START':
      return {
        found: `A text cannot begin with ${JSON.stringify(piece.slice(0, 1))} as it stands.`,
        expected: 'Put the whole text in quotes.',
      };
    case 'BAD_INDENT':
      return {
        found: 'This line is indented differently from those it belongs to.',
        expected: 'Two spaces for each step inwards; lines of one list or group begin in the same column.',
      };
    case 'MULTILINE_IMPLICIT_KEY':
    case 'MISSING_CHAR':
      return {
        found:
          'Something is missing here: a colon with a space after a field, a closing quote or a closing bracket.',
        expected: 'A line is "name: value" or "- value".',
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
      return {
        found: 'This is not where YAML takes it.',
        expected:
          'A line is "name: value" or "- value"; a text with ": ", "#", quotes or brackets goes in quotes.',
      };
  }
}
