/** Markdown of the records to HTML: no raw HTML, no images, figures of the vehicle in braces. */
import MarkdownIt from 'markdown-it';
import { type FixedFigures, figureHtml } from './figure-html.ts';

/** What a page says to the renderer. */
interface Environment {
  figures?: FixedFigures | undefined;
}

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false, breaks: false });
markdown.disable('image');

markdown.inline.ruler.before('link', 'figure', (state, silent) => {
  if (state.src[state.pos] !== '{') return false;
  const match = /^\{([^{}\n]+)\}/.exec(state.src.slice(state.pos));
  if (!match?.[1]) return false;
  if (!silent) {
    const token = state.push('html_inline', '', 0);
    token.content = figureHtml(match[1].trim(), (state.env as Environment).figures);
  }
  state.pos += match[0].length;
  return true;
});

/** A text of one or more paragraphs. */
export function renderBlock(text: string, figures?: FixedFigures): string {
  return markdown.render(text, { figures } satisfies Environment);
}

/** A text inside a sentence, a list item or a button. */
export function renderLine(text: string, figures?: FixedFigures): string {
  return markdown.renderInline(text.trim(), { figures } satisfies Environment);
}

/** The text without marks, for descriptions and search. */
export function plainText(text: string): string {
  return renderLine(text)
    .replace(/\s*<small>general<\/small>/g, '')
    .replace(/<[^>]+>/g, '')
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&')
    .replace(/\s+/g, ' ')
    .trim();
}
