import type { RecordRule } from '../rule.ts';

/** Records are words: nothing is fetched from elsewhere, and pictures are drawn by the site. */
export const imageInText: RecordRule = {
  id: 'image-in-text',
  level: 'error',
  on: 'record',
  check: ({ file, texts }) =>
    texts.flatMap(({ text, path }) => {
      const image = imageIn(text);
      if (image === undefined) return [];
      return [
        {
          at: { file, path, within: image },
          found: 'There is an image in this text; records have none, and nothing is fetched from elsewhere.',
          expected: 'Pictures belong in a guide, content/guides/.',
          byHand: 'say it in words',
        },
      ];
    }),
};

/** The first image of a text. Looked for piece by piece: one pattern for the whole would try every beginning to the end. */
function imageIn(text: string): string | undefined {
  const opening = text.indexOf('![');
  if (opening < 0) return undefined;
  const middle = /\][([]/g;
  middle.lastIndex = opening;
  const found = middle.exec(text);
  if (!found) return undefined;
  const start = text.lastIndexOf('![', found.index);
  const close = text.slice(found.index + 2, found.index + 202).search(/[)\]]/);
  return text.slice(start, found.index + 2 + close + 1);
}
