import type { RecordRule } from '../rule.ts';

/** Records are words: nothing is fetched from elsewhere, and pictures are drawn by the site. */
export const imageInText: RecordRule = {
  id: 'image-in-text',
  level: 'error',
  on: 'record',
  check: ({ file, texts }) =>
    texts.flatMap(({ text, path }) => {
      const image = /!\[[^\]]*\](?:\([^)]*\)|\[[^\]]*\])/.exec(text)?.[0];
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
