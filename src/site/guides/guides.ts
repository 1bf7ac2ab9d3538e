/** Guides: longer explanations in MDX under content/guides, with calculators embedded. */
import type { MDXInstance } from 'astro';
import { z } from 'zod';
import { type GuideHead, guideHeadSchema } from '../../model/guide.ts';

export interface Guide extends GuideHead {
  id: string;
  /** It has two cars that can be run. */
  moves: boolean;
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

/** All guides by title. */
export const guides: Guide[] = Object.entries(files)
  .map(([file, { frontmatter, Content }]) => {
    const id = file.replace(/^.*\/|\.mdx$/g, '');
    const read = guideHeadSchema.safeParse(frontmatter);
    if (!read.success) throw new Error(`content/guides/${id}.mdx: ${z.prettifyError(read.error)}`);
    return { id, moves: texts[file]?.includes('<SeeItMove') === true, ...read.data, Content };
  })
  .sort((a, b) => a.title.localeCompare(b.title, 'en'));
