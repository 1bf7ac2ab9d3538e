import { z } from 'zod';
import { idSchema, lineSchema, textSchema } from './scalars.ts';

/** content/learning.yaml: in which order the guides are read, and what the words of the trade mean. */
export const learningSchema = z.strictObject({
  order: z
    .array(
      z.strictObject({
        title: lineSchema.describe('What these guides are about together.'),
        guides: z.array(idSchema).min(1).describe('Ids of guides, the one to read first at the top.'),
      }),
    )
    .describe('The guides in the order somebody new reads them; each stands in it once.'),
  words: z
    .record(
      idSchema,
      z.strictObject({
        word: lineSchema.describe('As it is said in the middle of a sentence.'),
        also: z.array(lineSchema).optional().describe('Other spellings and names of the same thing.'),
        means: textSchema.describe('What it is, and what is often taken for it.'),
        guide: idSchema.optional().describe('The guide that explains it.'),
      }),
    )
    .describe('Words that somebody new does not know, by the part of their address.'),
});

export type Learning = z.infer<typeof learningSchema>;

/** A shelf without the file has its guides by title and explains no words. */
export const NO_LEARNING: Learning = { order: [], words: {} };

/** Every spelling of a word, in small letters. */
export function spellingsOf({ word, also = [] }: Learning['words'][string]): string[] {
  return [word, ...also].map((each) => each.toLowerCase());
}

/**
 * Whether a text has the word in one of its spellings, by itself or with an ending.
 * @param text in small letters
 */
export function hasWord(text: string, word: Learning['words'][string]): boolean {
  return spellingsOf(word).some((spelling) => {
    for (let at = text.indexOf(spelling); at >= 0; at = text.indexOf(spelling, at + 1))
      if (!/[a-z]/.test(text.charAt(at - 1))) return true;
    return false;
  });
}
