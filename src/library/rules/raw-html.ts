import type { RecordRule } from '../rule.ts';

/** Tags, comments and declarations as CommonMark 0.31 section 6.6 has them; `p < 5 bar` is none. */
const HTML = /<(?:\/?[A-Za-z][A-Za-z0-9-]*(?:\s[^<>]*)?\/?>|!--|![A-Za-z]|\?)/;

export const rawHtml: RecordRule = {
  id: 'raw-html',
  level: 'error',
  on: 'record',
  check: ({ file, texts }) =>
    texts.flatMap(({ text, path }) => {
      const tag = HTML.exec(text)?.[0];
      if (tag === undefined) return [];
      return [
        {
          at: { file, path, within: tag },
          found: 'There is HTML in this text; it would be shown letter by letter.',
          expected: 'Markdown does what is needed: *emphasis*, **strong**, `code`, lines with "- ".',
          byHand: 'take the HTML out',
        },
      ];
    }),
};
