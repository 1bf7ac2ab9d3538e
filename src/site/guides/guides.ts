/** Guides: longer explanations in MDX under content/guides, with calculators embedded. */
import type { MDXInstance } from 'astro';
import { z } from 'zod';
import { type GuideHead, guideHeadSchema } from '../../model/guide.ts';
import { hasWord } from '../../model/learning.ts';
import { shelf } from '../shelf/shelf.ts';

export interface Guide extends GuideHead {
  id: string;
  /** It has two cars that can be run. */
  moves: boolean;
  /** Words of the trade that it uses and the glossary explains, by their part of its address. */
  words: [id: string, word: string][];
  Content: MDXInstance<Record<string, unknown>>['Content'];
}

const texts = import.meta.glob<string>('/content/guides/*.mdx', {
  eager: true,
  query: '?raw',
  import: 'default',
});

const files = import.meta.glob<MDXInstance<Record<string, unknown>>>('/content/guides/*.mdx', {
  eager: true,
});

/** All guides in the order in which they are read; by title where the shelf has none. */
export const guides: Guide[] = Object.entries(files)
  .map(([file, { frontmatter, Content }]) => {
    const id = file.replace(/^.*\/|\.mdx$/g, '');
    const read = guideHeadSchema.safeParse(frontmatter);
    if (!read.success) throw new Error(`content/guides/${id}.mdx: ${z.prettifyError(read.error)}`);
    const text = texts[file] ?? '';
    return { id, moves: text.includes('<SeeItMove'), words: wordsIn(text), ...read.data, Content };
  })
  .sort((a, b) => a.title.localeCompare(b.title, 'en'))
  .sort((a, b) => placeOf(a.id) - placeOf(b.id));

/** A part of the order, with its guides. */
export interface GuidePart {
  title: string;
  guides: Guide[];
}

/** Guides by what they are about together, the ones to begin with first. */
export const guideParts: GuidePart[] =
  shelf.learning.order.length === 0
    ? [{ title: '', guides }]
    : shelf.learning.order.map(({ title, guides: ids }) => ({
        title,
        guides: ids.flatMap((id) => guides.find((guide) => guide.id === id) ?? []),
      }));

function placeOf(id: string): number {
  const place = shelf.learning.order.flatMap((part) => part.guides).indexOf(id);
  return place < 0 ? Number.MAX_SAFE_INTEGER : place;
}

function wordsIn(text: string): Guide['words'] {
  const small = text.toLowerCase();
  return Object.entries(shelf.learning.words).flatMap(([id, word]): Guide['words'] =>
    hasWord(small, word) ? [[id, word.word]] : [],
  );
}
